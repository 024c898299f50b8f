package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;

/**
 * Words for how dry a skin or surface is: the share of the water of its outer half millimeter that is gone. Crisp skin has lost nearly
 * all of its water; a skin that was soaked starts with more than it had (common practice, no source). Limits are ours.
 */
public final class SkinDryness {
    private static final Phrases PHRASES = Phrases.of(SkinDryness.class);

    private SkinDryness() {}

    /**
     * Returns the share of the water that is gone.
     *
     * @param water water per dry solids now [kg/kg]
     * @param raw water per dry solids of the raw piece [kg/kg]
     * @return share [-], negative if it has taken water up
     */
    public static double share(double water, double raw) {
        Checks.requirePositive("water of the raw piece", raw, "kg/kg");
        return 1 - water / raw;
    }

    /**
     * Returns the word for a share.
     *
     * @param share share of the water that is gone [-]
     * @return the word
     */
    public static String word(double share) {
        Checks.requireInRange("share of the water that is gone", share, -10, 1, "-");
        if (share < 0.4) {
            return PHRASES.say("moist-and-soft");
        }
        return share < 0.8 ? PHRASES.say("half-dry-leathery") : PHRASES.say("dry-able-to-be-crisp");
    }
}
