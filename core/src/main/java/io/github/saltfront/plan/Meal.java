package io.github.saltfront.plan;

import java.time.ZonedDateTime;
import java.util.List;

/**
 * Several dishes for one table: a plan for each, and one clock.
 *
 * @param courses the dishes with their plans, in the order of the request
 * @param clock steps of all dishes in time
 * @param uses when each appliance is used, in time
 * @param notes what was done so that appliances, refrigerator and hands suffice, in whole sentences
 */
public record Meal(List<Course> courses, List<Step> clock, List<Use> uses, List<String> notes) {
    /** Copies the lists. */
    public Meal {
        courses = List.copyOf(courses);
        clock = List.copyOf(clock);
        uses = List.copyOf(uses);
        notes = List.copyOf(notes);
    }

    /**
     * A dish that is asked for.
     *
     * @param name its name
     * @param request its request; all dishes of a meal have the same time to serve
     */
    public record Dish(String name, Request request) {}

    /**
     * A dish with its plan.
     *
     * @param dish the dish
     * @param plan its plan
     * @param delay how much longer than usual it rests because the appliance is needed for another dish [s]
     */
    public record Course(Dish dish, Plan plan, double delay) {}

    /**
     * A step of the common clock.
     *
     * @param dish name of the dish
     * @param step the step
     * @param minutes minutes of work [min]; 0 where the cook only looks
     */
    public record Step(String dish, Plan.Step step, double minutes) {}

    /**
     * A time in which an appliance is used.
     *
     * @param dish name of the dish
     * @param appliance id of the appliance
     * @param setting its setting [K]
     * @param from start, warming up included
     * @param to end, for the slowest of 20 cooks
     * @param full whether a dish of several loads fills it
     */
    public record Use(
            String dish, String appliance, double setting, ZonedDateTime from, ZonedDateTime to, boolean full) {
        /** Settings nearer than this are the same heat [K]. */
        private static final double SAME = 3;

        boolean overlaps(Use other) {
            return from.isBefore(other.to) && other.from.isBefore(to);
        }

        /** Whether both fit into one appliance at once. */
        boolean shares(Use other) {
            return !full && !other.full && Math.abs(setting - other.setting) < SAME;
        }

        Use earlier(double seconds) {
            return new Use(
                    dish, appliance, setting, from.minusSeconds((long) seconds), to.minusSeconds((long) seconds), full);
        }
    }
}
