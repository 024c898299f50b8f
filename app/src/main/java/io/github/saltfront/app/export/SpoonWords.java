package io.github.saltfront.app.export;

import io.github.saltfront.plan.SpoonedSalt;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;

/** Level spoons in words, with what they hold in truth. */
final class SpoonWords {
    private static final Phrases PHRASES = Phrases.of(SpoonWords.class);

    private static final String[] EIGHTHS = {"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};

    /** Mass below which a tenth of a gram is told [kg]. */
    private static final double FINE_BELOW = 0.020;

    private SpoonWords() {}

    static String of(SpoonedSalt salt) {
        List<String> parts = new ArrayList<>();
        add(
                parts,
                salt.quarterCups() / 4,
                new String[] {"", "1/4", "1/2", "3/4"}[salt.quarterCups() % 4],
                PHRASES.say("cup"));
        add(parts, salt.tablespoons(), "", PHRASES.say("tablespoon"));
        add(parts, salt.eighthTeaspoons() / 8, EIGHTHS[salt.eighthTeaspoons() % 8], PHRASES.say("teaspoon"));
        String form = salt.wanted() < FINE_BELOW ? PHRASES.say("s-1f-to-1f-g") : PHRASES.say("s-0f-to-0f-g");
        return Phrases.figures(
                form,
                String.join(" + ", parts),
                salt.mass().low() * 1000,
                salt.mass().high() * 1000);
    }

    private static void add(List<String> parts, int whole, String fraction, String unit) {
        String number = whole > 0 ? whole + (fraction.isEmpty() ? "" : " " + fraction) : fraction;
        if (!number.isEmpty()) {
            parts.add(number + " " + unit);
        }
    }
}
