package io.github.saltfront.plan;

import io.github.saltfront.catalog.CutComposition;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.catalog.SaltForm;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.quality.Band;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Checks;

/**
 * A bath to be worked out.
 *
 * @param food the meat
 * @param mix what the bath is made of
 * @param goal how its salt is found
 * @param levels lowest, wanted and highest mean salt of the raw meat [kg/kg]
 * @param temperature temperature of the soak [K]
 */
public record BrineOrder(Food food, Mix mix, Goal goal, Band levels, double temperature) {
    /** Checks the values. */
    public BrineOrder {
        Checks.requireInRange("lowest salt of the meat", levels.low(), 0, 0.05, "kg/kg");
        Checks.requireInRange("highest salt of the meat", levels.high(), 0, 0.05, "kg/kg");
        Checks.requireInRange("temperature of the soak", temperature, 263, 313, "K");
    }

    /** How the salt of the bath is found. */
    public sealed interface Goal {}

    /**
     * A strength.
     *
     * @param strength salt per mass of salt and water, all salt counted
     */
    public record Strength(SaltStrength strength) implements Goal {}

    /** So little salt that meat left in the bath for good ends at the wanted level, within a twentieth for swelling. */
    public record Equilibrium() implements Goal {}

    /**
     * The meat.
     *
     * @param name what it is
     * @param composition composition of its edible part
     * @param edibleMass mass of all pieces without bone [kg]
     * @param shape shape of one piece
     * @param diffusivity how fast salt moves in it
     * @param hasSkin whether skin is on
     * @param label what it held when bought
     */
    public record Food(
            String name,
            CutComposition composition,
            double edibleMass,
            Shape shape,
            SaltDiffusivity diffusivity,
            boolean hasSkin,
            SaltedAlready label) {
        /** Checks the mass. */
        public Food {
            Checks.requirePositive("mass of the meat", edibleMass, "kg");
        }

        /** Returns the composition with the salt of the label in place of that of the table. */
        CutComposition asBought() {
            CutComposition c = composition.normalized();
            return new CutComposition(
                    c.water(), c.protein(), c.fat(), c.carbohydrate(), c.ash(), label.salt(), c.density());
        }
    }

    /**
     * What goes into the bath.
     *
     * @param liquid the liquid
     * @param liquidMass its mass [kg]
     * @param sugar sugar added [kg]
     * @param salt grain of the salt at hand
     */
    public record Mix(Liquid liquid, double liquidMass, double sugar, SaltForm salt) {
        /** Checks the amounts. */
        public Mix {
            Checks.requirePositive("mass of the liquid", liquidMass, "kg");
            Checks.requireInRange("sugar", sugar, 0, liquidMass, "kg");
        }
    }
}
