package io.github.saltfront.live;

import io.github.saltfront.safety.Lethality;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.MeasuredVerdict;
import io.github.saltfront.safety.NotMet;
import io.github.saltfront.safety.Placement;
import io.github.saltfront.safety.ProbeError;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.TemperatureLog;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the readings of one probe show by themselves, on their lower bound. Readings that were left out break the record in two,
 * and neither part borrows from the other; after the tip moved nobody vouches for its place any more. No prediction enters here.
 *
 * @param verdict how the best unbroken run stands against the rule
 * @param lethality what that run has earned
 * @param running share of the hold earned by the run that still goes on [-]
 * @param best record of the best unbroken run, on which the verdict stands
 * @param all record of all readings that count, for limits on the whole of the time
 */
public record MeasuredHold(
        MeasuredVerdict verdict, Lethality lethality, double running, MeasuredRecord best, MeasuredRecord all) {
    static Optional<MeasuredHold> of(List<ProbeTrack.Accepted> readings, LiveSetup setup) {
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        SafetyRule rule = setup.rule();
        List<MeasuredRecord> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= readings.size(); i++) {
            if (i == readings.size()
                    || readings.get(i).run() != readings.get(from).run()) {
                runs.add(record(readings.subList(from, i), setup));
                from = i;
            }
        }
        MeasuredRecord all = record(readings, setup);
        MeasuredVerdict whole = rule.judge(all);
        MeasuredRecord best = runs.get(0);
        double share = -1;
        for (MeasuredRecord run : runs) {
            double earned = run.lethality(rule.holdTable()).share();
            if (rule.judge(run).isMet()) {
                best = run;
                break;
            }
            if (earned > share) {
                share = earned;
                best = run;
            }
        }
        boolean spoiled = whole instanceof NotMet notMet && !notMet.cookingOnHelps();
        MeasuredRecord last = runs.get(runs.size() - 1);
        double[] running = last.runningShare(rule.holdTable());
        return Optional.of(new MeasuredHold(
                spoiled ? whole : rule.judge(best),
                best.lethality(rule.holdTable()),
                running[running.length - 1],
                best,
                all));
    }

    private static MeasuredRecord record(List<ProbeTrack.Accepted> readings, LiveSetup setup) {
        double[] times =
                readings.stream().mapToDouble(ProbeTrack.Accepted::time).toArray();
        double[] temperatures =
                readings.stream().mapToDouble(ProbeTrack.Accepted::temperature).toArray();
        boolean moved = readings.stream().anyMatch(r -> r.spot() > 0);
        ProbeError error = setup.probeError();
        Placement place = moved ? Placement.unknown() : setup.placement();
        return MeasuredRecord.of(TemperatureLog.of(times, temperatures), error, place);
    }

    /** Returns whether the measurement shows that the rule is met. */
    public boolean isShown() {
        return verdict.isMet();
    }
}
