package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What comes before and after the stage that the thermometer ends, such as a sear, and how its appliance is used.
 *
 * @param before stages of given time before it, in order
 * @param after stages of given time after it, in order, before the rest
 * @param turnInterval time between turns where one face is heated at a time [s]
 * @param warmUp time in which the appliance warms up with the meat in it [s]; 0 if it is hot before
 * @param rest how it rests
 */
public record CookSequence(List<Step> before, List<Step> after, double turnInterval, double warmUp, Rest rest) {
    private static final Phrases PHRASES = Phrases.of(CookSequence.class);

    /** Nothing before or after, hot before. */
    public static final CookSequence ALONE =
            new CookSequence(List.of(), List.of(), CookingMedium.TURN_INTERVAL, 0, Rest.USUAL);

    /** Copies the lists and checks the values. */
    public CookSequence {
        before = List.copyOf(before);
        after = List.copyOf(after);
        Checks.requireInRange("time between turns", turnInterval, 5, 86400, "s");
        Checks.requireInRange("time of warming up", warmUp, 0, 7200, "s");
    }

    /**
     * A stage of given time.
     *
     * @param appliance appliance
     * @param setting temperature it is set to [K]
     * @param time how long [s]
     * @param turnInterval time between turns where one face is heated at a time [s]
     */
    public record Step(Appliance appliance, double setting, double time, double turnInterval) {
        /** Checks the values. */
        public Step {
            Checks.requireInRange("time of a step", time, 1, 86400, "s");
        }

        /** Tells whether another step goes on in the same appliance at the same setting. */
        boolean isSameHeat(Step other) {
            return appliance.id().equals(other.appliance.id()) && Math.abs(setting - other.setting) < 0.5;
        }
    }

    /** The stage that the thermometer ends, as far as it is known beforehand; its time here is only formal. */
    Step main(Request.Cook cook) {
        return new Step(cook.appliance(), cook.setting(), 1, turnInterval);
    }

    /** What comes first. */
    Step first(Request.Cook cook) {
        return before.isEmpty() ? main(cook) : before.get(0);
    }

    /**
     * How it rests.
     *
     * @param foil whether it rests under loose foil
     * @param time how long [s], if it is given; by mass otherwise, and never less than belongs to the consumer minimum
     */
    public record Rest(boolean foil, OptionalDouble time) {
        /** On the bench, uncovered, for the usual time. */
        public static final Rest USUAL = new Rest(false, OptionalDouble.empty());

        /** Checks the values. */
        public Rest {
            time.ifPresent(given -> Checks.requireInRange("time of the rest", given, 0, 7200, "s"));
        }

        /** Returns the id of the appliance of the catalog that stands for it. */
        String applianceId() {
            return foil ? "rest-foil" : "rest-bare";
        }

        /** Returns how it rests, as the end of a sentence. */
        public String words() {
            return foil ? PHRASES.say("under-loose-foil") : PHRASES.say("uncovered");
        }
    }

    /** Tells whether there is but one stage of heat. */
    public boolean isAlone() {
        return before.isEmpty() && after.isEmpty();
    }

    /** Returns the time before the main stage [s]. */
    double timeBefore() {
        return before.stream().mapToDouble(Step::time).sum();
    }

    /** Returns the time between the main stage and the rest [s]. */
    double timeAfter() {
        return after.stream().mapToDouble(Step::time).sum();
    }
}
