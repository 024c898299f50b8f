package io.github.saltfront.verification;

import io.github.saltfront.transport.Denaturation;

/** Round numbers of the size of those of meat: two proteins, the second harder; salt keeps some of the juice. Invented. */
final class TestKinetics implements Denaturation {
    @Override
    public int reactions() {
        return 2;
    }

    @Override
    public double rate(int reaction, double kelvin) {
        double reference = reaction == 0 ? 330 : 345;
        return 3e-3 * Math.exp((kelvin - reference) / 3);
    }

    @Override
    public double expelled(double[] extents, double salt) {
        return (0.1 * extents[0] + 0.15 * extents[1]) * Math.max(0, 1 - 10 * salt);
    }

    /** Log reductions a second: one a minute at 60 degrees Celsius, ten times as many each 7 K. */
    static double killRate(double kelvin) {
        return Math.pow(10, (kelvin - 333) / 7) / 60;
    }
}
