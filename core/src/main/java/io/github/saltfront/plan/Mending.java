package io.github.saltfront.plan;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Checks;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Raw meat that was salted too much or too little, and what can be done. Too salty: plain cold water draws salt out, as slowly as
 * brine put it in. Too mild: salt on the surface. Its salt is taken as even through the piece; after a short brine most of it is
 * in the outer layer and leaves faster than this says.
 *
 * @param food the meat; its label is not used
 * @param present salt it holds now, with its band [kg/kg]
 * @param levels lowest, wanted and highest mean salt [kg/kg]
 * @param water plain water to soak it in [kg]
 * @param temperature temperature of the soak [K]
 */
public record Mending(BrineOrder.Food food, Band present, Band levels, double water, double temperature) {
    /** Checks the values. */
    public Mending {
        Checks.requireInRange("salt of the meat now", present.low(), 0, 0.1, "kg/kg");
        Checks.requireInRange("salt of the meat now", present.high(), 0, 0.1, "kg/kg");
        Checks.requireInRange("lowest salt wanted", levels.low(), 0, 0.05, "kg/kg");
        Checks.requirePositive("water", water, "kg");
    }

    /** What to do. */
    public enum Verdict {
        /** Salt is above the highest level: soak it out. */
        SOAK_OUT,
        /** Salt is right: leave it. */
        LEAVE,
        /** Salt is below the lowest level: finish on the surface. */
        FINISH
    }

    /** Returns what to do, by the typical salt it holds. */
    public Verdict verdict() {
        if (present.typical() > levels.high()) {
            return Verdict.SOAK_OUT;
        }
        return present.typical() < levels.low() ? Verdict.FINISH : Verdict.LEAVE;
    }

    /** Returns the salt to put on the surface so that the meat comes to the wanted level [kg], for its least, typical and most salt. */
    public Band finish() {
        return new Band(dose(present.high()), dose(present.typical()), dose(present.low()));
    }

    private double dose(double salt) {
        return DrySalting.toTarget(food.edibleMass(), 0, salt, levels.typical()).salt();
    }

    /** Returns the salt of the meat if it is left in that water for good [kg/kg]: no soak in it gets lower. */
    public double end() {
        return MeatInBath.ofBought(
                        food.edibleMass(),
                        food.composition().normalized().water(),
                        present.typical(),
                        MeatInBath.PARTITION_TYPICAL)
                .equilibrium(water, 0)
                .meatSaltFraction();
    }

    /** Returns the mean salt against time in plain water; empty unless the meat is too salty. */
    public Optional<SoakWindow> soakOut() {
        if (verdict() != Verdict.SOAK_OUT) {
            return Optional.empty();
        }
        Bath bath = Bath.of(Catalog.load().liquids().get("water"), water, 0, 0);
        SaltedAlready salted = new SaltedAlready(
                OptionalDouble.empty(), OptionalDouble.of(Sodium.of(present.typical())), 0, false, true);
        BrineOrder.Food salty = new BrineOrder.Food(
                food.name(),
                food.composition(),
                food.edibleMass(),
                food.shape(),
                food.diffusivity(),
                food.hasSkin(),
                salted);
        Soak soak = new Soak(
                food.shape(),
                salty.asBought(),
                Soak.Exchange.of(
                        bath,
                        food.edibleMass(),
                        NetMassGain.load()
                                .swelling(
                                        salty.asBought().water(),
                                        salty.asBought().nativeSalt(),
                                        MeatInBath.PARTITION_TYPICAL,
                                        0)),
                temperature,
                MeatInBath.PARTITION_TYPICAL,
                food.hasSkin() ? Soak.SKIN_RESISTANCE : 0);
        return Optional.of(SoakWindow.of(soak, food.diffusivity(), levels, BrineSheet.LONGEST));
    }

    /** Returns the cautions of a soak in plain water, gravest first. */
    public static List<HandlingCaution> cautions() {
        return HandlingCaution.forOccasions(List.of("soak"));
    }
}
