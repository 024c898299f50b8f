package io.github.saltfront.matter;

import io.github.saltfront.matter.ChoiOkos1986.Component;
import io.github.saltfront.matter.ChoiOkos1986.Property;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * Density, heat capacity, conductivity, enthalpy and ice of meat from its composition, with water and salt that may
 * change.
 *
 * <p>The state is temperature [K], water W per dry solids [kg/kg] (ice included) and added salt S (sodium chloride) per dry
 * solids [kg/kg]. Enthalpy and heat capacity per dry solids are additive over the components of {@link ChoiOkos1986}:
 *
 * <pre>
 * h(T) = sum x_i H_i(t) + S H_ash(t) + (W - ice) H_water(t) + ice [H_ice(t) - L0],  H_i = integral of c_i from 0 to t
 * c(T) = dh/dT, which holds the latent heat below the freezing point
 * </pre>
 *
 * <p>so that h is a function of state, continuous, and exactly the integral of c. It is zero for liquid at 0 degrees
 * Celsius. L0 = 333.6 kJ/kg holds at 0 degrees; at lower temperatures the heat of fusion follows from the heat capacities
 * of water and ice. Volumes are additive too. Conductivity: the dry components are combined first, then ice and liquid
 * water, then the dry phase is dispersed in the wet one.
 *
 * <p>Added salt counts as ash, in default of a better value for salt inside meat. At 2 % salt this sets the density
 * about 0.2 % low.
 *
 * <p>Validity: -40 to 150 degrees Celsius, the range of the components; up to 300 degrees the polynomials are
 * extrapolated ({@link #isPublishedAt} tells), outside -40 to 300 degrees the methods throw. Melting of fat and heat of
 * denaturation (about 3.5 J/g, one kelvin) are left out.
 */
public final class MeatThermalProperties {
    /** Latent heat of fusion of ice at 0 degrees Celsius [J/kg] (ashrae2006, chapter 9). */
    public static final double HEAT_OF_FUSION = 333.6e3;

    /** Water that never freezes, per mass of protein [kg/kg] (schwartzberg1976, as given in ashrae2006, chapter 9). */
    public static final double BOUND_WATER_PER_PROTEIN = 0.4;

    /** Lowest temperature of all methods [K]. */
    public static final double LOWEST_TEMPERATURE = Temperature.fromCelsius(-40);

    /** Highest temperature of all methods [K]. */
    public static final double HIGHEST_TEMPERATURE = Temperature.fromCelsius(300);

    /** Highest published temperature [K]. */
    public static final double HIGHEST_PUBLISHED_TEMPERATURE = Temperature.fromCelsius(150);

    private static final double TOLERANCE = 1e-12;
    private static final int MOST_STEPS = 200;

    private static final QuadraticInCelsius WATER = ChoiOkos1986.of(Component.WATER, Property.SPECIFIC_HEAT);
    private static final QuadraticInCelsius SUPERCOOLED =
            ChoiOkos1986.of(Component.SUPERCOOLED_WATER, Property.SPECIFIC_HEAT);
    private static final QuadraticInCelsius ICE = ChoiOkos1986.of(Component.ICE, Property.SPECIFIC_HEAT);
    private static final QuadraticInCelsius ASH = ChoiOkos1986.of(Component.ASH, Property.SPECIFIC_HEAT);

    private final DryMatter dry;
    private final ConductivityModel conductivity;
    private final IceModel iceModel;
    private final FreezingPointModel freezing;
    private final QuadraticInCelsius solidsHeatCapacity;
    private final MeatPhases phases;
    private final double boundWater;

    private MeatThermalProperties(
            DryMatter dry, ConductivityModel conductivity, IceModel iceModel, FreezingPointModel freezing) {
        this.dry = dry;
        this.conductivity = conductivity;
        this.iceModel = iceModel;
        this.freezing = freezing;
        this.boundWater = BOUND_WATER_PER_PROTEIN * dry.protein();
        this.solidsHeatCapacity = solids(dry);
        this.phases = new MeatPhases(dry);
    }

    /**
     * Returns the properties with the default models: {@link Levy1981}, {@link Miles1974},
     * {@link FreezingPointModel.ChangTao1981}.
     *
     * @param dry composition of the dry matter, without added salt
     * @return the properties
     */
    public static MeatThermalProperties of(DryMatter dry) {
        return new MeatThermalProperties(dry, new Levy1981(), new Miles1974(), new FreezingPointModel.ChangTao1981());
    }

    /**
     * Returns a copy with another conductivity model.
     *
     * @param model the model
     * @return the copy
     */
    public MeatThermalProperties withConductivityModel(ConductivityModel model) {
        return new MeatThermalProperties(dry, model, iceModel, freezing);
    }

    /**
     * Returns a copy with another ice model.
     *
     * @param model the model
     * @return the copy
     */
    public MeatThermalProperties withIceModel(IceModel model) {
        return new MeatThermalProperties(dry, conductivity, model, freezing);
    }

    /**
     * Returns a copy with another freezing point of the unsalted meat.
     *
     * @param model the model
     * @return the copy
     */
    public MeatThermalProperties withFreezingPointModel(FreezingPointModel model) {
        return new MeatThermalProperties(dry, conductivity, iceModel, model);
    }

    /** Returns the composition of the dry matter. */
    public DryMatter dryMatter() {
        return dry;
    }

    /** Returns the heat capacity of the dry solids alone, as coefficients [J/(kg.K)]. */
    public QuadraticInCelsius solidsHeatCapacity() {
        return solidsHeatCapacity;
    }

    /** Returns the water that never freezes, per dry solids [kg/kg]. */
    public double boundWaterPerSolids() {
        return boundWater;
    }

    /**
     * Returns the temperature at which the first ice forms [K]: that of the unsalted meat of the same water per solids,
     * less the depression of a salt solution of the strength of the water phase.
     *
     * @param water water per dry solids [kg/kg], not negative
     * @param salt salt per dry solids [kg/kg], not negative
     * @return initial freezing point [K]
     * @throws IllegalArgumentException if an argument is NaN or negative
     */
    public double initialFreezingPoint(double water, double salt) {
        checkContents(water, salt);
        double strength = salt == 0 ? 0 : salt / (salt + water);
        return freezing.freezingPoint(water / (1 + water)) - Melinder2010.freezingPointDepression(strength);
    }

    /**
     * Returns the ice per dry solids [kg/kg].
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return ice per dry solids [kg/kg]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double icePerSolids(double temperature, double water, double salt) {
        check(temperature, water, salt);
        if (temperature >= Temperature.ZERO_CELSIUS) {
            return 0;
        }
        return iceModel.ice(temperature, initialFreezingPoint(water, salt), water, boundWater);
    }

    /**
     * Returns the ice per mass of meat [kg/kg].
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return ice per mass of meat [kg/kg]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double iceFraction(double temperature, double water, double salt) {
        return icePerSolids(temperature, water, salt) / (1 + water + salt);
    }

    /**
     * Returns the enthalpy per dry solids [J/kg], zero for liquid at 0 degrees Celsius.
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return enthalpy per dry solids [J/kg]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double enthalpy(double temperature, double water, double salt) {
        check(temperature, water, salt);
        double t = Temperature.toCelsius(temperature);
        double dryAndSalt = solidsHeatCapacity.integralToCelsius(t) + salt * ASH.integralToCelsius(t);
        if (t >= 0) {
            return dryAndSalt + water * WATER.integralToCelsius(t);
        }
        double ice = iceModel.ice(temperature, initialFreezingPoint(water, salt), water, boundWater);
        return dryAndSalt + water * SUPERCOOLED.integralToCelsius(t) - ice * heatOfFusion(t);
    }

    /**
     * Returns the heat capacity per dry solids [J/(kg.K)], the derivative of {@link #enthalpy} by temperature at constant
     * water and salt. Below the freezing point it holds the latent heat; at the freezing point it jumps, and the value
     * without ice is returned.
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return heat capacity per dry solids [J/(kg.K)], positive
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double heatCapacityPerSolids(double temperature, double water, double salt) {
        check(temperature, water, salt);
        double t = Temperature.toCelsius(temperature);
        double dryAndSalt = solidsHeatCapacity.atCelsius(t) + salt * ASH.atCelsius(t);
        if (t >= 0) {
            return dryAndSalt + water * WATER.atCelsius(t);
        }
        double liquid = SUPERCOOLED.atCelsius(t);
        double freezingPoint = initialFreezingPoint(water, salt);
        if (temperature >= freezingPoint) {
            return dryAndSalt + water * liquid;
        }
        double ice = iceModel.ice(temperature, freezingPoint, water, boundWater);
        double slope = iceModel.derivative(temperature, freezingPoint, water, boundWater);
        return dryAndSalt + water * liquid - ice * (liquid - ICE.atCelsius(t)) - slope * heatOfFusion(t);
    }

    /**
     * Returns the heat capacity per mass of meat [J/(kg.K)]; see {@link #heatCapacityPerSolids}.
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return heat capacity per mass of meat [J/(kg.K)]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double heatCapacity(double temperature, double water, double salt) {
        return heatCapacityPerSolids(temperature, water, salt) / (1 + water + salt);
    }

    /**
     * Returns the temperature at which the enthalpy has a value [K], the inverse of {@link #enthalpy}, by Newton steps kept
     * inside a bracket; the last step is below 1e-12 K.
     *
     * @param enthalpy enthalpy per dry solids [J/kg]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return temperature [K]
     * @throws IllegalArgumentException if an argument is NaN or negative where it must not be, or if the enthalpy belongs
     *     to a temperature outside {@link #LOWEST_TEMPERATURE} to {@link #HIGHEST_TEMPERATURE}
     */
    public double temperature(double enthalpy, double water, double salt) {
        checkContents(water, salt);
        double low = LOWEST_TEMPERATURE;
        double high = HIGHEST_TEMPERATURE;
        Checks.requireInRange(
                "enthalpy per dry solids at " + water + " kg/kg water and " + salt + " kg/kg salt",
                enthalpy,
                enthalpy(low, water, salt),
                enthalpy(high, water, salt),
                "J/kg");
        double freezingPoint = initialFreezingPoint(water, salt);
        if (enthalpy >= 0) {
            low = Temperature.ZERO_CELSIUS;
        } else if (freezingPoint > low && enthalpy >= enthalpy(freezingPoint, water, salt)) {
            low = freezingPoint;
            high = Temperature.ZERO_CELSIUS;
        } else {
            high = Math.max(freezingPoint, low);
        }
        return invert(enthalpy, water, salt, low, high);
    }

    /**
     * Returns the density of the meat without pores [kg/m3].
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return density [kg/m3]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double density(double temperature, double water, double salt) {
        return (1 + water + salt) / volumePerSolids(temperature, water, salt);
    }

    /**
     * Returns the volume of the meat per mass of dry solids [m3/kg].
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return volume per dry solids [m3/kg]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double volumePerSolids(double temperature, double water, double salt) {
        double ice = icePerSolids(temperature, water, salt);
        return phases.volume(Temperature.toCelsius(temperature), water - ice, ice, salt);
    }

    /**
     * Returns the thermal conductivity [W/(m.K)].
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return thermal conductivity [W/(m.K)]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double conductivity(double temperature, double water, double salt) {
        double ice = icePerSolids(temperature, water, salt);
        return phases.conductivity(conductivity, Temperature.toCelsius(temperature), water - ice, ice, salt);
    }

    /**
     * Returns the thermal diffusivity k/(rho c) [m2/s]; below the freezing point c holds the latent heat.
     *
     * @param temperature temperature [K]
     * @param water water per dry solids, ice included [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return thermal diffusivity [m2/s]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double diffusivity(double temperature, double water, double salt) {
        return conductivity(temperature, water, salt)
                * volumePerSolids(temperature, water, salt)
                / heatCapacityPerSolids(temperature, water, salt);
    }

    /**
     * Tells whether the components are published at a temperature.
     *
     * @param temperature temperature [K]
     * @return true from -40 to 150 degrees Celsius
     */
    public static boolean isPublishedAt(double temperature) {
        return LOWEST_TEMPERATURE <= temperature && temperature <= HIGHEST_PUBLISHED_TEMPERATURE;
    }

    private double invert(double enthalpy, double water, double salt, double lowest, double highest) {
        double low = lowest;
        double high = highest;
        double lowEnthalpy = enthalpy(low, water, salt);
        double span = enthalpy(high, water, salt) - lowEnthalpy;
        // rounding may carry the guess an ulp past the end
        double guess = span > 0 ? Math.min(high, low + (high - low) * (enthalpy - lowEnthalpy) / span) : low;
        for (int i = 0; i < MOST_STEPS; i++) {
            double residual = enthalpy(guess, water, salt) - enthalpy;
            if (residual > 0) {
                high = guess;
            } else {
                low = guess;
            }
            double step = residual / heatCapacityPerSolids(guess, water, salt);
            double next = guess - step;
            if (!(low <= next && next <= high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - guess) <= TOLERANCE || residual == 0) {
                return next;
            }
            guess = next;
        }
        return guess;
    }

    /** Kirchhoff: heat of fusion at t below 0 degrees Celsius [J/kg]. */
    private static double heatOfFusion(double t) {
        return HEAT_OF_FUSION + SUPERCOOLED.integralToCelsius(t) - ICE.integralToCelsius(t);
    }

    private static QuadraticInCelsius solids(DryMatter dry) {
        QuadraticInCelsius p = ChoiOkos1986.of(Component.PROTEIN, Property.SPECIFIC_HEAT);
        QuadraticInCelsius f = ChoiOkos1986.of(Component.FAT, Property.SPECIFIC_HEAT);
        QuadraticInCelsius c = ChoiOkos1986.of(Component.CARBOHYDRATE, Property.SPECIFIC_HEAT);
        return new QuadraticInCelsius(
                dry.protein() * p.a0() + dry.fat() * f.a0() + dry.carbohydrate() * c.a0() + dry.ash() * ASH.a0(),
                dry.protein() * p.a1() + dry.fat() * f.a1() + dry.carbohydrate() * c.a1() + dry.ash() * ASH.a1(),
                dry.protein() * p.a2() + dry.fat() * f.a2() + dry.carbohydrate() * c.a2() + dry.ash() * ASH.a2(),
                p.lowest(),
                p.highest());
    }

    private static void check(double temperature, double water, double salt) {
        Checks.requireInRange("meat temperature", temperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE, "K");
        checkContents(water, salt);
    }

    private static void checkContents(double water, double salt) {
        Checks.requireInRange("water per dry solids", water, 0, Double.MAX_VALUE, "kg/kg");
        Checks.requireInRange("salt per dry solids", salt, 0, Double.MAX_VALUE, "kg/kg");
    }
}
