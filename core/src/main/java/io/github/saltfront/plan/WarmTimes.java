package io.github.saltfront.plan;

import io.github.saltfront.safety.DayLimits;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.units.Temperature;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * How long a planned piece is warm, over the ensemble, and how it stands against the official limits. The day of median warmth
 * decides before the heat: the spread of the start temperature stands for a refrigerator that is not what the cook says, and the
 * cautions tell to measure it. From the heat on the day of median come-up decides.
 *
 * @param before time at 41-135 F (5-57.2 deg C) before the heat at the warmer of core and surface [s]
 * @param comeUp time of the core between 50 and 130 F (10-54.4 deg C) on the way to its peak [s]
 * @param hotAfter time of the core at 135 F (57.2 deg C) or above after it is out, within the rest [s]
 * @param limits limits of the two median days
 */
public record WarmTimes(Interval before, Interval comeUp, Interval hotAfter, DayLimits limits) {
    private static final double COLD = Temperature.fromFahrenheit(41);
    private static final double HOT = Temperature.fromFahrenheit(135);
    private static final double COME_UP_FROM = Temperature.fromFahrenheit(50);
    private static final double COME_UP_TO = Temperature.fromFahrenheit(130);

    static WarmTimes of(List<MemberDay> days) {
        double[] before = times(days, WarmTimes::before);
        double[] comeUp = times(days, WarmTimes::comeUp);
        return new WarmTimes(
                Interval.of(before),
                Interval.of(comeUp),
                Interval.of(times(
                        days, day -> day.timeAbove(HOT, day.end(CookStages.REST).start()))),
                limits(days.get(median(before)), days.get(median(comeUp))));
    }

    private static double[] times(List<MemberDay> days, ToDoubleFunction<MemberDay> time) {
        return days.stream().mapToDouble(time).toArray();
    }

    private static double before(MemberDay day) {
        double heat = day.heatStart();
        TemperatureHistory core = day.coreHistory(0);
        if (heat <= core.time(0)) {
            return 0;
        }
        double middle = OfficialLimits.timeBetween(core.between(core.time(0), heat), COLD, HOT);
        TemperatureHistory surface = day.surfaceHistory(0).between(core.time(0), heat);
        return Math.max(middle, OfficialLimits.timeBetween(surface, COLD, HOT));
    }

    private static double comeUp(MemberDay day) {
        double heat = day.heatStart();
        double peak = day.peakTime(heat);
        TemperatureHistory core = day.coreHistory(heat);
        return peak > core.time(0)
                ? OfficialLimits.timeBetween(core.between(core.time(0), peak), COME_UP_FROM, COME_UP_TO)
                : 0;
    }

    private static int median(double[] times) {
        return IntStream.range(0, times.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> times[i]))
                .toList()
                .get(times.length / 2);
    }

    private static DayLimits limits(MemberDay cold, MemberDay hot) {
        DayLimits before = limits(cold);
        DayLimits heated = limits(hot);
        return new DayLimits(
                before.before(), heated.comeUp(), heated.after(), before.growthBefore(), heated.growthAfter());
    }

    private static DayLimits limits(MemberDay day) {
        return DayLimits.of(
                day.coreHistory(0),
                List.of(day.surfaceHistory(0)),
                day.heatStart(),
                day.end(CookStages.REST).start());
    }
}
