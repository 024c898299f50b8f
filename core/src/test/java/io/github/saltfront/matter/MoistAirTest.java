package io.github.saltfront.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MoistAirTest {
    private static final double ATMOSPHERE = PhysicalConstants.STANDARD_ATMOSPHERE;

    @Property
    void boilingTemperatureIsTheInverseOfSaturationPressure(
            @ForAll @DoubleRange(min = 0, max = 370) @Scale(6) double t) {
        double temperature = Temperature.fromCelsius(t);
        double back = IapwsIf97Saturation.temperature(IapwsIf97Saturation.pressure(temperature));
        // the closed form loses digits in two square roots of nearly equal numbers
        assertThat(back).isCloseTo(temperature, within(1e-7));
    }

    @Property
    void pressureDerivativeEqualsTheDifference(@ForAll @DoubleRange(min = 1, max = 300) @Scale(6) double t) {
        double temperature = Temperature.fromCelsius(t);
        double step = 0.01;
        double if97 =
                (IapwsIf97Saturation.pressure(temperature + step) - IapwsIf97Saturation.pressure(temperature - step))
                        / (2 * step);
        double wagner = (WagnerPruss1993.pressure(temperature + step) - WagnerPruss1993.pressure(temperature - step))
                / (2 * step);
        // truncation: p''' step^2 / 6 is about 1e-7 of p'; IF97 rounding 1e-13 p / (2 step) is less
        assertThat(IapwsIf97Saturation.pressureDerivative(temperature)).isCloseTo(if97, within(1e-6 * if97));
        assertThat(WagnerPruss1993.pressureDerivative(temperature)).isCloseTo(wagner, within(1e-6 * wagner));
    }

    @Property
    void humidityRatioAndVaporPressureAreInverse(
            @ForAll @DoubleRange(min = 0, max = 0.99) @Scale(6) double share,
            @ForAll @DoubleRange(min = 50e3, max = 110e3) @Scale(6) double pressure) {
        double vapor = share * pressure;
        double back = MoistAir.vaporPressure(MoistAir.humidityRatio(vapor, pressure), pressure);
        assertThat(back).isCloseTo(vapor, within(1e-8));
    }

    @Property
    void wetBulbIsTheInverseOfItsHumidityRatio(
            @ForAll @DoubleRange(min = -20, max = 300) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double share) {
        double temperature = Temperature.fromCelsius(t);
        double highest = Math.min(temperature, Temperature.fromCelsius(95));
        double saturated = MoistAir.humidityRatio(WaterVapor.saturationPressure(highest), ATMOSPHERE);
        double ratio = share * saturated;
        double wet = MoistAir.wetBulb(temperature, ratio, ATMOSPHERE);
        assertThat(wet).isLessThanOrEqualTo(temperature);
        // over ice and over water the pressures at 0 C differ by 0.06 Pa (two formulations), so no bulb at all balances
        // air at
        // 0 C in a gap of 0.622 x 0.06 / 101325 = 4e-7 below saturation
        double gap = Math.abs(wet - Temperature.ZERO_CELSIUS) < 1e-6 ? 4e-7 : 0;
        double tolerance = gap + 1e-9 * (1 + ratio);
        assertThat(MoistAir.humidityRatioFromWetBulb(temperature, wet, ATMOSPHERE))
                .isCloseTo(ratio, within(tolerance));
    }

    @Test
    void saturatedAirHasItsOwnTemperatureAsWetBulbAndDewPoint() {
        for (double t : new double[] {-15, -1, 1, 20, 60, 95}) {
            double temperature = Temperature.fromCelsius(t);
            double vapor = WaterVapor.saturationPressure(temperature);
            assertThat(MoistAir.dewPoint(vapor)).isCloseTo(temperature, within(1e-6));
            double ratio = MoistAir.humidityRatio(vapor, ATMOSPHERE);
            assertThat(MoistAir.wetBulb(temperature, ratio, ATMOSPHERE)).isCloseTo(temperature, within(1e-6));
        }
    }

    @Test
    void densityOfMoistAirIsBelowThatOfDryAir() {
        double t = Temperature.fromCelsius(20);
        assertThat(MoistAir.density(t, 0, ATMOSPHERE)).isCloseTo(DryAir.density(t, ATMOSPHERE), within(1e-4));
        assertThat(MoistAir.density(t, 0.01, ATMOSPHERE)).isLessThan(MoistAir.density(t, 0, ATMOSPHERE));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 100, 800})
    void temperatureOutsideEveryRangeIsRefused(double temperature) {
        assertThatThrownBy(() -> WaterVapor.saturationPressure(temperature)).hasMessageContaining("temperature");
        assertThatThrownBy(() -> WaterVapor.latentHeat(temperature)).hasMessageContaining("temperature");
        assertThatThrownBy(() -> DryAir.viscosity(temperature)).hasMessageContaining("temperature");
        assertThatThrownBy(() -> Massman1998.diffusionCoefficient(temperature, ATMOSPHERE))
                .hasMessageContaining("temperature");
        assertThatThrownBy(() -> NernstHartley.diffusionCoefficient(temperature))
                .hasMessageContaining("temperature");
        assertThatThrownBy(() -> SaltSolubility.saturation(temperature)).hasMessageContaining("temperature");
    }

    @Test
    void impossibleAirIsRefusedWithTheNumbers() {
        assertThatThrownBy(() -> MoistAir.humidityRatio(101325, ATMOSPHERE)).hasMessageContaining("101325");
        assertThatThrownBy(() -> MoistAir.humidityRatio(Double.NaN, ATMOSPHERE)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> MoistAir.wetBulb(300, 0.5, ATMOSPHERE)).hasMessageContaining("saturation");
        assertThatThrownBy(() -> MoistAir.wetBulb(300, Double.NaN, ATMOSPHERE)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> StandardAtmosphere.pressure(Double.NaN)).hasMessageContaining("altitude");
        assertThatThrownBy(() -> StandardAtmosphere.pressure(12000)).hasMessageContaining("12000");
        assertThatThrownBy(() -> IapwsIf97Saturation.temperature(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> ChurchillChu1975Cylinder.nusselt(Double.NaN, 0.7))
                .hasMessageContaining("Rayleigh");
        assertThatThrownBy(() -> Churchill1983Sphere.nusselt(1e5, Double.NaN)).hasMessageContaining("Prandtl");
        assertThatThrownBy(() -> ChurchillBernstein1977.nusselt(-1, 0.7)).hasMessageContaining("Reynolds");
    }
}
