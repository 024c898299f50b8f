package io.github.saltfront.app.export;

import io.github.saltfront.trial.SampleSize;
import io.github.saltfront.trial.SoughtEffect;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** Before a trial: how many tasters, or what a number of tasters can show. */
public final class TrialPowerText {
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
        text.append(TextLayout.wrapped("Suppose " + sought.words() + ".", 0)).append('\n');
        if (tastings.isPresent()) {
            int n = tastings.getAsInt();
            text.append(TextLayout.wrapped(
                    String.format(
                            Locale.ROOT,
                            "With %d %s such a difference is found with a chance of %s, and missed with a chance of %s.",
                            n,
                            unit,
                            TrialWords.chance(sought.power(n, alpha)),
                            TrialWords.chance(1 - sought.power(n, alpha))),
                    0));
        }
        Optional<SampleSize> size = sought.size(alpha, power);
        text.append(TextLayout.wrapped(
                "To find it with a chance of " + TrialWords.chance(power) + " it takes " + TrialWords.size(size, unit)
                        + ".",
                0));
        text.append(TextLayout.wrapped(
                "Where there is no difference, a trial still finds one with a chance of up to "
                        + TrialWords.chance(alpha) + ".",
                0));
        text.append('\n').append(TextLayout.wrapped(advice(size, sought), 0));
        return text.toString();
    }

    private static String advice(Optional<SampleSize> size, SoughtEffect sought) {
        int n = size.map(SampleSize::stable).orElse(SampleSize.MOST);
        if (n <= 40) {
            return "Fix this number before the first bite, invite two or three more, and do not stop early because the"
                    + " result looks good.";
        }
        if (sought instanceof SoughtEffect.Majority || sought instanceof SoughtEffect.Gap) {
            return "That is many. Fewer people can only show a larger effect; look for that, or leave the trial until you can"
                    + " seat them.";
        }
        return "That is many. If you can name what should differ (saltier, juicier, more tender), ask for it directly:"
                + " a directional paired test (2-afc) finds the same difference with far fewer tasters than a triangle.";
    }
}
