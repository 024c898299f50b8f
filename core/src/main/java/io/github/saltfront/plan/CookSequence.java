package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * What comes before and after the stage that the thermometer ends, such as a sear, and how its appliance is used.
 *
 * @param before stages of given time before it, in order
 * @param after stages of given time after it, in order, before the rest
 * @param turnInterval time between turns where one face is heated at a time [s]
 * @param warmUp time in which the appliance warms up with the meat in it [s]; 0 if it is hot before
 */
public record CookSequence(List<Step> before, List<Step> after, double turnInterval, double warmUp) {
    /** Nothing before or after, hot before. */
    public static final CookSequence ALONE = new CookSequence(List.of(), List.of(), CookingMedium.TURN_INTERVAL, 0);

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
