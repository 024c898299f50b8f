package io.github.saltfront.transport;

import io.github.saltfront.matter.IapwsIf97Saturation;
import io.github.saltfront.matter.WaterVapor;
import io.github.saltfront.numerics.DenseSolve;
import io.github.saltfront.units.Temperature;

/**
 * Saturation pressure and latent heat for the inner loop, of temperatures in degrees Celsius. The latent heat is a cubic
 * through four values of {@link WaterVapor}; a test bounds its error. Above 370 degrees Celsius, where no wet face can be, both
 * keep their last value.
 */
final class VaporRelations {
    private static final double HIGHEST_CELSIUS = 370;
    private static final double HIGHEST_FIT = 150;
    private static final double[] LATENT = fitLatentHeat();

    private VaporRelations() {}

    /** Saturation pressure [Pa], over ice below 0 degrees Celsius; NaN for NaN, which an attempted step may hold. */
    static double saturationPressure(double celsius) {
        if (Double.isNaN(celsius)) {
            return Double.NaN;
        }
        double kelvin = Temperature.fromCelsius(Math.min(celsius, HIGHEST_CELSIUS));
        return celsius >= 0
                ? IapwsIf97Saturation.pressure(kelvin)
                : WaterVapor.saturationPressure(Math.max(kelvin, 200));
    }

    /** Latent heat of evaporation [J/kg]; that of liquid water also below 0 degrees Celsius. */
    static double latentHeat(double celsius) {
        double t = Math.min(Math.max(celsius, -60), HIGHEST_FIT);
        return LATENT[0] + t * (LATENT[1] + t * (LATENT[2] + t * LATENT[3]));
    }

    private static double[] fitLatentHeat() {
        double[][] matrix = new double[4][4];
        double[] right = new double[4];
        for (int i = 0; i < 4; i++) {
            // points of Chebyshev between 0 and the highest temperature keep the error even
            double t = HIGHEST_FIT / 2 * (1 - Math.cos(Math.PI * (2 * i + 1) / 8));
            right[i] = WaterVapor.latentHeat(Temperature.fromCelsius(t));
            for (int k = 0; k < 4; k++) {
                matrix[i][k] = Math.pow(t, k);
            }
        }
        return DenseSolve.solve(matrix, right);
    }
}
