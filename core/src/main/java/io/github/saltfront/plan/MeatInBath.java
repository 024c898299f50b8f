package io.github.saltfront.plan;

import io.github.saltfront.units.Checks;

/**
 * Mass balance of salt between meat and a finite bath that are left together until nothing moves any more.
 *
 * <pre>
 * c = (S + S0) / (W + K x m)          salt per water of the bath at equilibrium
 * salt in the meat = K c x m          and, per mass of salted meat, K c x / (1 + K c x)
 * dose for a target t:  S = t / (1 - t) (W + K x m) / (K x) - S0
 * </pre>
 *
 * with the water W and the salt S of the bath, the meat m without its salt, its water share x, the salt S0 it brings and the
 * partition K. Swelling is left out: it changes the salt of the meat by less than 5 % of itself. Equilibrium takes days to
 * weeks in thick pieces, so this bounds what a soak can reach; it is no soaking time.
 *
 * <p>The partition has not been measured for meat; {@link #PARTITION_TYPICAL} and its band are judgement.
 *
 * @param saltFreeMass meat without its salt, m [kg]
 * @param waterFraction water of the meat per mass without its salt, x [kg/kg]
 * @param nativeSalt salt the meat brings, S0 [kg]
 * @param partition salt per water in the meat over salt per water in the bath at equilibrium, K [-]
 */
public record MeatInBath(double saltFreeMass, double waterFraction, double nativeSalt, double partition) {
    /** Lower end of the judged band of the partition [-]. */
    public static final double PARTITION_LOW = 0.85;

    /** Default partition [-]; judgement, slightly below 1 because some water is bound to protein. */
    public static final double PARTITION_TYPICAL = 0.95;

    /** Upper end of the judged band of the partition [-]. */
    public static final double PARTITION_HIGH = 1.05;

    private static final double HIGHEST_TARGET = 0.1;

    /** Checks the values. */
    public MeatInBath {
        Checks.requirePositive("mass of the meat", saltFreeMass, "kg");
        Checks.requireInRange("water fraction of the meat", waterFraction, 0.05, 1, "kg/kg");
        Checks.requireInRange("salt of the meat", nativeSalt, 0, 0.2 * saltFreeMass, "kg");
        Checks.requireInRange("partition coefficient", partition, 0.1, 2, "-");
    }

    /**
     * Returns the balance for meat as bought.
     *
     * @param mass mass of the edible meat, its salt included [kg]
     * @param waterFraction water of that mass [kg/kg]
     * @param saltFraction salt of that mass, native or added by the maker [kg/kg]
     * @param partition salt per water in the meat over that in the bath [-]
     * @return the balance
     */
    public static MeatInBath ofBought(double mass, double waterFraction, double saltFraction, double partition) {
        Checks.requirePositive("mass of the meat", mass, "kg");
        Checks.requireInRange("salt fraction of the meat", saltFraction, 0, 0.15, "kg/kg");
        return new MeatInBath(
                mass * (1 - saltFraction), waterFraction / (1 - saltFraction), mass * saltFraction, partition);
    }

    /** Returns the water of the meat that counts, K x m [kg]. */
    public double effectiveWater() {
        return partition * waterFraction * saltFreeMass;
    }

    /**
     * Returns where meat and bath end.
     *
     * @param bathWater water of the bath, W [kg]
     * @param bathSalt salt of the bath, S [kg]
     * @return the state when nothing moves any more
     */
    public Equilibrium equilibrium(double bathWater, double bathSalt) {
        Checks.requirePositive("water of the bath", bathWater, "kg");
        Checks.requireInRange("salt of the bath", bathSalt, 0, bathWater, "kg");
        double saltPerWater = (bathSalt + nativeSalt) / (bathWater + effectiveWater());
        double inMeat = saltPerWater * effectiveWater();
        return new Equilibrium(saltPerWater, inMeat, inMeat / (saltFreeMass + inMeat));
    }

    /**
     * Returns the salt the bath must hold in all, so that the meat ends at a target; by this balance it cannot pass it from below.
     *
     * @param bathWater water of the bath, W [kg]
     * @param target salt per mass of the salted meat [kg/kg], native salt included
     * @return salt of the bath [kg]; negative if even plain water leaves the meat above the target, by the salt that is too
     *     much
     */
    public double doseFor(double bathWater, double target) {
        Checks.requirePositive("water of the bath", bathWater, "kg");
        requireTarget(target);
        double saltPerWater = target / (1 - target) / (partition * waterFraction);
        return saltPerWater * (bathWater + effectiveWater()) - nativeSalt;
    }

    /**
     * Returns what the common shortcut doses, {@code target x (meat + water)}. It takes the solids of the meat for water and
     * ends too low, by about a seventh for equal parts of meat and water. For comparison only.
     *
     * @param bathWater water of the bath [kg]
     * @param target salt per mass of the salted meat [kg/kg]
     * @return salt the shortcut puts into the bath [kg]
     */
    public double shortcutDose(double bathWater, double target) {
        Checks.requirePositive("water of the bath", bathWater, "kg");
        requireTarget(target);
        return target * (saltFreeMass + bathWater);
    }

    /**
     * Returns what is left of the strength of a bath at equilibrium with meat that brought no salt, {@code W / (W + K x m)}.
     *
     * @param bathWater water of the bath, W [kg]
     * @return salt per water at the end over that at the start [-]
     */
    public double remainingStrength(double bathWater) {
        Checks.requirePositive("water of the bath", bathWater, "kg");
        return bathWater / (bathWater + effectiveWater());
    }

    /**
     * Returns the dry salt to put on this meat for a target: {@code t / (1 - t) m - S0}.
     *
     * @param target salt per mass of the salted meat [kg/kg], native salt included
     * @return salt [kg]; negative if the meat already holds more
     */
    public double dryDoseFor(double target) {
        requireTarget(target);
        return target / (1 - target) * saltFreeMass - nativeSalt;
    }

    private static void requireTarget(double target) {
        Checks.requireInRange("target salt of the meat", target, 0, HIGHEST_TARGET, "kg/kg");
    }

    /**
     * Meat and bath when nothing moves any more.
     *
     * @param saltPerWater salt per water of the bath [kg/kg]
     * @param saltInMeat salt in the meat, native salt included [kg]
     * @param meatSaltFraction salt per mass of the salted meat [kg/kg]
     */
    public record Equilibrium(double saltPerWater, double saltInMeat, double meatSaltFraction) {
        /** Returns the salt of the bath per mass of its salt and water [kg/kg]. */
        public double bathSaltFraction() {
            return saltPerWater / (1 + saltPerWater);
        }
    }
}
