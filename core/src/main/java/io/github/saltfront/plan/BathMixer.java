package io.github.saltfront.plan;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Liquid;
import java.util.List;
import java.util.Optional;

/**
 * Mixes a bath of a given mass of liquid: adds salt to a strength, or so much that meat ends at a target. A liquid that is too
 * salty by itself, such as soy sauce, is thinned with water, the mass staying the same:
 *
 * <pre>f M s = c (M (f w + 1 - f) + E) - S0</pre>
 *
 * with the share f of the liquid, its salt s and water w, the mass M, the wanted salt per water c, and the water E and the salt S0
 * of the meat that count (both zero for a strength).
 *
 * @param liquid the liquid
 * @param mass mass of liquid and water together [kg]
 * @param sugarPerSalt sugar per added salt [kg/kg]
 */
record BathMixer(Liquid liquid, double mass, double sugarPerSalt) {
    /**
     * Returns a bath of a strength.
     *
     * @param saltPerWater salt per water, the salt of the liquid counted [kg/kg]
     */
    Bath strong(double saltPerWater) {
        return mixed(saltPerWater, 0, 0).orElseThrow();
    }

    /**
     * Returns the bath in which meat ends at a target if it is left for good; empty if it holds more already.
     *
     * @param meat the meat
     * @param target salt per mass of the salted meat [kg/kg]
     */
    Optional<Bath> matched(MeatInBath meat, double target) {
        double one = meat.doseFor(1, target);
        double saltPerWater = meat.doseFor(2, target) - one;
        return mixed(saltPerWater, meat.effectiveWater(), meat.nativeSalt());
    }

    private Optional<Bath> mixed(double saltPerWater, double meatWater, double meatSalt) {
        double water = liquid.parts().water();
        double salt = liquid.parts().salt();
        double wanted = saltPerWater * (mass * water + meatWater) - meatSalt;
        double lacking = wanted - mass * salt;
        if (lacking >= 0) {
            return Optional.of(Bath.of(liquid, mass, lacking, sugarPerSalt * lacking));
        }
        double enough = saltPerWater * (mass + meatWater) - meatSalt;
        if (enough <= 0) {
            return Optional.empty();
        }
        double share = enough / (mass * (salt + saltPerWater * (1 - water)));
        Liquid plain = Catalog.load().liquids().get("water");
        return Optional.of(new Bath(
                List.of(new Bath.Portion(liquid, share * mass), new Bath.Portion(plain, (1 - share) * mass)), 0, 0));
    }
}
