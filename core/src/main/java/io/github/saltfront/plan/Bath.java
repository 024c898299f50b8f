package io.github.saltfront.plan;

import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.matter.SaltSolubility;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.matter.SaltSugarSolution;
import io.github.saltfront.units.Checks;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A bath as mixed: liquids, the salt and the sugar added. What the liquids bring of water, salt, sugar and acid is counted.
 * Ice that melts in the bath is water and belongs among the liquids.
 *
 * <p>The strength meat feels is salt per water, whatever else is in the liquid; {@link #strength} is salt per mass of salt
 * and water.
 *
 * @param portions the liquids, at least one
 * @param addedSalt salt added, as sodium chloride [kg]
 * @param addedSugar sugar added [kg], at most as much as the bath holds salt
 */
public record Bath(List<Portion> portions, double addedSalt, double addedSugar) {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if there is no water, an amount is negative or NaN, or the added sugar is more than
     *     the salt
     */
    public Bath {
        portions = List.copyOf(portions);
        Checks.require(!portions.isEmpty(), "a bath needs at least one liquid, got none.");
        Checks.requireInRange("salt added", addedSalt, 0, 1000, "kg");
        Checks.requireInRange("sugar added", addedSugar, 0, 1000, "kg");
        Checks.requirePositive("water of the bath", sum(portions, l -> l.parts().water()), "kg");
        double salt = addedSalt + sum(portions, l -> l.parts().salt());
        Checks.require(
                addedSugar <= salt * (1 + 1e-9),
                "sugar added must be at most as much as the salt of the bath (" + salt + " kg), got " + addedSugar
                        + " kg; more makes a syrup, not a brine.");
    }

    /**
     * Returns a bath of one liquid.
     *
     * @param liquid the liquid
     * @param liquidMass its mass [kg]
     * @param addedSalt salt added [kg]
     * @param addedSugar sugar added [kg]
     * @return the bath
     */
    public static Bath of(Liquid liquid, double liquidMass, double addedSalt, double addedSugar) {
        return new Bath(List.of(new Portion(liquid, liquidMass)), addedSalt, addedSugar);
    }

    /**
     * Returns the same liquids with salt added until the bath has a strength.
     *
     * @param strength salt per mass of salt and water, the salt of the liquids included
     * @return the bath
     * @throws IllegalArgumentException if the liquids alone are stronger, or the sugar would be more than the salt
     */
    public Bath withStrength(SaltStrength strength) {
        double wanted = strength.saltPerWater() * water();
        double brought = liquidSalt();
        Checks.require(
                wanted >= brought * (1 - 1e-12),
                "strength must be at least that of the liquids alone, "
                        + brought / (brought + water()) + " kg/kg, got " + strength.saltFraction()
                        + " kg/kg; thin the liquid with water.");
        return new Bath(portions, Math.max(0, wanted - brought), addedSugar);
    }

    /**
     * Returns the same liquids and salt with another amount of sugar added.
     *
     * @param sugar sugar added [kg]
     * @return the bath
     * @throws IllegalArgumentException if it is more than the salt of the bath
     */
    public Bath withSugar(double sugar) {
        return new Bath(portions, addedSalt, sugar);
    }

    /** Returns the water of the bath [kg]. */
    public double water() {
        return sum(portions, l -> l.parts().water());
    }

    /** Returns the salt the liquids bring [kg]. */
    public double liquidSalt() {
        return sum(portions, l -> l.parts().salt());
    }

    /** Returns all salt of the bath [kg]. */
    public double salt() {
        return addedSalt + liquidSalt();
    }

    /** Returns all sugar of the bath [kg]. */
    public double sugar() {
        return addedSugar + sum(portions, l -> l.parts().sugar());
    }

    /** Returns the acid the liquids bring, by the middle of their ranges [kg]. */
    public double acid() {
        return sum(portions, l -> l.acid().fraction().typical());
    }

    /** Returns the mass of the liquids before anything is added [kg]. */
    public double liquidMass() {
        return sum(portions, l -> 1);
    }

    /** Returns the mass of the whole bath [kg]. */
    public double mass() {
        return liquidMass() + addedSalt + addedSugar;
    }

    /** Returns the salt per mass of water [kg/kg]. */
    public double saltPerWater() {
        return salt() / water();
    }

    /** Returns the strength meat feels, salt per mass of salt and water. */
    public SaltStrength strength() {
        return SaltStrength.ofSaltPerWater(saltPerWater());
    }

    /** Returns the salt per mass of the whole bath, fat, protein and sugar included [kg/kg]. */
    public double saltOfMass() {
        return salt() / mass();
    }

    /**
     * Returns the salt its water can hold [kg].
     *
     * @param temperature temperature of the bath [K]
     */
    public double solubleSalt(double temperature) {
        double saturation = SaltSolubility.saturation(temperature);
        return water() * saturation / (1 - saturation);
    }

    /**
     * Returns the salt that would stay as crystals [kg]; 0 if all dissolves.
     *
     * @param temperature temperature of the bath [K]
     */
    public double undissolvedSalt(double temperature) {
        return Math.max(0, salt() - solubleSalt(temperature));
    }

    /**
     * Returns this bath if all its salt dissolves.
     *
     * @param temperature temperature of the bath [K]
     * @return this
     * @throws IllegalArgumentException if not, with the salt the water can hold
     */
    public Bath requireDissolved(double temperature) {
        Checks.require(
                undissolvedSalt(temperature) <= 1e-12 * water(),
                "salt of the bath must be at most " + solubleSalt(temperature) + " kg in " + water()
                        + " kg of water at " + temperature + " K (saturation), got " + salt()
                        + " kg; the rest would stay as crystals.");
        return this;
    }

    /** Returns the density near 20 degrees Celsius by additive volumes of the liquids and what is added [kg/m3]. */
    public double density() {
        double volume = portions.stream()
                .mapToDouble(p -> p.mass() / p.liquid().density())
                .sum();
        SaltSugarSolution added = new SaltSugarSolution(addedSalt / water(), addedSugar / water());
        // what salt and sugar add to the volume of the water they go into
        double growth = water() * ((1 + added.saltPerWater() + added.sugarPerWater()) / added.density())
                - water() / new SaltSugarSolution(0, 0).density();
        return mass() / (volume + growth);
    }

    /** Returns the volume near 20 degrees Celsius [m3]. */
    public double volume() {
        return mass() / density();
    }

    /** Returns the allergens of the liquids, each once. */
    public List<Liquid.Allergen> allergens() {
        return portions.stream()
                .flatMap(p -> p.liquid().allergens().stream())
                .distinct()
                .sorted()
                .toList();
    }

    private static double sum(List<Portion> portions, ToDoubleFunction<Liquid> share) {
        return portions.stream()
                .mapToDouble(p -> p.mass() * share.applyAsDouble(p.liquid()))
                .sum();
    }

    /**
     * An amount of one liquid.
     *
     * @param liquid the liquid
     * @param mass its mass [kg]
     */
    public record Portion(Liquid liquid, double mass) {
        /** Checks the mass. */
        public Portion {
            Checks.requirePositive("mass of the liquid", mass, "kg");
        }
    }
}
