package io.github.saltfront.plan;

import io.github.saltfront.matter.SaltSolubility;
import io.github.saltfront.units.Checks;

/**
 * Salt spread on meat: how much, and the water it draws before it dissolves.
 *
 * @param edibleMass mass that is eaten, bone taken off [kg]
 * @param salt salt to spread [kg]
 */
public record DrySalting(double edibleMass, double salt) {
    /** Time fine salt takes to dissolve on moist lean meat [s]; common practice, no source. */
    public static final double DISSOLVING_SHORTEST = 15 * 60;

    /** The same on cold or moist meat at the slow end [s]; dry skin and coarse grains take longer; common practice. */
    public static final double DISSOLVING_LONGEST = 60 * 60;

    /** Earliest time after salting at which the surface stands wet and is the worst to sear [s]; common practice. */
    public static final double WET_FROM = 3 * 60;

    /** Latest such time [s]; common practice, no source. */
    public static final double WET_UNTIL = 40 * 60;

    /** Checks the values. */
    public DrySalting {
        Checks.requirePositive("edible mass", edibleMass, "kg");
        Checks.requireInRange("salt", salt, 0, 0.15 * edibleMass, "kg");
    }

    /**
     * Returns the dose for a share of the edible mass.
     *
     * @param massAsBought mass with bone [kg]
     * @param boneShare bone of that mass [-], 0 to 0.7
     * @param dose salt per edible mass [kg/kg], 0 to 0.15
     * @return the salting
     */
    public static DrySalting ofShare(double massAsBought, double boneShare, double dose) {
        double edible = edible(massAsBought, boneShare);
        return new DrySalting(edible, Checks.requireInRange("dose", dose, 0, 0.15, "kg/kg") * edible);
    }

    /**
     * Returns the dose that brings the edible part to a target, its own salt counted; nothing if it holds enough.
     *
     * @param massAsBought mass with bone [kg]
     * @param boneShare bone of that mass [-], 0 to 0.7
     * @param presentSalt salt the edible part holds already [kg/kg]
     * @param target salt per mass of the salted edible part [kg/kg]
     * @return the salting
     */
    public static DrySalting toTarget(double massAsBought, double boneShare, double presentSalt, double target) {
        double edible = edible(massAsBought, boneShare);
        // the water share does not enter the dry dose
        double dose = MeatInBath.ofBought(edible, 0.7, presentSalt, 1).dryDoseFor(target);
        return new DrySalting(edible, Math.max(0, dose));
    }

    private static double edible(double massAsBought, double boneShare) {
        Checks.requirePositive("mass as bought", massAsBought, "kg");
        return massAsBought * (1 - Checks.requireInRange("bone share", boneShare, 0, 0.7, "-"));
    }

    /** Returns the salt per edible mass [kg/kg]. */
    public double share() {
        return salt / edibleMass;
    }

    /**
     * Returns the water that stands on the meat before the salt is dissolved, {@code S (1 - w) / w} with the saturated strength
     * w [kg]; about 2.8 times the salt. Most of it goes back with the salt.
     *
     * @param temperature temperature of the meat [K]
     */
    public double waterDrawn(double temperature) {
        double saturation = SaltSolubility.saturation(temperature);
        return salt * (1 - saturation) / saturation;
    }
}
