package io.github.saltfront.app.export;

import io.github.saltfront.app.probe.LogReading;
import io.github.saltfront.safety.CannotTell;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.GrowthModel;
import io.github.saltfront.safety.HoldTable;
import io.github.saltfront.safety.InactivationModel;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.MeasuredVerdict;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * All that one run of {@code lethality} found, the common source of the text, the JSON and the page.
 *
 * @param reading the log as read
 * @param measured the record that was judged
 * @param verdict the verdict
 * @param limits findings on official limits that the log covers
 * @param information what models say beside the verdict, in plain words
 * @param version version of the program
 */
public record LethalityResult(
        LogReading reading,
        MeasuredRecord measured,
        MeasuredVerdict verdict,
        List<LimitCheck> limits,
        List<String> information,
        String version) {
    private static final Phrases PHRASES = Phrases.of(LethalityResult.class);

    /**
     * Judges a record and gathers what belongs beside the verdict.
     *
     * @param reading the log as read
     * @param measured the record
     * @param rule the rule
     * @param version version of the program
     * @return the result
     */
    public static LethalityResult of(LogReading reading, MeasuredRecord measured, SafetyRule rule, String version) {
        TemperatureHistory upper = measured.upperHistory();
        List<LimitCheck> limits = new ArrayList<>();
        limits.add(OfficialLimits.comeUp(upper));
        limits.addAll(OfficialLimits.cooling(upper));
        limits.removeIf(limit -> limit.outcome() == LimitCheck.Outcome.NOT_COVERED);
        return new LethalityResult(
                reading,
                measured,
                rule.judge(measured),
                List.copyOf(limits),
                information(measured, rule, upper),
                version);
    }

    private static List<String> information(MeasuredRecord measured, SafetyRule rule, TemperatureHistory upper) {
        TemperatureHistory lower = measured.lowerHistory();
        List<String> lines = new ArrayList<>();
        lines.add(PHRASES.say("listeria-from-papers", InactivationModel.spread("listeria", lower)));
        lines.add(PHRASES.say("e-coli-o157-from-papers", InactivationModel.spread("e-coli", lower)));
        if (rule.salted()) {
            lines.add(PHRASES.say(
                    "the-official-hold-without-our",
                    measured.lethality(rule.officialTable()).shareText()));
        }
        if (rule.meat().bird().isPresent()) {
            double growth = GrowthModel.get("salmonella-chicken").growth(upper);
            lines.add(PHRASES.say("salmonella-could-grow-by-at", growth));
        }
        return List.copyOf(lines);
    }

    /** Returns the share of the hold for people; what rests on bare readings says so. */
    public String shareText() {
        String share = verdict.evidence().lethality().shareText();
        return verdict instanceof CannotTell ? PHRASES.say("if-the-readings-are-true", share) : share;
    }

    /** Returns how the record stands against the consumer minimum, for people; what rests on bare readings says so. */
    public String consumerMinimumText() {
        String minimum = verdict.consumerMinimum().describe();
        if (!verdict.evidence().consumerMinimumMet()) {
            return PHRASES.say("not-reached", minimum);
        }
        return minimum
                + (verdict instanceof CannotTell ? PHRASES.say("reached-if-the-readings-are") : PHRASES.say("reached"));
    }

    /** Returns the log figure for people; there is one only when the requirement was shown to be met. */
    public String logReductionText() {
        return verdict.isMet() ? verdict.evidence().lethality().logReductionText() : PHRASES.say("not-shown");
    }

    /** Returns when the hold was complete, counted from the start of the log [s]; empty unless the requirement was shown to be met. */
    public OptionalDouble completeAfter() {
        OptionalDouble at = verdict.evidence().lethality().fulfilledAt();
        return verdict.isMet() && at.isPresent()
                ? OptionalDouble.of(at.getAsDouble() - measured.log().time(0))
                : OptionalDouble.empty();
    }

    /** Returns the table that applies. */
    public HoldTable table() {
        return verdict.rule().holdTable();
    }

    /** Returns the cautions to show with a verdict. */
    public List<Caution> cautions() {
        return Caution.select(verdict.rule(), Set.of());
    }
}
