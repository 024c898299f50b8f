package io.github.saltfront.matter;

/**
 * Empirical ice content of food; bound water plays no part in it.
 *
 * <pre>ice = 1.105 W / [1 + 0.7138 / ln(tf - t + 1)]</pre>
 *
 * <p>Validity: -45 degrees Celsius to the freezing point, where the expression is undefined and its limit, zero, is
 * returned.
 *
 * @see "tchigeov1979, as given in ashrae2006, chapter 9, ice fraction"
 */
public final class Tchigeov1979 implements IceModel {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "tchigeov1979";

    private static final double FACTOR = 1.105;
    private static final double LOGARITHM = 0.7138;

    @Override
    public double ice(double temperature, double freezingPoint, double waterPerSolids, double boundPerSolids) {
        if (temperature >= freezingPoint) {
            return 0;
        }
        double log = Math.log1p(freezingPoint - temperature);
        return FACTOR * waterPerSolids * log / (log + LOGARITHM);
    }

    @Override
    public double derivative(double temperature, double freezingPoint, double waterPerSolids, double boundPerSolids) {
        if (temperature > freezingPoint) {
            return 0;
        }
        double below = freezingPoint - temperature;
        double sum = Math.log1p(below) + LOGARITHM;
        return -FACTOR * waterPerSolids * LOGARITHM / (sum * sum * (1 + below));
    }
}
