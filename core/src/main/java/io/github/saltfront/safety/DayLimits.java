package io.github.saltfront.safety;

import io.github.saltfront.safety.LimitCheck.Outcome;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The official limits along one day of a piece: cold before the heat, through the come-up, and after the heat. Every limit is
 * checked at each place given and reported for the worst of them. Growth informs and decides nothing.
 *
 * <ul>
 *   <li>Before the heat: at most 4 h in all between 41 and 135 F (food code), and for households 2 h in all between 40 and 140 F if
 *       it leaves the cold, which we read as a place above 50 F, where the official range of growth begins.
 *   <li>Come-up: at most 6 h between 50 and 130 F.
 *   <li>After the heat: cooling in two steps if the warmest place falls below 70 F, and else 2 h in all between 40 and 140 F.
 * </ul>
 *
 * @param before limits before the heat, none if the day starts with it
 * @param comeUp the limit of the come-up, none if there is no heat or it is not covered
 * @param after limits after the heat, none if the day ends with it
 * @param growthBefore growth of Salmonella from the start to the end of the heat, no lag: an upper bound [log10]
 * @param growthAfter growth of Clostridium perfringens after the heat, no lag: an upper bound [log10]
 * @see "fsis2021 pp. 23-25; wac2022, 246-215-03515 to -03530; fsisdangerzone"
 */
public record DayLimits(
        List<LimitCheck> before,
        List<LimitCheck> comeUp,
        List<LimitCheck> after,
        double growthBefore,
        double growthAfter) {
    private static final double OUT_OF_THE_COLD = Temperature.fromFahrenheit(50);
    private static final double COOLED = Temperature.fromFahrenheit(70);

    private static final Comparator<LimitCheck> BY_TIME = Comparator.comparingDouble(LimitCheck::measured);

    /** Copies the lists. */
    public DayLimits {
        before = List.copyOf(before);
        comeUp = List.copyOf(comeUp);
        after = List.copyOf(after);
    }

    /**
     * Checks a day.
     *
     * @param core temperature of the middle
     * @param others temperature of other places over the same times, at least the surface
     * @param heatStart start of the first heat [s]; the end of the day if there is none
     * @param heatEnd end of the last heat [s]
     * @return the findings
     */
    public static DayLimits of(
            TemperatureHistory core, List<TemperatureHistory> others, double heatStart, double heatEnd) {
        List<TemperatureHistory> places = new ArrayList<>(others);
        places.add(core);
        double start = core.time(0);
        double end = core.time(core.size() - 1);
        boolean heated = heatEnd > heatStart;
        boolean served = heated && end > heatEnd;
        double hot = Math.min(Math.max(heatEnd, heatStart), end);
        return new DayLimits(
                heatStart > start ? before(parts(places, start, heatStart)) : List.of(),
                heated ? comeUp(parts(places, start, heatEnd)) : List.of(),
                served ? after(core.between(heatEnd, end), parts(others, heatEnd, end)) : List.of(),
                hot > start ? growth("salmonella-chicken", parts(places, start, hot)) : 0,
                served ? growth("perfringens-chicken", parts(places, heatEnd, end)) : 0);
    }

    private static List<LimitCheck> before(List<TemperatureHistory> places) {
        LimitCheck code = worst(places, OfficialLimits::timeAsControl);
        boolean leftTheCold = places.stream().anyMatch(place -> Crossings.highest(place) > OUT_OF_THE_COLD);
        return leftTheCold
                ? List.of(code, worst(places, place -> OfficialLimits.outOfRefrigeration(place, false)))
                : List.of(code);
    }

    private static List<LimitCheck> comeUp(List<TemperatureHistory> places) {
        LimitCheck slowest = worst(places, OfficialLimits::comeUp);
        return slowest.outcome() == Outcome.NOT_COVERED ? List.of() : List.of(slowest);
    }

    private static List<LimitCheck> after(TemperatureHistory core, List<TemperatureHistory> others) {
        List<TemperatureHistory> all = new ArrayList<>(others);
        all.add(core);
        boolean cooled = all.stream().allMatch(place -> place.temperature(place.size() - 1) <= COOLED);
        if (!cooled) {
            return List.of(worst(all, place -> OfficialLimits.outOfRefrigeration(place, false)));
        }
        List<LimitCheck> slowest = new ArrayList<>();
        for (int step = 0; step < 2; step++) {
            int index = step;
            slowest.add(worst(
                    others, outside -> OfficialLimits.cooling(outside, core).get(index)));
        }
        return slowest;
    }

    private static LimitCheck worst(List<TemperatureHistory> places, Function<TemperatureHistory, LimitCheck> rule) {
        return places.stream().map(rule).max(BY_TIME).orElseThrow();
    }

    private static List<TemperatureHistory> parts(List<TemperatureHistory> places, double from, double to) {
        return places.stream().map(place -> place.between(from, to)).toList();
    }

    private static double growth(String model, List<TemperatureHistory> places) {
        GrowthModel growth = GrowthModel.get(model);
        return places.stream().mapToDouble(growth::growth).max().orElse(0);
    }

    /** Returns all findings in the order of the day. */
    public List<LimitCheck> checks() {
        return Stream.of(before, comeUp, after).flatMap(List::stream).toList();
    }

    /** Returns whether no limit before the heat is broken. */
    public boolean coldBefore() {
        return before.stream().noneMatch(check -> check.outcome() == Outcome.FAIL);
    }

    /** Returns whether the come-up is within its limit. */
    public boolean comeUpKept() {
        return comeUp.stream().noneMatch(check -> check.outcome() == Outcome.FAIL);
    }
}
