package io.github.saltfront.plan;

import io.github.saltfront.catalog.CutComposition;
import io.github.saltfront.matter.Composition;
import io.github.saltfront.matter.NernstHartley;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.Piece;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.units.Checks;

/**
 * A piece of meat in a bath at one temperature, as the layer solver sees it: no heat moves, salt and water do.
 *
 * <p>Skin is a resistance in series. Bone lets no salt through and is not part of the piece.
 *
 * @param shape shape of the piece
 * @param meat composition of its edible part; its native salt counts
 * @param exchange the bath, per mass of meat
 * @param temperature temperature of bath and meat [K]
 * @param partition salt per water in the meat over that in the bath [-]
 * @param skinResistance resistance of skin and fat to salt [m2.s/kg]; 0 without skin, {@link #SKIN_RESISTANCE} with it
 */
public record Soak(
        Shape shape,
        CutComposition meat,
        Exchange exchange,
        double temperature,
        double partition,
        double skinResistance) {
    /** Resistance of poultry skin with its fat [m2.s/kg]; an engineering guess, only fish skin was ever measured. */
    public static final double SKIN_RESISTANCE = SkinBarrier.RESISTANCE;

    /** Most of what free water lets through [-]; meat cannot be faster. */
    private static final double CAP = 0.85;

    /** Heat transfer of a liquid [W/(m2.K)]; without effect, as bath and meat start equally warm. */
    private static final double LIQUID = 500;

    /** Checks the values. */
    public Soak {
        Checks.requireInRange("partition coefficient", partition, 0.1, 2, "-");
        Checks.requireInRange("skin resistance", skinResistance, 0, 1e12, "m2.s/kg");
        Checks.requireInRange("temperature of the soak", temperature, 263, 313, "K");
    }

    /**
     * The bath per mass of meat.
     *
     * @param saltPerMeat salt of the bath per mass of meat [kg/kg]
     * @param waterPerMeat water of the bath per mass of meat [kg/kg]
     * @param swelling excess water of meat at equilibrium with the bath
     */
    public record Exchange(double saltPerMeat, double waterPerMeat, SaltSource.Swelling swelling) {
        /** Checks the values. */
        public Exchange {
            Checks.requireInRange("salt of the bath per mass of meat", saltPerMeat, 0, 1000, "kg/kg");
            Checks.requireInRange("water of the bath per mass of meat", waterPerMeat, 1e-3, 1e6, "kg/kg");
        }

        /**
         * Returns a bath around meat.
         *
         * @param bath the bath
         * @param meatMass edible mass in it [kg]
         * @param swelling excess water of meat at equilibrium with the bath
         * @return the exchange
         */
        public static Exchange of(Bath bath, double meatMass, SaltSource.Swelling swelling) {
            Checks.requirePositive("mass of the meat", meatMass, "kg");
            return new Exchange(bath.salt() / meatMass, bath.water() / meatMass, swelling);
        }
    }

    /**
     * Returns the piece with a diffusion coefficient, held below that of free water.
     *
     * @param diffusivity diffusion coefficient of salt in the meat at the temperature of the soak [m2/s]
     * @return the piece
     */
    Piece piece(double diffusivity) {
        CutComposition parts = meat.normalized();
        double salt = parts.nativeSalt();
        double ash = Math.max(0, parts.ash() - salt);
        Composition composition =
                Composition.ofPrinted(parts.water(), parts.protein(), parts.fat(), parts.carbohydrate(), ash);
        double solids = 1 - parts.water() - salt;
        double capped = Math.min(diffusivity, CAP * NernstHartley.diffusionCoefficient(temperature));
        return new Piece(
                shape,
                new InitialState(temperature, parts.water() / solids, salt / solids),
                MeatHeat.of(composition),
                new SaltProperties(capped, 0, partition, 1, skinResistance),
                false,
                1);
    }

    Member member(double diffusivity) {
        return piece(diffusivity).member(false);
    }

    SaltSource source(double meatPerArea) {
        return new SaltSource.Bath(
                exchange.saltPerMeat() * meatPerArea, exchange.waterPerMeat() * meatPerArea, exchange.swelling());
    }

    FaceCondition face() {
        return FaceCondition.convection(temperature, LIQUID);
    }
}
