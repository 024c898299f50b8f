package io.github.saltfront.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {
    /** Expected values by hand from the exact factors: lb 0.45359237 kg, in 0.0254 m, gal 231 in3 (NIST SP 811, B.8). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1 1/2 lb|MASS|0.680388555",
                "1½ lb|MASS|0.680388555",
                "1 ½ lb|MASS|0.680388555",
                "1-1/2 lbs|MASS|0.680388555",
                "1 & 1/2 pounds|MASS|0.680388555",
                "1 and 1/2 pounds|MASS|0.680388555",
                "3/2 lb.|MASS|0.680388555",
                "1⁄2 LB|MASS|0.226796185",
                ".5 lb|MASS|0.226796185",
                "230 g|MASS|0.230",
                "230g|MASS|0.230",
                "230 G|MASS|0.230",
                "0,5 kg|MASS|0.5",
                "0,500 kg|MASS|0.5",
                "1,5 kg|MASS|1.5",
                "1.500 g|MASS|0.0015",
                "1,234.5 g|MASS|1.2345",
                "1.234,5 g|MASS|1.2345",
                "1,234,567 g|MASS|1234.567",
                "250 mg|MASS|0.00025",
                "16 oz|MASS|0.45359237",
                "1 lb 4 oz|MASS|0.5669904625",
                "1 lb. 4 oz.|MASS|0.5669904625",
                "1 lb, 4 oz|MASS|0.5669904625",
                "1 lb and 4 oz|MASS|0.5669904625",
                "1lb4oz|MASS|0.5669904625",
                "1 lb 4 1/2 oz|MASS|0.5811652240625",
                "1.25 in|LENGTH|0.03175",
                "1 1/4\"|LENGTH|0.03175",
                "1¼”|LENGTH|0.03175",
                "1 1/4 inches|LENGTH|0.03175",
                "2-inch|LENGTH|0.0508",
                "1 1/4 in.|LENGTH|0.03175",
                "5' 3\"|LENGTH|1.6002",
                "5'3 1/2\"|LENGTH|1.6129",
                "30 mm|LENGTH|0.03",
                "3 CM|LENGTH|0.03",
                "100 µm|LENGTH|1e-4",
                "100 μm|LENGTH|1e-4",
                "2 m|LENGTH|2",
                "45 s|TIME|45",
                "2 h 30 min|TIME|9000",
                "2h30m|TIME|9000",
                "2 hours, 30 minutes|TIME|9000",
                "1 1/2 hr|TIME|5400",
                "1:30 h|TIME|5400",
                "4:30 min|TIME|270",
                "1:30:15|TIME|5415",
                "1:30:15 h|TIME|5415",
                "2 d 4 h|TIME|187200",
                "½ tsp|VOLUME|2.464460796875e-6",
                "1 tsp|VOLUME|4.92892159375e-6",
                "1 tbsp|VOLUME|14.78676478125e-6",
                "1 tbsp + 1/2 tsp|VOLUME|17.251225578125e-6",
                "1 us tsp|VOLUME|4.92892159375e-6",
                "1 metric tsp|VOLUME|5e-6",
                "2 metric tablespoons|VOLUME|30e-6",
                "1 Metric Cup|VOLUME|250e-6",
                "1 label tsp|VOLUME|5e-6",
                "1 label cup|VOLUME|240e-6",
                "2 cups|VOLUME|473.176473e-6",
                "2 C|VOLUME|473.176473e-6",
                "1 cup 2 tbsp|VOLUME|266.1617660625e-6",
                "1 cup ½ tsp|VOLUME|239.052697296875e-6",
                "1 fl oz|VOLUME|29.5735295625e-6",
                "1 fl. oz.|VOLUME|29.5735295625e-6",
                "1 fluid ounce|VOLUME|29.5735295625e-6",
                "1 pt|VOLUME|473.176473e-6",
                "1 qt|VOLUME|946.352946e-6",
                "1 gal|VOLUME|3785.411784e-6",
                "500 mL|VOLUME|500e-6",
                "500 ml|VOLUME|500e-6",
                "1,5 L|VOLUME|1.5e-3",
                "250 cm3|VOLUME|250e-6",
                "250 cm³|VOLUME|250e-6",
                "231 in^3|VOLUME|3785.411784e-6",
                "350 °F|TEMPERATURE|449.816666666666667",
                "350F|TEMPERATURE|449.816666666666667",
                "350 º F|TEMPERATURE|449.816666666666667",
                "350 degrees Fahrenheit|TEMPERATURE|449.816666666666667",
                "350 deg. F|TEMPERATURE|449.816666666666667",
                "350℉|TEMPERATURE|449.816666666666667",
                "68 °C|TEMPERATURE|341.15",
                "68°c|TEMPERATURE|341.15",
                "68 ℃|TEMPERATURE|341.15",
                "68 C|TEMPERATURE|341.15",
                "68 degC|TEMPERATURE|341.15",
                "68 celsius|TEMPERATURE|341.15",
                "-18 °C|TEMPERATURE|255.15",
                "−18 °C|TEMPERATURE|255.15",
                "341.15 K|TEMPERATURE|341.15",
                "-40 °F|TEMPERATURE|233.15",
                "5 K|TEMPERATURE_DIFFERENCE|5",
                "5 °C|TEMPERATURE_DIFFERENCE|5",
                "9 °F|TEMPERATURE_DIFFERENCE|5",
                "-9 °F|TEMPERATURE_DIFFERENCE|-5",
                "6 K/min|TEMPERATURE_RATE|0.1",
                "9 °F/min|TEMPERATURE_RATE|0.083333333333333333",
                "6 %|FRACTION|0.06",
                "6%|FRACTION|0.06",
                "6 percent|FRACTION|0.06",
                "60 g/kg|FRACTION|0.06",
                "60 g per kg|FRACTION|0.06",
                "6 g/100 g|FRACTION|0.06",
                "6 g / 100g|FRACTION|0.06",
                "250 ppm|FRACTION|0.00025",
                "1060 kg/m3|DENSITY|1060",
                "1060 kg/m³|DENSITY|1060",
                "1060 kg m-3|DENSITY|1060",
                "1060 kg·m⁻³|DENSITY|1060",
                "1.06 g/cm^3|DENSITY|1060",
                "1.06 kg/L|DENSITY|1060",
                "3500 J/(kg.K)|HEAT_CAPACITY|3500",
                "3.5 kJ/kg/K|HEAT_CAPACITY|3500",
                "3.5 kJ/(kg·K)|HEAT_CAPACITY|3500",
                "3.5 kJ/kg K|HEAT_CAPACITY|3500",
                "3.5 kJ kg-1 K-1|HEAT_CAPACITY|3500",
                "3.5 kJ/(kg °C)|HEAT_CAPACITY|3500",
                "0.48 W/(m.K)|CONDUCTIVITY|0.48",
                "0.48 W/m/K|CONDUCTIVITY|0.48",
                "20 W/(m2.K)|HEAT_TRANSFER_COEFFICIENT|20",
                "20 W/m² K|HEAT_TRANSFER_COEFFICIENT|20",
                "20 W m⁻² K⁻¹|HEAT_TRANSFER_COEFFICIENT|20",
                "20 W / (m^2 * K)|HEAT_TRANSFER_COEFFICIENT|20",
                "2e-10 m2/s|DIFFUSIVITY|2e-10",
                "2E-10 m²/s|DIFFUSIVITY|2e-10",
                "2×10⁻¹⁰ m²/s|DIFFUSIVITY|2e-10",
                "2 x 10^-10 m2/s|DIFFUSIVITY|2e-10",
                "0.14 mm²/s|DIFFUSIVITY|1.4e-7",
                "0.0014 cm2 s-1|DIFFUSIVITY|1.4e-7",
                "0.3 m/s|SPEED|0.3",
                "101.325 kPa|PRESSURE|101325",
                "1 atm|PRESSURE|101325",
                "1 bar|PRESSURE|1e5",
                "150 kJ|ENERGY|150000",
                "1 kcal|ENERGY|4184",
                "1.5 kWh|ENERGY|5.4e6",
                "1.8 kW|POWER|1800",
                "334 kJ/kg|SPECIFIC_ENERGY|334000",
                "23 kJ/mol|MOLAR_ENERGY|23000",
                "250 cm²|AREA|0.025",
                "0 mm|LENGTH|0",
            })
    void readsWhatIsWritten(String text, Dimension dimension, double expected) {
        assertThat(QuantityParser.parse(text, dimension)).isCloseTo(expected, within(Math.abs(expected) * 1e-14));
    }

    /**
     * Printed factors of NIST SP 811 (2008), B.8, from memory; compared to half a unit of their last digit. They are products of
     * the exact ones and so check the arithmetic of compound units.
     */
    @ParameterizedTest
    @CsvSource({
        "1 BTU/(h.ft.°F),       CONDUCTIVITY,              1.730735,  5e-7",
        "1 BTU/(h.ft2.°F),      HEAT_TRANSFER_COEFFICIENT, 5.678263,  5e-7",
        "1 BTU/(lb.°F),         HEAT_CAPACITY,             4186.8,    5e-2",
        "1 BTU/h,               POWER,                     0.2930711, 5e-8",
        "1 BTU/lb,              SPECIFIC_ENERGY,           2326,      5e-1",
        "1 lb/ft3,              DENSITY,                   16.01846,  5e-6",
        "1 lb/in3,              DENSITY,                   27679.90,  5e-3",
        "1 ft2/h,               DIFFUSIVITY,               2.58064e-5, 5e-11",
        "1 ft/min,              SPEED,                     5.08e-3,   5e-9",
        "1 psi,                 PRESSURE,                  6894.757,  5e-4",
        "1 mmHg,                PRESSURE,                  133.3224,  5e-5",
        "1 in2,                 AREA,                      6.4516e-4, 5e-13",
    })
    void compoundUnitsAgreeWithPrintedFactors(String text, Dimension dimension, double printed, double half) {
        assertThat(QuantityParser.parse(text, dimension)).isCloseTo(printed, within(half));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "30 kg|LENGTH|\"30 kg\" is a mass, expected a length such as 30 mm or 1 1/4 in.",
                "30 min|TEMPERATURE|is a time, expected a temperature such as",
                "5 oz|VOLUME|is a mass, expected a volume such as 2 cups or 500 mL; write fl oz for fluid ounces.",
                "3 kg.m|MASS|is in units of another kind, expected a mass",
                "3500 J/kg|HEAT_CAPACITY|is an energy by mass, expected a heat capacity such as 3500 J/(kg.K).",
                "30|LENGTH|\"30\" has no unit, expected a length such as 30 mm or 1 1/4 in; add mm, cm, m, in or ft, for example \"30 mm\".",
                "350|TEMPERATURE|add °C, °F or K, for example \"350 °C\"",
                "350 °|TEMPERATURE|the unit \"°\" is not known, expected a temperature such as 68 °C or 350 °F; write °C or °F.",
                "0.06|FRACTION|add % or g/kg, for example \"0.06 %\"",
                "2 h 30|TIME|has no unit after 30",
                "1 lb 4|MASS|has no unit after 4",
                "30 mn|LENGTH|the unit \"mn\" is not known, expected a length such as 30 mm or 1 1/4 in; did you mean \"mm\" or \"m\"?",
                "30 qqqq|LENGTH|the usual units are mm, cm, m, in or ft.",
                "1 T|VOLUME|write tsp or tbsp, since \"T\" is used for both",
                "1 gr|MASS|write g for gram",
                "1,500 g|MASS|\"1,500 g\" can be read as 1.500 g or as 1500 g; expected a number that can be read in one way, so write the one you mean without a comma.",
                "1.2.3 kg|MASS|\"1.2.3\" is not a number",
                "1,,5 kg|MASS|\"1,,5\" is not a number",
                "5. kg|MASS|\"5.\" is not a number",
                "1 500 g|MASS|\"1 500 g\" is not a number",
                "1_000 g|MASS|\"1_000\" is not a number",
                "0.06|FRACTION|(a part of 1 is written in percent: 0.06 is \"6 %\").",
                "abc|MASS|does not begin with a number (found \"abc\")",
                "kg 5|MASS|does not begin with a number",
                "--5 kg|MASS|does not begin with a number",
                "NaN kg|MASS|does not begin with a number",
                "Infinity g|MASS|does not begin with a number",
                "∞ g|MASS|does not begin with a number",
                "1e400 g|MASS|is too large to be meant",
                "1e30 g|MASS|is too large to be meant",
                "99999999999999999999 kg|MASS|is too large to be meant",
                "1e-400 g|MASS|is too small to be meant",
                "-5 mm|LENGTH|\"-5 mm\" is negative, expected a length such as 30 mm or 1 1/4 in; leave the sign out.",
                "-300 °C|TEMPERATURE|is below absolute zero",
                "-1 K|TEMPERATURE|is below absolute zero",
                "2-3 lb|MASS|is a range, expected a mass such as 230 g or 1 1/2 lb; write one number.",
                "2–3 lb|MASS|is a range",
                "2 to 3 lb|MASS|is a range",
                "1/0 cup|VOLUME|the lower number must not be 0",
                "1 11/2 cup|VOLUME|\"1 11/2\" is not a fraction",
                "4 oz 1 lb|MASS|does not go from the larger unit to the smaller one",
                "1 lb 1 lb|MASS|write each unit once",
                "1:30|TIME|can be hours and minutes or minutes and seconds, expected a time",
                "1:75 h|TIME|is not a time of the form",
                "1:3 h|TIME|is not a time of the form",
                "1:30 s|TIME|is not a time of the form",
                "1:30 kg|TIME|is a mass, expected a time",
                "20 W/(m2.K|HEAT_TRANSFER_COEFFICIENT|the unit \"W/(m2.K\" is not known",
                "20 W//m2|HEAT_TRANSFER_COEFFICIENT|is not known",
                "20 W/m2)|HEAT_TRANSFER_COEFFICIENT|is not known",
                "3 m9|LENGTH|is not known",
                "10 % of solution|FRACTION|the unit \"of\" is not known",
                "0.48 W/mK|CONDUCTIVITY|the unit \"mK\" is not known, expected a conductivity such as 0.48 W/(m.K)",
                "1 MPA|PRESSURE|the unit \"MPA\" is not known",
                "``|MASS|got nothing, expected a mass such as 230 g or 1 1/2 lb.",
                "`   `|MASS|got nothing",
            })
    void refusesAndSaysWhy(String text, Dimension dimension, String part) {
        assertThatThrownBy(() -> QuantityParser.parse(text, dimension))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(part)
                .message()
                .matches("(?s).*[.?]");
    }

    @Test
    void refusesTextOfAnyLengthQuickly() {
        String parentheses = "1 " + "(".repeat(100_000);
        assertThatThrownBy(() -> QuantityParser.parse(parentheses, Dimension.MASS))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("is too long")
                .message()
                .hasSizeLessThan(200);
    }

    @ParameterizedTest
    @EnumSource
    void everyKindReadsItsOwnExamplesAndUnits(Dimension dimension) {
        for (String example : dimension.example().split(" or ", -1)) {
            assertThat(QuantityParser.parse(example, dimension)).isPositive();
        }
        for (String unit : dimension.units().split(", | or ", -1)) {
            assertThat(QuantityParser.parse("2 " + unit, dimension)).isPositive();
        }
        if (!dimension.siUnit().equals("-")) {
            assertThat(QuantityParser.parse("1 " + dimension.siUnit(), dimension))
                    .isEqualTo(1);
        }
    }

    /** A Celsius or Fahrenheit reading has an offset only where a temperature on a scale is asked for. */
    @ParameterizedTest
    @ValueSource(strings = {"1 °C", "1.8 °F", "1 K"})
    void differencesHaveNoOffset(String text) {
        assertThat(QuantityParser.parse(text, Dimension.TEMPERATURE_DIFFERENCE)).isCloseTo(1, within(1e-15));
    }

    @Property(tries = 3000, seed = "11")
    void anyTextGivesAFiniteValueOrOneKindOfRefusal(
            @ForAll
                    @Chars({
                        '0', '1', '5', ' ', '.', ',', '/', '-', '+', '(', ')', '^', '*', ':', '%', '"', '°', '½', '²'
                    })
                    @Chars({
                        'k', 'g', 'm', 's', 'h', 'i', 'n', 'l', 'b', 'o', 'z', 'C', 'F', 'K', 'W', 'J', 'e', 'E', 'x'
                    })
                    @StringLength(max = 24)
                    String text,
            @ForAll Dimension dimension) {
        try {
            assertThat(QuantityParser.parse(text, dimension)).isFinite();
        } catch (QuantityException e) {
            assertThat(e).message().contains("expected").matches("(?s).*[.?]");
        }
    }
}
