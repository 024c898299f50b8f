package io.github.saltfront.app.export;

import io.github.saltfront.trial.SampleSize;
import io.github.saltfront.trial.SoughtEffect;
import io.github.saltfront.words.Phrases;
import java.util.Optional;
import java.util.OptionalInt;

/** Before a trial: how many tasters, or what a number of tasters can show. */
public final class TrialPowerText {
    private static final Phrases PHRASES = Phrases.of(TrialPowerText.class);

    private TrialPowerText() {}

    /**
     * Returns the text.
     *
     * @param title name of the test
     * @param unit what is counted, such as {@code tastings}
     * @param sought effect that should not be missed
     * @param alpha allowed probability of a finding where there is none [-]
     * @param power wanted power [-]
     * @param tastings number at hand, if one is
     * @return lines of at most 64 columns
     */
    public static String of(
            String title, String unit, SoughtEffect sought, double alpha, double power, OptionalInt tastings) {
        StringBuilder text = new StringBuilder(title).append('\n');
        text.append(TextLayout.wrapped(PHRASES.say("suppose", sought.words()), 0))
                .append('\n');
        if (tastings.isPresent()) {
            int n = tastings.getAsInt();
            text.append(TextLayout.wrapped(
                    PHRASES.say(
                            "with-such-a-difference-is",
                            n,
                            unit,
                            TrialWords.chance(sought.power(n, alpha)),
                            TrialWords.chance(1 - sought.power(n, alpha))),
                    0));
        }
        Optional<SampleSize> size = sought.size(alpha, power);
        text.append(TextLayout.wrapped(
                PHRASES.say("to-find-it-with-a", TrialWords.chance(power), TrialWords.size(size, unit)), 0));
        text.append(TextLayout.wrapped(PHRASES.say("where-there-is-no-difference", TrialWords.chance(alpha)), 0));
        text.append('\n').append(TextLayout.wrapped(advice(size, sought), 0));
        return text.toString();
    }

    private static String advice(Optional<SampleSize> size, SoughtEffect sought) {
        int n = size.map(SampleSize::stable).orElse(SampleSize.MOST);
        if (n <= 40) {
            return PHRASES.say("fix-this-number-before-the");
        }
        if (sought instanceof SoughtEffect.Majority || sought instanceof SoughtEffect.Gap) {
            return PHRASES.say("that-is-many-fewer-people");
        }
        return PHRASES.say("that-is-many-if-you");
    }
}
