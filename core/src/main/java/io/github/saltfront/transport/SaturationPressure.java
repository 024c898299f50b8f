package io.github.saltfront.transport;

/** Placeholder until the water vapor relations of the matter package are merged: IAPWS-IF97, region 4. */
final class SaturationPressure {
    private SaturationPressure() {}

    static double at(double celsius) {
        double kelvin = Math.max(celsius, -20) + LaneBlock.KELVIN;
        double theta = kelvin - 0.23855557567849 / (kelvin - 650.17534844798);
        double a = theta * theta + 1167.0521452767 * theta - 724213.16703206;
        double b = -17.073846940092 * theta * theta + 12020.824702470 * theta - 3232555.0322333;
        double c = 14.915108613530 * theta * theta - 4823.2657361591 * theta + 405113.40542057;
        double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        double square = root * root;
        return square * square * 1e6;
    }
}
