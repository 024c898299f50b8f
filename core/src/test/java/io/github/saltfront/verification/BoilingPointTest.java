package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.matter.IapwsIf97Saturation;
import io.github.saltfront.matter.StandardAtmosphere;
import io.github.saltfront.units.Temperature;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Boiling points that check a thermometer: IAPWS R7-97(2012) and the U.S. Standard Atmosphere 1976, see the table. */
class BoilingPointTest {
    /** Half a unit of the last printed digit of temperature and, at 0.028 to 0.04 K/hPa, of pressure [K]. */
    private static final double HALF_DIGIT = 0.005 + 0.04 * 0.005;

    /** Half a unit of the last printed digit and the rounding of the exponent, 5.2559 for 5.255876 [Pa]. */
    private static final double PRESSURE = 0.5 + 0.8;

    private static final CsvTable TABLE = CsvTable.load(BoilingPointTest.class, "safety_boiling_points.csv");

    @Test
    void waterBoilsAtThePrintedTemperatureAtEveryPressure() {
        assertThat(TABLE.rows()).hasSize(34);
        for (CsvTable.Row row : TABLE.rows()) {
            boolean published = row.text("locator").equals("Table 36");
            double kelvin = IapwsIf97Saturation.temperature(100 * row.number("pressure_hpa"));
            assertThat(Temperature.toCelsius(kelvin))
                    .as("line %d", row.line())
                    .isEqualTo(row.number("boiling_point_c"), within(published ? 1e-6 : HALF_DIGIT + 1e-9));
        }
    }

    @Test
    void waterBoilsAtThePrintedTemperatureAtEveryAltitude() {
        for (CsvTable.Row row : TABLE.rows()) {
            OptionalDouble altitude = row.findNumber("altitude_m");
            if (altitude.isEmpty()) {
                continue;
            }
            double pressure = StandardAtmosphere.pressure(altitude.getAsDouble());
            assertThat(pressure)
                    .as("line %d", row.line())
                    .isEqualTo(100 * row.number("pressure_hpa"), within(PRESSURE));
            double kelvin = IapwsIf97Saturation.temperature(pressure);
            assertThat(Temperature.toCelsius(kelvin))
                    .as("line %d", row.line())
                    .isEqualTo(row.number("boiling_point_c"), within(HALF_DIGIT + 1e-3));
            row.findNumber("printed_f")
                    .ifPresent(printed -> assertThat(Math.rint(Temperature.toFahrenheit(kelvin)))
                            .isEqualTo(printed));
        }
    }
}
