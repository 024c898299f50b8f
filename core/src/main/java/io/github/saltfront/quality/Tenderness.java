package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;

/**
 * Words for how tender meat gets. Tough cuts: the share of the way to tender by {@link CollagenTenderness}. Lean cuts: the share of
 * actin that has changed in the middle, since elastic modulus rises from at most 14 kPa with all myosin changed to 60 kPa with all actin
 * changed (Ishiwatari et al. 2013, abstract). The limits between the words are ours.
 */
public final class Tenderness {
    private static final Phrases PHRASES = Phrases.of(Tenderness.class);

    private Tenderness() {}

    /**
     * Returns the word for a tough cut.
     *
     * @param share share of the way to tender [-], 1 is tender
     * @return the word
     */
    public static String ofCollagen(double share) {
        Checks.requireInRange("share of the way to tender", share, 0, Double.MAX_VALUE, "-");
        if (share < 0.4) {
            return PHRASES.say("still-tough-its-collagen-is");
        }
        if (share < 0.8) {
            return PHRASES.say("chewy-half-way-to-tender");
        }
        return share < 2.5 ? "tender" : PHRASES.say("falling-apart");
    }

    /**
     * Returns the word for a lean cut.
     *
     * @param actin changed share of actin in the middle [-]
     * @return the word
     */
    public static String ofActin(double actin) {
        Checks.requireInRange("changed share of actin", actin, 0, 1, "-");
        if (actin < 0.15) {
            return PHRASES.say("soft-and-juicy-in-the");
        }
        return actin < 0.6 ? PHRASES.say("firmer-in-the-middle") : PHRASES.say("firm-and-dry-to-the");
    }
}
