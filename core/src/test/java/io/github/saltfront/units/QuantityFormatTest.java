package io.github.saltfront.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityFormatTest {
    @ParameterizedTest
    @CsvSource({
        "0.230, METRIC, 230 g",
        "1.5, METRIC, 1.5 kg",
        "0.9996, METRIC, 1 kg",
        "0.9994, METRIC, 999 g",
        "0.0042, METRIC, 4.2 g",
        "0.00996, METRIC, 10 g",
        "0.000254, METRIC, 0.25 g",
        "12.345, METRIC, 12.3 kg",
        "0, METRIC, 0 g",
        "0.5669904625, US, 1 lb 4 oz",
        "0.45359237, US, 1 lb",
        "0.4535, US, 1 lb",
        "0.2338, US, 8 1/4 oz",
        "0.0034, US, 0.12 oz",
        "0, US, 0 oz",
    })
    void writesMasses(double mass, KitchenUnits units, String expected) {
        assertThat(QuantityFormat.mass(mass, units)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "0.03, METRIC, 30 mm",
        "0.0096, METRIC, 9.6 mm",
        "1.234, METRIC, 1.23 m",
        "0.03175, US, 1 1/4 in",
        "0.0127, US, 1/2 in",
        "0.001, US, 0.039 in",
        "0.3048, US, 12 in",
    })
    void writesLengths(double length, KitchenUnits units, String expected) {
        assertThat(QuantityFormat.length(length, units)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "341.15, METRIC, 68 °C",
        "327.66, METRIC, 54.5 °C",
        "255.15, METRIC, -18 °C",
        "273.1, METRIC, 0 °C",
        "449.8167, METRIC, 177 °C",
        "449.8167, US, 350 °F",
    })
    void writesTemperatures(double temperature, KitchenUnits units, String expected) {
        assertThat(QuantityFormat.temperature(temperature, units)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "45, 45 s",
        "0, 0 s",
        "59.7, 1 min",
        "150, 2 min 30 s",
        "599.7, 10 min",
        "3599, 1 h",
        "9000, 2 h 30 min",
        "86400, 24 h",
        "172799, 2 d",
        "273600, 3 d 4 h",
    })
    void writesTimes(double time, String expected) {
        assertThat(QuantityFormat.time(time)).isEqualTo(expected);
    }

    /** Volumes by hand from the teaspoon of 4.92892159375 mL (NIST SP 811, B.8) or 5 mL. */
    @ParameterizedTest
    @CsvSource({
        "11.1, US, 2 1/4 tsp",
        "2.5, US, 1/2 tsp",
        "0.6, US, 1/8 tsp",
        "0.3, US, 0.061 tsp",
        "17.25, US, 1 tbsp + 1/2 tsp",
        "14.6, US, 1 tbsp",
        "44.36, US, 3 tbsp",
        "59.1, US, 1/4 cup",
        "74, US, 1/4 cup + 1 tbsp",
        "236.6, US, 1 cup",
        "325.3, US, 1 1/4 cups + 2 tbsp",
        "946.353, US, 4 cups",
        "0, US, 0 tsp",
        "11.25, METRIC, 2 1/4 metric tsp",
        "17.5, METRIC, 1 metric tbsp + 1/2 metric tsp",
        "500, METRIC, 2 metric cups",
        "480, LABEL, 2 label cups",
    })
    void writesSpoonsAndCups(double milliliters, SpoonSystem system, String expected) {
        assertThat(QuantityFormat.spoons(milliliters * 1e-6, system)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"0.06, 6 %", "0.0612, 6.1 %", "0.0012, 0.12 %", "0.00996, 1 %", "0, 0 %", "0.755, 75.5 %", "1, 100 %"})
    void writesPercent(double fraction, String expected) {
        assertThat(QuantityFormat.percent(fraction)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "0.48, 2, 0.48",
        "1060, 3, 1060",
        "1234.5, 3, 1230",
        "2e-10, 2, 2e-10",
        "1.234e-9, 3, 1.23e-9",
        "3.6e6, 2, 3.6e6",
        "-0.0345, 2, -0.034",
        "0, 3, 0",
        "100, 1, 100",
    })
    void writesSignificantFigures(double value, int figures, String expected) {
        assertThat(QuantityFormat.significant(value, figures)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"5, METRIC, 5 K", "5, US, 9 °F", "-0.04, METRIC, 0 K"})
    void writesDifferences(double difference, KitchenUnits units, String expected) {
        assertThat(QuantityFormat.temperatureDifference(difference, units)).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1})
    void refusesWhatIsNoAmount(double value) {
        assertThatThrownBy(() -> QuantityFormat.mass(value, KitchenUnits.METRIC))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mass")
                .hasMessageContaining("kg");
        assertThatThrownBy(() -> QuantityFormat.time(value)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> QuantityFormat.spoons(value, SpoonSystem.US))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Property(tries = 500, seed = "7")
    void massesReadBackWithinTheirStep(@ForAll @Scale(9) @DoubleRange(min = 1e-5, max = 50) double mass) {
        double grams = mass * 1e3;
        double step = grams < 1 ? 0.1 * grams : grams < 10 ? 0.1 : grams < 1e3 ? 1 : 0.01 * grams;
        readsBack(m -> QuantityFormat.mass(m, KitchenUnits.METRIC), Dimension.MASS, mass, step * 1e-3);
        double ounces = mass / 0.45359237 * 16;
        double usStep = ounces < 0.25 ? 0.1 * ounces : ounces < 15.875 ? 0.25 : 1;
        readsBack(m -> QuantityFormat.mass(m, KitchenUnits.US), Dimension.MASS, mass, usStep * 0.45359237 / 16);
    }

    @Property(tries = 500, seed = "7")
    void lengthsReadBackWithinTheirStep(@ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 3) double length) {
        double millimeters = length * 1e3;
        double step = millimeters < 1 ? 0.1 * millimeters : millimeters < 10 ? 0.1 : millimeters < 1e3 ? 1 : 10;
        readsBack(x -> QuantityFormat.length(x, KitchenUnits.METRIC), Dimension.LENGTH, length, step * 1e-3);
        double inches = length / 0.0254;
        double usStep = inches < 0.0625 ? 0.1 * inches : inches < 1 ? 0.0625 : inches < 12 ? 0.125 : 0.25;
        readsBack(x -> QuantityFormat.length(x, KitchenUnits.US), Dimension.LENGTH, length, usStep * 0.0254);
    }

    @Property(tries = 500, seed = "7")
    void temperaturesReadBackWithinTheirStep(@ForAll @Scale(9) @DoubleRange(min = 200, max = 800) double temperature) {
        boolean fine = Math.abs(Temperature.toCelsius(temperature)) < 100;
        readsBack(
                t -> QuantityFormat.temperature(t, KitchenUnits.METRIC),
                Dimension.TEMPERATURE,
                temperature,
                fine ? 0.5 : 1);
        readsBack(t -> QuantityFormat.temperature(t, KitchenUnits.US), Dimension.TEMPERATURE, temperature, 1 / 1.8);
    }

    @Property(tries = 500, seed = "7")
    void timesReadBackWithinTheirStep(@ForAll @Scale(9) @DoubleRange(min = 1, max = 1e6) double time) {
        readsBack(QuantityFormat::time, Dimension.TIME, time, time < 599.5 ? 1 : time < 172770 ? 60 : 3600);
    }

    /** A cup takes tablespoons, below it half teaspoons, below a tablespoon quarter teaspoons. */
    @Property(tries = 500, seed = "7")
    void spoonsReadBackWithinTheirStep(
            @ForAll @Scale(9) @DoubleRange(min = 0.7e-6, max = 4e-3) double volume, @ForAll SpoonSystem system) {
        double teaspoons = volume / system.teaspoon();
        double step = teaspoons < 2.875 ? 0.25 : volume < system.cup() / 4 - system.teaspoon() / 4 ? 0.5 : 3;
        readsBack(v -> QuantityFormat.spoons(v, system), Dimension.VOLUME, volume, step * system.teaspoon());
    }

    @Property(tries = 500, seed = "7")
    void sharesReadBackWithinTheirStep(@ForAll @Scale(9) @DoubleRange(min = 0, max = 1.2) double fraction) {
        readsBack(QuantityFormat::percent, Dimension.FRACTION, fraction, fraction < 0.00995 ? 1e-4 : 1e-3);
    }

    private static void readsBack(DoubleFunction<String> format, Dimension dimension, double value, double step) {
        double read = QuantityParser.parse(format.apply(value), dimension);
        assertThat(read).isCloseTo(value, within(step / 2 * (1 + 1e-9)));
    }
}
