package io.github.saltfront.transport;

/** Placeholder until the water vapor relations of the matter package are merged. */
final class LatentHeat {
    private LatentHeat() {}

    static double at(double celsius) {
        return 2.501e6 - 2326 * celsius;
    }
}
