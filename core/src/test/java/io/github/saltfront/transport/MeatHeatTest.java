package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.matter.MeatThermalProperties;
import io.github.saltfront.units.Temperature;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The solver's polynomials against the property model they stand for. */
class MeatHeatTest {
    @ParameterizedTest
    @CsvSource({"0.739, 0.225, 0.0262, 0.0113", "0.66, 0.186, 0.15, 0.008", "0.53, 0.14, 0.32, 0.007"})
    void conductivityFitStaysWithinOneAndAHalfPercent(double water, double protein, double fat, double ash) {
        Composition meat = Composition.ofPrinted(water, protein, fat, 0, ash);
        MeatThermalProperties model = MeatThermalProperties.of(meat.dryMatter());
        HeatProperties heat = MeatHeat.of(meat);
        double raw = meat.waterPerSolids();
        for (double t = 0; t <= 110; t += 5) {
            for (double w = 0.55 * raw; w <= 1.15 * raw; w += 0.05 * raw) {
                double fitted = heat.conductivity(0)
                        + t * (heat.conductivity(1) + t * heat.conductivity(2))
                        + (w - raw) * (heat.conductivityOfWater(0) + t * heat.conductivityOfWater(1));
                double k = model.conductivity(Temperature.fromCelsius(t), w, 0);
                assertThat(fitted).as("t %s w/w0 %s", t, w / raw).isCloseTo(k, within(0.015 * k));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"-20", "-5", "-1.2", "-0.5", "0", "5", "60", "95"})
    void enthalpyIsThatOfTheModel(double celsius) {
        Composition meat = Composition.ofPrinted(0.739, 0.225, 0.0262, 0, 0.0113);
        MeatThermalProperties model = MeatThermalProperties.of(meat.dryMatter());
        double expected = model.enthalpy(Temperature.fromCelsius(celsius), meat.waterPerSolids(), 0.02);
        double got = MeatHeat.of(meat).enthalpy(celsius, meat.waterPerSolids(), 0.02);
        assertThat(got).isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
    }
}
