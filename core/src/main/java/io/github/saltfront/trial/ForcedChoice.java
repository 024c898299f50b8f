package io.github.saltfront.trial;

import io.github.saltfront.numerics.NormalDistribution;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Which of these is saltier, juicier, more tender? One sample is the one that should be, all others are the other sample. Two
 * alternatives make the directional paired test.
 *
 * <pre>p = int phi(z - d') Phi(z)^(m-1) dz;  for m = 2: p = Phi(d'/sqrt(2))</pre>
 *
 * The integral is taken by Simpson's rule over d' - 8 to d' + 8 in 800 steps; its error is below 1e-9.
 *
 * @param alternatives samples on the plate, m [-], 2 to 10
 * @see "brockhoff2010, Food Qual. Prefer. 21, 330-338; iso5495 (the paired test)"
 */
public record ForcedChoice(int alternatives) implements TastingMethod {
    private static final Phrases PHRASES = Phrases.of(ForcedChoice.class);

    /** Fewest samples on the plate. */
    public static final int FEWEST = 2;

    /** Most samples on the plate; more tire any taster. */
    public static final int MOST = 10;

    private static final double HALF_WIDTH = 8;
    private static final int STEPS = 800;
    private static final int OTHER = 0;
    private static final int STRONGER = 1;

    /** Checks the number. */
    public ForcedChoice {
        Checks.require(
                alternatives >= FEWEST && alternatives <= MOST,
                "a forced choice needs 2 to 10 samples on the plate, got " + alternatives + ".");
    }

    @Override
    public String id() {
        return alternatives + "-afc";
    }

    @Override
    public String title() {
        return alternatives == 2
                ? PHRASES.say("directional-paired-test-2-afc")
                : PHRASES.say("forced-choice-of-afc", alternatives, alternatives);
    }

    @Override
    public String question(String attribute) {
        return PHRASES.say("which-one-of-these-is", attribute);
    }

    @Override
    public double guessRate() {
        return 1.0 / alternatives;
    }

    @Override
    public double proportionCorrect(double distance) {
        Checks.requireInRange("d'", distance, 0, Double.MAX_VALUE, "-");
        if (alternatives == 2) {
            return NormalDistribution.cumulative(distance / Math.sqrt(2));
        }
        return Simpson.integral(
                z -> Simpson.normalDensity(z - distance) * Math.pow(NormalDistribution.cumulative(z), alternatives - 1),
                distance - HALF_WIDTH,
                distance + HALF_WIDTH,
                STEPS);
    }

    /** The stronger sample comes once in every place; the others fill the plate. */
    @Override
    public List<List<Integer>> orders() {
        List<List<Integer>> orders = new ArrayList<>();
        for (int place = 0; place < alternatives; place++) {
            List<Integer> order = new ArrayList<>(Collections.nCopies(alternatives, OTHER));
            order.set(place, STRONGER);
            orders.add(List.copyOf(order));
        }
        return List.copyOf(orders);
    }

    @Override
    public boolean hasReference() {
        return false;
    }

    @Override
    public int rightPlace(List<Integer> order) {
        return order.indexOf(STRONGER);
    }
}
