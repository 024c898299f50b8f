package io.github.saltfront.plan;

import io.github.saltfront.units.Checks;

/**
 * Pieces that go into the heat one load after the other, since the appliance does not take all at once. Every load is salted as
 * much earlier as it is cooked earlier, so that one plan holds for all; the last is ready when it is served, and those before it are
 * kept hot.
 *
 * @param count number of loads, 1 if all go in at once
 * @param pieces pieces of a load; the last may have fewer
 * @param cycle time from one load to the next [s]
 */
public record Loads(int count, int pieces, double cycle) {
    /** Time to take one load out and lay the next in [s]; common practice, no source. */
    static final double CHANGE = 5 * 60;

    /** Checks the values. */
    public Loads {
        Checks.requireInRange("number of loads", count, 1, 500, "-");
        Checks.requireInRange("pieces of a load", pieces, 1, 500, "-");
    }

    /**
     * Returns the loads of a request.
     *
     * @param request the request
     * @param cookTime time in the stage that the thermometer ends, high end [s]
     */
    static Loads of(Request request, double cookTime) {
        int all = request.food().pieces();
        int once = request.piecesAtOnce();
        CookSequence sequence = request.cook().sequence();
        double heat = sequence.timeBefore() + Math.ceil(cookTime / 60) * 60 + sequence.timeAfter();
        return new Loads((all + once - 1) / once, once, heat + CHANGE);
    }

    /** Returns how much earlier the first load starts than the last [s]. */
    public double delay() {
        return (count - 1) * cycle;
    }

    /** Returns how much earlier than the last a load starts [s]; the first is number 1. */
    double before(int number) {
        return (count - number) * cycle;
    }
}
