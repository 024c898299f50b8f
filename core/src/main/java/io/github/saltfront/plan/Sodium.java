package io.github.saltfront.plan;

import io.github.saltfront.catalog.SaltForm;
import io.github.saltfront.units.Checks;

/**
 * Sodium and salt as labels count them. All masses of sodium in kg, fractions in kg/kg.
 *
 * @see "cfr21-101-9, 21 CFR 101.9(c)(4) rounding, (c)(8)(iii) percent, (c)(9) Daily Value; cfr21-101-61 claims"
 */
public final class Sodium {
    /** Sodium adults are told not to exceed in a day [kg] (21 CFR 101.9(c)(9)). */
    public static final double DAILY_VALUE = 2.3e-3;

    /** Highest sodium of a reference amount that may be called low in sodium [kg] (21 CFR 101.61). */
    public static final double LOW = 140e-6;

    /** Highest sodium of a reference amount that may be called very low in sodium [kg] (21 CFR 101.61). */
    public static final double VERY_LOW = 35e-6;

    private static final double MILLIGRAM = 1e-6;
    private static final double FREE = 5;
    private static final double FINE_UP_TO = 140;

    private Sodium() {}

    /**
     * Returns the salt with as much sodium, {@code sodium / 0.39337} [any unit of mass].
     *
     * @param sodium sodium, same unit
     * @return salt
     */
    public static double saltOf(double sodium) {
        return sodium / SaltForm.SODIUM_OF_PURE_SALT;
    }

    /**
     * Returns the sodium of salt, {@code 0.39337 salt} [any unit of mass].
     *
     * @param salt pure sodium chloride, same unit
     * @return sodium
     */
    public static double of(double salt) {
        return salt * SaltForm.SODIUM_OF_PURE_SALT;
    }

    /**
     * Returns sodium as a US label declares it: nothing below 5 mg, to 5 mg up to 140 mg, to 10 mg above [kg].
     *
     * @param sodium sodium of a serving [kg], not negative
     * @return declared sodium [kg]
     */
    public static double declared(double sodium) {
        Checks.requireInRange("sodium of a serving", sodium, 0, 1, "kg");
        double milligrams = sodium / MILLIGRAM;
        if (milligrams < FREE) {
            return 0;
        }
        double step = milligrams <= FINE_UP_TO ? 5 : 10;
        return step * Math.rint(milligrams / step) * MILLIGRAM;
    }

    /**
     * Returns the percent of the Daily Value as a label prints it, to a whole percent of the sodium before rounding [%].
     *
     * @param sodium sodium of a serving [kg], not negative
     * @return whole percent
     */
    public static int dailyValuePercent(double sodium) {
        Checks.requireInRange("sodium of a serving", sodium, 0, 1, "kg");
        return (int) Math.rint(100 * sodium / DAILY_VALUE);
    }

    /**
     * Returns the sodium of a serving of cooked meat [kg].
     *
     * @param rawSaltFraction salt of the raw seasoned meat [kg/kg]
     * @param cookingYield cooked mass over raw mass [-]
     * @param kept share of the salt that stays in the meat [-]
     * @param servingMass cooked mass of a serving [kg]
     * @return sodium, not rounded
     */
    public static double ofServing(double rawSaltFraction, double cookingYield, double kept, double servingMass) {
        Checks.requireInRange("salt of the raw meat", rawSaltFraction, 0, 0.3, "kg/kg");
        Checks.requireInRange("cooking yield", cookingYield, 0.1, 1.5, "-");
        Checks.requireInRange("share of salt kept", kept, 0, 1, "-");
        Checks.requirePositive("serving", servingMass, "kg");
        return of(rawSaltFraction * kept / cookingYield * servingMass);
    }

    /**
     * Returns the salt of the raw seasoned meat of which a cooked serving holds that much sodium [kg/kg]; the inverse of
     * {@link #ofServing}.
     *
     * @param sodium sodium of the serving [kg]
     * @param cookingYield cooked mass over raw mass [-]
     * @param kept share of the salt that stays in the meat [-]
     * @param servingMass cooked mass of a serving [kg]
     * @return salt of the raw meat, native salt included
     */
    public static double rawSaltFor(double sodium, double cookingYield, double kept, double servingMass) {
        Checks.requireInRange("sodium of a serving", sodium, 0, 1, "kg");
        Checks.requireInRange("cooking yield", cookingYield, 0.1, 1.5, "-");
        Checks.requireInRange("share of salt kept", kept, 0.01, 1, "-");
        Checks.requirePositive("serving", servingMass, "kg");
        return saltOf(sodium) * cookingYield / (kept * servingMass);
    }

    /**
     * Returns the salt of the pan juices as they run, {@code (1 - kept) / (1 - yield) x raw salt} [kg/kg]. Reducing them makes
     * them saltier by as much as they shrink; taste before salting a gravy.
     *
     * @param rawSaltFraction salt of the raw seasoned meat [kg/kg]
     * @param cookingYield cooked mass over raw mass [-], below 1
     * @param kept share of the salt that stays in the meat [-]
     * @return salt per mass of what has left the meat, water that evaporated counted in
     */
    public static double ofPanJuices(double rawSaltFraction, double cookingYield, double kept) {
        Checks.requireInRange("salt of the raw meat", rawSaltFraction, 0, 0.3, "kg/kg");
        Checks.requireInRange("cooking yield", cookingYield, 0.1, 0.99, "-");
        Checks.requireInRange("share of salt kept", kept, 0, 1, "-");
        return (1 - kept) / (1 - cookingYield) * rawSaltFraction;
    }
}
