package io.github.saltfront.transport;

import io.github.saltfront.matter.ChoiOkos1986;
import io.github.saltfront.matter.Composition;
import io.github.saltfront.matter.MeatThermalProperties;
import io.github.saltfront.matter.QuadraticInCelsius;
import io.github.saltfront.numerics.DenseSolve;
import io.github.saltfront.units.Temperature;

/**
 * Heat properties of meat for the solver, from {@link MeatThermalProperties}. Heat capacities are the same polynomials. The
 * conductivity is a polynomial fitted to the model between 0 and 110 degrees Celsius and water from half to 1.2 times that of
 * the raw meat; a test bounds the error of the fit, which is small against the ten percent of the model itself. Below 0
 * degrees Celsius the model itself is asked.
 */
public final class MeatHeat {
    private static final double HIGHEST_CELSIUS = 110;
    private static final double LEAST_WATER = 0.5;
    private static final double MOST_WATER = 1.2;
    private static final int SAMPLES = 12;
    private static final int TERMS = 5;

    private MeatHeat() {}

    /**
     * Returns the properties of meat of a composition.
     *
     * @param composition composition of the raw meat
     * @return the properties
     */
    public static HeatProperties of(Composition composition) {
        MeatThermalProperties model = MeatThermalProperties.of(composition.dryMatter());
        return of(model, composition.waterPerSolids());
    }

    /**
     * Returns the properties of meat of a model and water content.
     *
     * @param model the model of the dry matter
     * @param water water of the raw meat per dry solids [kg/kg]
     * @return the properties
     */
    public static HeatProperties of(MeatThermalProperties model, double water) {
        double reference = Temperature.fromCelsius(5);
        double density = model.density(reference, water, 0);
        double[] fit = fitConductivity(model, water);
        return new HeatProperties(
                density / (1 + water),
                water,
                coefficients(model.solidsHeatCapacity()),
                coefficients(ChoiOkos1986.of(ChoiOkos1986.Component.WATER, ChoiOkos1986.Property.SPECIFIC_HEAT)),
                coefficients(ChoiOkos1986.of(ChoiOkos1986.Component.ASH, ChoiOkos1986.Property.SPECIFIC_HEAT)),
                new double[] {fit[0], fit[1], fit[2]},
                new double[] {fit[3], fit[4]},
                new Cold(model));
    }

    private static double[] coefficients(QuadraticInCelsius quadratic) {
        return new double[] {quadratic.a0(), quadratic.a1(), quadratic.a2()};
    }

    /** Least squares in k0 + k1 t + k2 t^2 + (w - w0) (l0 + l1 t). */
    private static double[] fitConductivity(MeatThermalProperties model, double raw) {
        double[][] normal = new double[TERMS][TERMS];
        double[] right = new double[TERMS];
        for (int i = 0; i < SAMPLES; i++) {
            double t = HIGHEST_CELSIUS * i / (SAMPLES - 1);
            for (int j = 0; j < SAMPLES; j++) {
                double w = raw * (LEAST_WATER + (MOST_WATER - LEAST_WATER) * j / (SAMPLES - 1));
                double[] terms = {1, t, t * t, w - raw, (w - raw) * t};
                double k = model.conductivity(Temperature.fromCelsius(t), w, 0);
                for (int a = 0; a < TERMS; a++) {
                    right[a] += terms[a] * k;
                    for (int b = 0; b < TERMS; b++) {
                        normal[a][b] += terms[a] * terms[b];
                    }
                }
            }
        }
        return DenseSolve.solve(normal, right);
    }

    /**
     * The model itself below 0 degrees Celsius, with or without ice. Steps that a solver attempts and rejects may pass both ends of
     * the model by far, since the heat capacity changes a hundredfold at the freezing point; there the enthalpy goes on in a
     * straight line.
     */
    private record Cold(MeatThermalProperties model) implements FrozenState {
        private static final double LOWEST = MeatThermalProperties.LOWEST_TEMPERATURE;
        private static final double HIGHEST = MeatThermalProperties.HIGHEST_TEMPERATURE;

        @Override
        public double upperLimit(double water, double salt) {
            return 0;
        }

        @Override
        public double enthalpy(double celsius, double water, double salt) {
            return model.enthalpy(kelvin(celsius), water, salt);
        }

        @Override
        public double temperature(double enthalpy, double water, double salt) {
            double below = enthalpy - model.enthalpy(LOWEST, water, salt);
            double above = enthalpy - model.enthalpy(HIGHEST, water, salt);
            double kelvin = below < 0
                    ? LOWEST + below / model.heatCapacityPerSolids(LOWEST, water, salt)
                    : above > 0
                            ? HIGHEST + above / model.heatCapacityPerSolids(HIGHEST, water, salt)
                            : model.temperature(enthalpy, water, salt);
            return Temperature.toCelsius(kelvin);
        }

        @Override
        public double heatCapacity(double celsius, double water, double salt) {
            return model.heatCapacityPerSolids(inside(celsius), water, salt);
        }

        @Override
        public double conductivity(double celsius, double water, double salt) {
            return model.conductivity(inside(celsius), water, salt);
        }

        private static double inside(double celsius) {
            return Math.min(HIGHEST, Math.max(LOWEST, kelvin(celsius)));
        }

        private static double kelvin(double celsius) {
            return Temperature.fromCelsius(celsius);
        }
    }
}
