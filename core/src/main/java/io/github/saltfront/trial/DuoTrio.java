package io.github.saltfront.trial;

import io.github.saltfront.numerics.NormalDistribution;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;

/**
 * A marked reference first, then two samples: which one is the same as the reference? By guessing one in two.
 *
 * <pre>p = 1 - A - B + 2 A B,  A = Phi(d'/sqrt(2)), B = Phi(d'/sqrt(6))</pre>
 *
 * @see "ennis1993, J. Sens. Stud. 8, 353-370; iso10399 (the method, balanced reference)"
 */
public record DuoTrio() implements TastingMethod {
    private static final Phrases PHRASES = Phrases.of(DuoTrio.class);

    private static final int A = 0;
    private static final int B = 1;

    @Override
    public String id() {
        return "duo-trio";
    }

    @Override
    public String title() {
        return PHRASES.say("duo-trio-test");
    }

    @Override
    public String question(String attribute) {
        return PHRASES.say("taste-the-reference-first-which");
    }

    @Override
    public double guessRate() {
        return 0.5;
    }

    @Override
    public double proportionCorrect(double distance) {
        Checks.requireInRange("d'", distance, 0, Double.MAX_VALUE, "-");
        double a = NormalDistribution.cumulative(distance / Math.sqrt(2));
        double b = NormalDistribution.cumulative(distance / Math.sqrt(6));
        return 1 - a - b + 2 * a * b;
    }

    @Override
    public List<List<Integer>> orders() {
        return List.of(List.of(A, A, B), List.of(B, B, A), List.of(A, B, A), List.of(B, A, B));
    }

    @Override
    public boolean hasReference() {
        return true;
    }

    @Override
    public int rightPlace(List<Integer> order) {
        return order.get(1).equals(order.get(0)) ? 1 : 2;
    }
}
