package io.github.saltfront.trial;

import io.github.saltfront.numerics.NormalDistribution;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;

/**
 * Two samples are alike, one is odd: which? By guessing one in three.
 *
 * <pre>p = 2 int_0^inf [Phi(-z sqrt(3) + d' sqrt(2/3)) + Phi(-z sqrt(3) - d' sqrt(2/3))] phi(z) dz</pre>
 *
 * The integral is taken by Simpson's rule over 0 to 8 in 400 steps; its error is below 1e-9.
 *
 * @see "ennis1993, J. Sens. Stud. 8, 353-370; iso4120 (the method)"
 */
public record Triangle() implements TastingMethod {
    private static final Phrases PHRASES = Phrases.of(Triangle.class);

    private static final int STEPS = 400;
    private static final double END = 8;
    private static final int A = 0;
    private static final int B = 1;

    @Override
    public String id() {
        return "triangle";
    }

    @Override
    public String title() {
        return PHRASES.say("triangle-test");
    }

    @Override
    public String question(String attribute) {
        return PHRASES.say("two-of-these-three-are");
    }

    @Override
    public double guessRate() {
        return 1.0 / 3;
    }

    @Override
    public double proportionCorrect(double distance) {
        Checks.requireInRange("d'", distance, 0, Double.MAX_VALUE, "-");
        double shift = distance * Math.sqrt(2.0 / 3);
        return 2
                * Simpson.integral(
                        z -> (NormalDistribution.cumulative(-z * Math.sqrt(3) + shift)
                                        + NormalDistribution.cumulative(-z * Math.sqrt(3) - shift))
                                * Simpson.normalDensity(z),
                        0,
                        END,
                        STEPS);
    }

    @Override
    public List<List<Integer>> orders() {
        return List.of(
                List.of(A, A, B),
                List.of(B, B, A),
                List.of(A, B, A),
                List.of(B, A, B),
                List.of(B, A, A),
                List.of(A, B, B));
    }

    @Override
    public boolean hasReference() {
        return false;
    }

    @Override
    public int rightPlace(List<Integer> order) {
        int ones = order.stream().mapToInt(Integer::intValue).sum();
        return order.indexOf(ones == 1 ? B : A);
    }
}
