package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.safety.LimitCheck.Outcome;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The official limits of time and temperature: come-up, cooling in two steps, cold and hot holding, time as control. They alone
 * pass or fail; growth models only inform.
 *
 * <p>For a measured record give the curve that is on the unfavorable side: {@link MeasuredRecord#upperHistory} for cooling and for
 * time out of the cold, {@link MeasuredRecord#lowerHistory} for hot holding.
 *
 * @see "fsis2021 pp. 23-25; fsis1999; wac2022, 246-215-03515 to -03530; fsisdangerzone"
 */
public final class OfficialLimits {
    private static final Phrases PHRASES = Phrases.of(OfficialLimits.class);

    private OfficialLimits() {}

    /**
     * Checks the time spent between 50 and 130 F (10-54.4 deg C) on the way to the highest temperature: at most 6 h, all stays in
     * the range together.
     *
     * @param history temperature of the core
     * @return the finding; not covered if the piece starts above 50 F or never gets to 130 F
     */
    public static LimitCheck comeUp(TemperatureHistory history) {
        return comeUp(history, history, Crossings.timeOfHighest(history));
    }

    /** Checks the come-up of a measured record: it enters the range by its upper and leaves it by its lower bound. */
    static LimitCheck comeUp(MeasuredRecord measured, OptionalDouble completed) {
        TemperatureHistory leaving = measured.lowerHistory();
        double until = completed.orElseGet(() -> Crossings.timeOfHighest(leaving));
        return comeUp(measured.upperHistory(), leaving, until);
    }

    private static LimitCheck comeUp(TemperatureHistory entering, TemperatureHistory leaving, double until) {
        Limit limit = Limit.get("come-up");
        double seconds =
                Crossings.timeAbove(entering, limit.from, until) - Crossings.timeAbove(leaving, limit.to, until);
        boolean covered = entering.temperature(0) < limit.from && Crossings.reaches(leaving, limit.to);
        Outcome outcome = seconds > limit.seconds ? Outcome.FAIL : covered ? Outcome.PASS : Outcome.NOT_COVERED;
        return limit.finding(outcome, seconds);
    }

    /**
     * Checks cooling after cooking by the retail food code: 135 to 70 F within 2 h and to 41 F within 6 h in all.
     *
     * @param history temperature of the warmest spot
     * @return both findings, first step first
     */
    public static List<LimitCheck> cooling(TemperatureHistory history) {
        return cooling(history, history);
    }

    /**
     * Checks cooling of a piece that is not equally warm throughout, by the same limits read strictly: the clocks start when its
     * outside falls through 135 F and stop when its warmest spot has arrived.
     *
     * @param outside temperature of the outside
     * @param warmest temperature of the warmest spot
     * @return both findings, first step first
     */
    public static List<LimitCheck> cooling(TemperatureHistory outside, TemperatureHistory warmest) {
        return List.of(
                fall(Limit.get("cooling-first"), outside, warmest), fall(Limit.get("cooling-total"), outside, warmest));
    }

    /**
     * Checks cooling in a plant: 130 to 80 F within 1.5 h and 80 to 40 F within another 5 h.
     *
     * @param history temperature of the warmest spot
     * @return both findings, first step first
     */
    public static List<LimitCheck> plantCooling(TemperatureHistory history) {
        return List.of(
                fall(Limit.get("plant-cooling-first"), history, history),
                fall(Limit.get("plant-cooling-second"), history, history));
    }

    /**
     * Checks that food is kept at 41 F (5 deg C) or below throughout.
     *
     * @param history temperature of the warmest spot
     * @return the finding
     */
    public static LimitCheck coldHolding(TemperatureHistory history) {
        Limit limit = Limit.get("cold-holding");
        double warmest = extreme(history, 1);
        return limit.holding(warmest <= limit.to, PHRASES.say("warmest"), warmest, PHRASES.say("at-most"), limit.to);
    }

    /**
     * Checks that food is kept at 135 F (57.2 deg C) or above throughout.
     *
     * @param history temperature of the coldest spot
     * @return the finding
     */
    public static LimitCheck hotHolding(TemperatureHistory history) {
        Limit limit = Limit.get("hot-holding");
        double coldest = -extreme(history, -1);
        return limit.holding(
                coldest >= limit.from, PHRASES.say("coldest"), coldest, PHRASES.say("at-least"), limit.from);
    }

    /**
     * Checks time as the only control: at most 4 h between 41 and 135 F.
     *
     * @param history temperature of the food
     * @return the finding
     */
    public static LimitCheck timeAsControl(TemperatureHistory history) {
        return stay(Limit.get("time-control"), history);
    }

    /**
     * Checks the rule for households: at most 2 h in all between 40 and 140 F, 1 h in air above 90 F.
     *
     * @param history temperature of the food while it is out
     * @param hotAir whether the air is above 90 F (32 deg C)
     * @return the finding
     */
    public static LimitCheck outOfRefrigeration(TemperatureHistory history, boolean hotAir) {
        return stay(Limit.get(hotAir ? "consumer-out-hot" : "consumer-out"), history);
    }

    /**
     * What holds for food that is ready.
     *
     * @param hotHolding temperature to keep it at or above [K]
     * @param out longest time out of refrigeration and out of the heat at home [s]
     * @param outInHotAir the same in air above 90 F (32 deg C) [s]
     */
    public record Serving(double hotHolding, double out, double outInHotAir) {}

    /** Returns what holds for food that is ready. */
    public static Serving serving() {
        return new Serving(
                Limit.get("hot-holding").from,
                Limit.get("consumer-out").seconds,
                Limit.get("consumer-out-hot").seconds);
    }

    /**
     * Returns the time that a history spends in a range.
     *
     * @param history the history
     * @param low lower end of the range [K]
     * @param high upper end [K]
     * @return time at or above the lower and below the upper end [s]
     */
    public static double timeBetween(TemperatureHistory history, double low, double high) {
        double end = history.time(history.size() - 1);
        return Crossings.timeAbove(history, low, end) - Crossings.timeAbove(history, high, end);
    }

    private static LimitCheck stay(Limit limit, TemperatureHistory history) {
        double seconds = timeBetween(history, limit.from, limit.to);
        return limit.finding(seconds > limit.seconds ? Outcome.FAIL : Outcome.PASS, seconds);
    }

    private static LimitCheck fall(Limit limit, TemperatureHistory outside, TemperatureHistory history) {
        double last = history.time(history.size() - 1);
        double start = Crossings.lastDown(outside, limit.from);
        boolean startSeen = start > Double.NEGATIVE_INFINITY;
        double from = startSeen ? start : outside.time(0);
        double end = Crossings.lastDown(history, limit.to);
        boolean alreadyCold = end == Double.NEGATIVE_INFINITY && history.temperature(history.size() - 1) <= limit.to;
        boolean arrived = !alreadyCold && history.temperature(history.size() - 1) <= limit.to && end >= from;
        double seconds = alreadyCold ? 0 : (arrived ? end : last) - from;
        Outcome outcome =
                seconds > limit.seconds ? Outcome.FAIL : arrived && startSeen ? Outcome.PASS : Outcome.NOT_COVERED;
        return limit.finding(outcome, seconds);
    }

    private static double extreme(TemperatureHistory history, int sign) {
        double extreme = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < history.size(); i++) {
            extreme = Math.max(extreme, sign * history.temperature(i));
        }
        return extreme;
    }

    /** One row of the table: temperatures [K], time [s]. */
    private record Limit(String id, String subject, double from, double to, double seconds) {
        static Limit get(String id) {
            CsvTable.Row row =
                    CsvTable.load(OfficialLimits.class, "official_limits.csv").row("id", id);
            return new Limit(
                    id,
                    row.words("subject"),
                    Temperature.fromFahrenheit(row.findNumber("from_f").orElse(-100)),
                    Temperature.fromFahrenheit(row.findNumber("to_f").orElse(1000)),
                    row.findNumber("limit_s").orElse(0));
        }

        LimitCheck finding(Outcome outcome, double taken) {
            String word = switch (outcome) {
                case PASS -> PHRASES.say("kept");
                case FAIL -> PHRASES.say("broken");
                case NOT_COVERED -> PHRASES.say("not-covered");
            };
            return new LimitCheck(
                    id,
                    outcome,
                    taken,
                    seconds,
                    PHRASES.say(
                            "to-c-took-h-at",
                            subject,
                            Temperature.toCelsius(from),
                            Temperature.toCelsius(to),
                            word,
                            taken / 3600,
                            seconds / 3600));
        }

        LimitCheck holding(boolean kept, String extreme, double found, String bound, double limit) {
            return new LimitCheck(
                    id,
                    kept ? Outcome.PASS : Outcome.FAIL,
                    0,
                    0,
                    Phrases.figures(
                            "%s: %s; %s %.1f °C, %s %.1f °C",
                            subject,
                            PHRASES.say(kept ? "kept" : "broken"),
                            extreme,
                            Temperature.toCelsius(found),
                            bound,
                            Temperature.toCelsius(limit)));
        }
    }
}
