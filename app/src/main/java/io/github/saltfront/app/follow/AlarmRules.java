package io.github.saltfront.app.follow;

import io.github.saltfront.app.follow.CookAlarm.Kind;
import io.github.saltfront.app.follow.Follower.Look;
import io.github.saltfront.live.LiveCook;
import io.github.saltfront.live.LiveWarning;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** When an alarm is raised. What is raised stands until it is acknowledged, even if the outlook changes its mind. */
final class AlarmRules {
    private static final Phrases PHRASES = Phrases.of(AlarmRules.class);

    /** After this time an acknowledged alarm comes again if nothing was done [ms]; estimate. */
    static final long AGAIN_MS = 180_000;

    private AlarmRules() {}

    /** A reason for an alarm. */
    record Cause(Kind kind, String text) {}

    /**
     * Returns what is to be raised now.
     *
     * @param look what is known and expected
     * @param alarms all that were raised before, in order
     * @param now present time [ms since 1970]
     * @param again time after which an acknowledged alarm comes again [ms]
     */
    static List<Cause> due(Look look, List<CookAlarm> alarms, long now, long again) {
        List<Cause> due = new ArrayList<>();
        for (Cause cause : causes(look)) {
            Optional<CookAlarm> last = alarms.stream()
                    .filter(alarm -> alarm.kind() == cause.kind() && isSame(alarm, cause))
                    .reduce((a, b) -> b);
            if (last.isEmpty() || mayComeAgain(last.get(), now, again)) {
                due.add(cause);
            }
        }
        return due;
    }

    /** Probes and limits have many reasons; each is told once. */
    private static boolean isSame(CookAlarm alarm, Cause cause) {
        boolean many = cause.kind() == Kind.PROBE || cause.kind() == Kind.SAFETY || cause.kind() == Kind.NEXT_HEAT;
        return !many || pattern(alarm.text()).equals(pattern(cause.text()));
    }

    /** Numbers in a warning go on changing; the words before them do not. */
    private static String pattern(String text) {
        return text.replaceAll("(?<![A-Za-z0-9])[0-9]+", "#");
    }

    private static boolean mayComeAgain(CookAlarm last, long now, long again) {
        boolean insists = last.kind() == Kind.PULL_NOW || last.kind() == Kind.SERVE || last.kind() == Kind.NEXT_HEAT;
        return insists
                && last.acknowledged().isPresent()
                && now - last.acknowledged().getAsLong() >= again;
    }

    private static List<Cause> causes(Look look) {
        List<Cause> causes = new ArrayList<>();
        Outlook outlook = look.outlook();
        Optional<LiveCook.Heat> next =
                look.heat() < look.heats().size() ? Optional.of(look.heats().get(look.heat())) : Optional.empty();
        LiveCook.Heat on = look.heats().get(look.heat() - 1);
        if (!on.told() && outlook.phase() == Outlook.Phase.HEAT) {
            causes.add(new Cause(Kind.NEXT_HEAT, PHRASES.say("by-the-plan-s-clock", CookJson.heat(on))));
        }
        String where = next.map(heat -> PHRASES.say("it-goes-on-now", CookJson.heat(heat)))
                .orElse(PHRASES.say("take-it-out-of-the"));
        switch (outlook.pull().advice()) {
            case SOON -> causes.add(new Cause(Kind.GET_READY, PHRASES.say("get-ready-it-should-come")));
            case NOW -> causes.add(new Cause(Kind.PULL_NOW, where));
            default -> {
                // nothing to do yet, or it is out
            }
        }
        boolean rested =
                outlook.phase() == Outlook.Phase.REST && outlook.plate().rest() <= 0;
        if (rested) {
            causes.add(new Cause(Kind.SERVE, PHRASES.say("it-has-rested-serve-it")));
        }
        for (LiveWarning warning : outlook.warnings()) {
            switch (warning.kind()) {
                case SAFETY -> causes.add(new Cause(Kind.SAFETY, warning.text()));
                case UNIT, GAP, PROBE -> causes.add(new Cause(Kind.PROBE, warning.text()));
                default -> {
                    // shown, without an alarm
                }
            }
        }
        return causes;
    }
}
