package io.github.saltfront.plan;

import io.github.saltfront.matter.Melinder2010;
import io.github.saltfront.matter.Parker1965;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import java.util.List;

/**
 * Ice that chills a brine made with warm water. All ice melts and becomes water of the brine: count it in the recipe.
 *
 * <pre>
 * heat of ice   e = c_ice (0 - T_ice) + L + c_water (T_end - 0)        per kg, temperatures in degrees Celsius
 * ice           m = sum m_j c_j (T_j - T_end) / e
 * </pre>
 *
 * <p>Losses to the pot and the room are left out; they save ice when the room is cold and cost it when warm. The heat taken up by
 * dissolving salt helps and is left out as well unless it is given as a portion ({@link #dissolving}).
 *
 * @see "crc2005, heat of fusion of water; heat capacity of ice 2.05 kJ/(kg.K) from memory"
 */
public final class IceBalance {
    /** Latent heat of ice at 0 degrees Celsius [J/kg]. */
    public static final double HEAT_OF_FUSION = 333.55e3;

    /** Heat capacity of ice near -10 degrees Celsius [J/(kg.K)]; from memory. */
    public static final double ICE_HEAT_CAPACITY = 2050;

    /** Heat capacity of water, mean of 0 to 100 degrees Celsius [J/(kg.K)]. */
    public static final double WATER_HEAT_CAPACITY = 4190;

    /** Temperature of a home freezer [K]; common practice. */
    public static final double FREEZER = Temperature.fromCelsius(-18);

    /** Temperature at which the surface of meat begins to freeze, upper end [K]. */
    public static final double MEAT_FREEZES = Temperature.fromCelsius(-1);

    private static final int ITERATIONS = 30;

    private IceBalance() {}

    /**
     * Something warm that is chilled.
     *
     * @param mass its mass [kg]
     * @param heatCapacity heat capacity [J/(kg.K)]
     * @param temperature its temperature [K]
     */
    public record Warm(double mass, double heatCapacity, double temperature) {
        /** Checks the values. */
        public Warm {
            Checks.requireInRange("mass", mass, 0, 1e4, "kg");
            Checks.requireInRange("heat capacity", heatCapacity, 100, 5000, "J/(kg.K)");
            Checks.requireInRange("temperature", temperature, 230, 380, "K");
        }

        /**
         * Returns plain water.
         *
         * @param mass its mass [kg]
         * @param temperature its temperature [K]
         */
        public static Warm water(double mass, double temperature) {
            return new Warm(mass, WATER_HEAT_CAPACITY, temperature);
        }

        /**
         * Returns brine, with the heat capacity at 5 degrees Celsius, within 3 % of that at the boil.
         *
         * @param mass its mass, salt included [kg]
         * @param saltFraction salt per mass of brine [kg/kg]
         * @param temperature its temperature [K]
         */
        public static Warm brine(double mass, double saltFraction, double temperature) {
            return new Warm(mass, Melinder2010.heatCapacity(Temperature.fromCelsius(5), saltFraction), temperature);
        }

        /**
         * Returns the heat to be taken away [J].
         *
         * @param end temperature to reach [K]
         */
        public double heatAbove(double end) {
            return mass * heatCapacity * (temperature - end);
        }
    }

    /**
     * Returns the heat a mass of ice takes up until it is water of the end temperature [J/kg].
     *
     * @param ice temperature of the ice [K], at most 0 degrees Celsius
     * @param end temperature to reach [K], at least 0 degrees Celsius
     * @return heat
     */
    public static double heatOfIce(double ice, double end) {
        double zero = Temperature.fromCelsius(0);
        Checks.requireInRange("temperature of the ice", ice, zero - 60, zero, "K");
        Checks.requireInRange("end temperature", end, zero, zero + 60, "K");
        return ICE_HEAT_CAPACITY * (zero - ice) + HEAT_OF_FUSION + WATER_HEAT_CAPACITY * (end - zero);
    }

    /**
     * Returns the ice needed [kg].
     *
     * @param portions what is warm; what is colder than the end helps
     * @param ice temperature of the ice [K]
     * @param end temperature to reach [K], at least 0 degrees Celsius
     * @return ice, 0 if nothing is warm
     */
    public static double iceFor(List<Warm> portions, double ice, double end) {
        double heat = portions.stream().mapToDouble(p -> p.heatAbove(end)).sum();
        return Math.max(0, heat / heatOfIce(ice, end));
    }

    /**
     * Returns the ice of a brine whose water is partly poured in hot and partly added as ice, so that it ends at a temperature.
     *
     * @param water all water, ice included [kg]
     * @param salt salt, dissolved in the hot part [kg]
     * @param hot temperature of the hot part [K]
     * @param ice temperature of the ice [K]
     * @param end temperature to reach [K]
     * @return ice [kg]; the rest of the water is hot
     */
    public static double iceOfHotAndIce(double water, double salt, double hot, double ice, double end) {
        Checks.requirePositive("water", water, "kg");
        Checks.requireInRange("salt", salt, 0, 0.35 * water, "kg");
        double perIce = heatOfIce(ice, end) / Checks.requirePositive("hot above end temperature", hot - end, "K");
        double part = water / 2;
        // the hot part is stronger the more ice there is, and its heat capacity depends weakly on that
        for (int i = 0; i < ITERATIONS; i++) {
            double strength = Math.min(SaltStrength.SALOMETER_FULL_SCALE, salt / (salt + water - part));
            double capacity = Melinder2010.heatCapacity(Temperature.fromCelsius(5), strength);
            part = (water + salt) * capacity / (perIce + capacity);
        }
        return part;
    }

    /**
     * Returns how far dissolving cools a brine without ice [K].
     *
     * @param salt salt [kg]
     * @param water water [kg]
     * @return temperature drop, not negative
     */
    public static double dissolving(double salt, double water) {
        Checks.requirePositive("water", water, "kg");
        Checks.requireInRange("salt", salt, 0, 0.35 * water, "kg");
        return salt * Parker1965.HEAT / (WATER_HEAT_CAPACITY * water);
    }

    /**
     * Tells whether ice that swims in a brine can freeze the surface of meat: with ice present the brine settles at its own
     * freezing point, which salt lowers.
     *
     * @param saltFraction salt per mass of brine [kg/kg]
     * @return true if the brine would settle below the freezing point of meat
     */
    public static boolean canFreezeMeat(double saltFraction) {
        return Melinder2010.freezingPoint(Math.min(saltFraction, Melinder2010.EUTECTIC)) < MEAT_FREEZES;
    }
}
