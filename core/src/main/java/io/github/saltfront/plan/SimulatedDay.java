package io.github.saltfront.plan;

import io.github.saltfront.safety.CannotTell;
import io.github.saltfront.safety.DayLimits;
import io.github.saltfront.safety.Evidence;
import io.github.saltfront.safety.HoldTable;
import io.github.saltfront.safety.Lethality;
import io.github.saltfront.safety.PredictedKill;
import io.github.saltfront.safety.PredictedVerdict;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.transport.History;
import io.github.saltfront.transport.History.Series;
import io.github.saltfront.transport.StageRecord;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How one simulated history stands against the official rules. A single run has no spread: it predicts what its inputs say, and
 * proves nothing.
 *
 * @param rule the rule
 * @param verdict the verdict, a prediction
 * @param share share of the required hold at the worst place, with the allowance for salt if it is salted [-]
 * @param consumerMinimumReached whether the middle keeps the consumer minimum and every face comes to it
 * @param limits official limits of time and temperature along the day
 */
public record SimulatedDay(
        SafetyRule rule, PredictedVerdict verdict, double share, boolean consumerMinimumReached, DayLimits limits) {
    private static final Phrases PHRASES = Phrases.of(SimulatedDay.class);

    /** Longest time between samples from which a verdict is read [s]; as for a measured log. */
    public static final double LONGEST_INTERVAL = 300;

    /**
     * Judges a history whose second kind of kill is the share of the official hold.
     *
     * @param history the history
     * @param rule the rule
     * @return the findings
     */
    public static SimulatedDay of(History history, SafetyRule rule) {
        double[] times = history.series(Series.TIME);
        TemperatureHistory core = TemperatureHistory.of(times, history.series(Series.CORE_TEMPERATURE));
        List<TemperatureHistory> faces = Stream.of(Series.SURFACE_TEMPERATURE, Series.SECOND_SURFACE_TEMPERATURE)
                .map(series -> TemperatureHistory.of(times, history.series(series)))
                .toList();
        List<StageRecord> heats = history.stages().stream()
                .filter(stage -> stage.kind().equals(CookStages.HEAT))
                .toList();
        double end = times[times.length - 1];
        double heatStart = heats.isEmpty() ? end : Math.min(end, heats.get(0).start());
        double heatEnd = heats.isEmpty()
                ? end
                : Math.min(end, heats.get(heats.size() - 1).end());
        DayLimits limits = DayLimits.of(core, faces, heatStart, heatEnd);
        double share = share(history, rule, core, faces);
        boolean minimum = rule.consumerMinimum().isMetBy(core)
                && faces.stream()
                        .allMatch(
                                face -> highest(face) >= rule.consumerMinimum().temperature());
        PredictedKill kill = new PredictedKill(share, minimum, true, limits.comeUpKept(), limits.coldBefore());
        return new SimulatedDay(rule, verdict(rule, kill, heats.isEmpty(), times), share, minimum, limits);
    }

    private static PredictedVerdict verdict(SafetyRule rule, PredictedKill kill, boolean raw, double[] times) {
        List<String> missing = new ArrayList<>();
        if (raw) {
            missing.add(PHRASES.say("a-stage-of-kind-heat"));
        }
        for (int i = 1; i < times.length && missing.isEmpty(); i++) {
            if (times[i] - times[i - 1] > LONGEST_INTERVAL + 1e-6) {
                missing.add(PHRASES.say("samples-at-least-every-5"));
            }
        }
        if (missing.isEmpty()) {
            return rule.judge(kill);
        }
        Lethality lethality = new Lethality(kill.holdShare(), rule.holdTable().logReduction(), OptionalDouble.empty());
        return new CannotTell(rule, new Evidence(lethality, kill.consumerMinimumMet()), missing);
    }

    /** The least of the worst cell, which never forgets, and of middle and faces, which start anew after a cold spell. */
    private static double share(
            History history, SafetyRule rule, TemperatureHistory core, List<TemperatureHistory> faces) {
        HoldTable table = rule.holdTable();
        double least = history.value(Series.LEAST_SECOND_KILL, history.size() - 1);
        least = Math.min(least, Lethality.of(table, core).share());
        for (TemperatureHistory face : faces) {
            least = Math.min(least, Lethality.of(table, face).share());
        }
        return least;
    }

    private static double highest(TemperatureHistory history) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < history.size(); i++) {
            highest = Math.max(highest, history.temperature(i));
        }
        return highest;
    }
}
