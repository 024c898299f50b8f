package io.github.saltfront.verification;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * One compared number.
 *
 * <p>The bound is not chosen but computed: twice the change when every layer is split in two, plus twice the change when the
 * tolerance is made 27 times tighter, plus half a unit of the last digit of the reference. With the orders the method has
 * (two in space, at least 2/3 in the tolerance) the factors would be 4/3 and 9/8; two covers orders as low as one in space
 * and 1/3 in the tolerance. Estimates of values of one experiment with the same unit share their largest, since an estimate may pass
 * through zero by chance where its error does not.
 *
 * @param group group of the reference table
 * @param id row, for the message
 * @param error difference from the reference, in the unit of the group
 * @param bound bound of the error, in the same unit
 */
record Check(String group, String id, double error, double bound) {
    private static final double SAFETY = 2;

    boolean holds() {
        return error <= bound;
    }

    /**
     * Compares the values of one experiment with their reference.
     *
     * @param group group of the reference table
     * @param ids one name a value
     * @param expected reference values
     * @param rounding rounding error of each reference value
     * @param experiment gives the values at a resolution
     * @return one check a value
     */
    static List<Check> compare(
            String group,
            List<String> ids,
            double[] expected,
            double[] rounding,
            Function<Resolution, double[]> experiment) {
        double[] value = experiment.apply(Resolution.BASE);
        double[] finer = experiment.apply(Resolution.BASE.finer());
        double[] tighter = experiment.apply(Resolution.BASE.tighter());
        double estimate = 0;
        for (int i = 0; i < value.length; i++) {
            estimate = Math.max(
                    estimate, SAFETY * Math.abs(value[i] - finer[i]) + SAFETY * Math.abs(value[i] - tighter[i]));
        }
        List<Check> checks = new ArrayList<>();
        for (int i = 0; i < value.length; i++) {
            checks.add(new Check(group, ids.get(i), Math.abs(value[i] - expected[i]), estimate + rounding[i]));
        }
        return checks;
    }

    /** Half a unit of the last of so many significant digits. */
    static double rounding(double value, int digits) {
        return 0.5 * Math.pow(10, Math.ceil(Math.log10(Math.abs(value) + 1e-300)) - digits);
    }
}
