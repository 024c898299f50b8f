package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.safety.Bird;
import io.github.saltfront.safety.HoldTable;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every printed cell of the official tables, and the reading of each cell against what is printed in it. */
class OfficialHoldTablesTest {
    private static final List<CsvTable.Row> POULTRY =
            CsvTable.load(HoldTable.class, "poultry_holds.csv").rows();
    private static final List<CsvTable.Row> MEAT =
            CsvTable.load(HoldTable.class, "meat_holds.csv").rows();

    @Test
    void allCellsAreThere() {
        // two birds, 136-165 F, 1-12 % fat; three meat columns 130-160 F and 17 rows of the roast chart
        assertThat(POULTRY).hasSize(2 * 30 * 12);
        assertThat(MEAT).hasSize(3 * 31 + 17);
    }

    @Test
    void holdInSecondsIsWhatIsPrinted() {
        for (List<CsvTable.Row> table : List.of(POULTRY, MEAT)) {
            for (CsvTable.Row row : table) {
                String[] printed = row.text("printed").split(" ");
                double factor = printed[1].equals("min") ? 60 : 1;
                assertThat(row.number("hold_s"))
                        .as("line " + row.line())
                        .isEqualTo(Double.parseDouble(printed[0]) * factor, within(1e-9));
            }
        }
    }

    @Test
    void flatLogOfEveryPoultryCellIsExactlyOneHold() {
        int checked = 0;
        for (CsvTable.Row row : POULTRY) {
            Bird bird = Bird.valueOf(row.text("species").toUpperCase(Locale.ROOT));
            HoldTable table = HoldTable.poultry(bird, OptionalDouble.of(row.number("fat_pct") / 100));
            assertFlatLogIsOneHold(table, row, lastTimed(row));
            checked++;
        }
        assertThat(checked).isEqualTo(720);
    }

    @Test
    void flatLogOfEveryMeatCellIsExactlyOneHold() {
        for (CsvTable.Row row : MEAT) {
            HoldTable table = switch (row.text("table")) {
                case "meat-6.5-log" -> HoldTable.meat();
                case "meat-7-log" -> HoldTable.meatSevenLog();
                case "meat-5-log" -> HoldTable.meatFiveLog();
                case "food-code-roast" -> HoldTable.foodCodeRoast();
                default -> throw new AssertionError(row.text("table"));
            };
            assertThat(table.logReduction()).isEqualTo(row.number("log10_reduction"));
            double last = MEAT.stream()
                    .filter(r -> r.text("table").equals(row.text("table")))
                    .mapToDouble(r -> r.number("hold_s"))
                    .filter(h -> h > 0)
                    .min()
                    .orElseThrow();
            assertFlatLogIsOneHold(table, row, last);
        }
    }

    /** A cell printed as 0 s is credited at the rate of the last timed row, never faster. */
    private static void assertFlatLogIsOneHold(HoldTable table, CsvTable.Row row, double lastTimed) {
        double kelvin = Temperature.fromFahrenheit(row.number("temperature_f"));
        double hold = row.number("hold_s") > 0 ? row.number("hold_s") : lastTimed;
        TemperatureHistory flat =
                TemperatureHistory.of(new double[] {0, hold / 3, hold}, new double[] {kelvin, kelvin, kelvin});
        assertThat(flat.integrate(table)).as("line " + row.line()).isEqualTo(1, within(1e-9));
        assertThat(table.requiredHold(kelvin).orElseThrow()).isEqualTo(hold, within(1e-9 * hold));
        assertThat(kelvin >= table.instantTemperature()).isEqualTo(row.number("hold_s") == 0);
    }

    private static double lastTimed(CsvTable.Row cell) {
        return POULTRY.stream()
                .filter(r -> r.text("species").equals(cell.text("species"))
                        && r.text("fat_pct").equals(cell.text("fat_pct")))
                .mapToDouble(r -> r.number("hold_s"))
                .filter(h -> h > 0)
                .min()
                .orElseThrow();
    }

    @Test
    void otherBirdsAskForTheLongerOfBothTables() {
        for (int fat = 1; fat <= 12; fat++) {
            OptionalDouble fraction = OptionalDouble.of(fat / 100.0);
            HoldTable chicken = HoldTable.poultry(Bird.CHICKEN, fraction);
            HoldTable turkey = HoldTable.poultry(Bird.TURKEY, fraction);
            HoldTable other = HoldTable.poultry(Bird.OTHER, fraction);
            for (double f :
                    DoubleStream.iterate(136, f -> f <= 170, f -> f + 0.25).toArray()) {
                double kelvin = Temperature.fromFahrenheit(f);
                assertThat(other.rate(kelvin))
                        .as(f + " F, " + fat + " % fat")
                        .isLessThanOrEqualTo(Math.min(chicken.rate(kelvin), turkey.rate(kelvin)) * (1 + 1e-12));
            }
        }
    }

    @ParameterizedTest
    // fsis2021 Tables 3 and 4, spot cells read a second time from the printed page
    @CsvSource({
        "CHICKEN, 1, 140, 25.2", "CHICKEN, 5, 145, 9.2", "CHICKEN, 12, 136, 81.4", "CHICKEN, 12, 150, 4.2",
        "TURKEY, 1, 136, 64", "TURKEY, 12, 145, 13.8", "TURKEY, 1, 155, 1.2", "TURKEY, 12, 140, 33.7"
    })
    void spotCellsAgree(Bird bird, double fatPct, double fahrenheit, double minutes) {
        HoldTable table = HoldTable.poultry(bird, OptionalDouble.of(fatPct / 100));
        assertThat(table.requiredHold(Temperature.fromFahrenheit(fahrenheit)).orElseThrow())
                .isEqualTo(60 * minutes, within(1e-9));
    }

    @Test
    void workedExamplesAgreeToTheirPrintedDigits() {
        for (CsvTable.Row row :
                CsvTable.load(getClass(), "safety_worked_examples.csv").rows()) {
            TemperatureHistory history = profile(row.text("profile"));
            Bird bird = Bird.valueOf(row.text("species").toUpperCase(Locale.ROOT));
            HoldTable table = HoldTable.poultry(bird, OptionalDouble.of(row.number("fat_pct") / 100));
            // half a unit of the third decimal, and what the four decimals of the printed profile can move (1e-4 K of z
            // = 5 K)
            double printed = row.number("logs_table");
            assertThat(7 * history.integrate(table))
                    .as(row.text("case"))
                    .isEqualTo(printed, within(0.0005 + 5e-5 * printed));
        }
    }

    @Test
    void workedExamplesOfTheSingleLineAgreeToTheirPrintedDigits() {
        for (CsvTable.Row row :
                CsvTable.load(getClass(), "safety_worked_examples.csv").rows()) {
            var kill = new io.github.saltfront.safety.FirstOrderKill(
                    60 * row.number("line_d60_min"), Temperature.fromCelsius(60), row.number("line_z_k"));
            double printed = row.number("logs_line");
            assertThat(kill.logReduction(profile(row.text("profile"))))
                    .as(row.text("case"))
                    .isEqualTo(printed, within(0.0005 + 5e-5 * printed));
        }
    }

    private static TemperatureHistory profile(String text) {
        String[] points = text.split(";");
        double[] times = new double[points.length];
        double[] temperatures = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            String[] parts = points[i].strip().split(":");
            times[i] = 60 * Double.parseDouble(parts[0].replace("min", ""));
            temperatures[i] = Temperature.fromCelsius(Double.parseDouble(parts[1].replace("C", "")));
        }
        return TemperatureHistory.of(times, temperatures);
    }
}
