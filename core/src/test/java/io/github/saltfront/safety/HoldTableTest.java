package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class HoldTableTest {
    private static final HoldTable CHICKEN = HoldTable.poultry(Bird.CHICKEN, OptionalDouble.of(0.05));

    private static double fahrenheit(double f) {
        return Temperature.fromFahrenheit(f);
    }

    @Test
    void nothingIsCreditedBelowTheFirstRow() {
        assertThat(CHICKEN.rate(Math.nextDown(fahrenheit(136)))).isZero();
        assertThat(CHICKEN.rate(fahrenheit(136))).isEqualTo(1 / 4104.0, within(1e-12));
        assertThat(CHICKEN.requiredHold(fahrenheit(135.9))).isEmpty();
        assertThat(CHICKEN.meanRate(fahrenheit(40), fahrenheit(135.99))).isZero();
        assertThat(HoldTable.meat().rate(Math.nextDown(fahrenheit(130)))).isZero();
        assertThat(HoldTable.meat().rate(fahrenheit(130))).isPositive();
    }

    @Test
    void logarithmOfTheHoldIsLinearBetweenRows() {
        double between = CHICKEN.requiredHold(fahrenheit(140.5)).orElseThrow();
        assertThat(between).isEqualTo(Math.sqrt(1650 * 1320.0), within(1e-6));
    }

    @Test
    void fatBetweenTwoColumnsTakesTheNextHigherOne() {
        assertThat(hold(OptionalDouble.of(0.041))).isEqualTo(hold(OptionalDouble.of(0.05)));
        assertThat(hold(OptionalDouble.of(0.07))).isEqualTo(1740);
        assertThat(hold(OptionalDouble.of(0))).isEqualTo(1512);
    }

    @Test
    void unknownOrHigherFatTakesTheTwelvePercentColumn() {
        assertThat(hold(OptionalDouble.empty())).isEqualTo(2100);
        assertThat(hold(OptionalDouble.of(0.3))).isEqualTo(2100);
        assertThat(hold(OptionalDouble.of(1))).isEqualTo(2100);
    }

    private static double hold(OptionalDouble fat) {
        // fsis2021 Table 3, row 140 F
        return Math.rint(HoldTable.poultry(Bird.CHICKEN, fat)
                                .requiredHold(fahrenheit(140))
                                .orElseThrow()
                        * 1000)
                / 1000;
    }

    @Test
    void fatOutsideZeroToOneIsRefused() {
        for (double wrong : new double[] {-0.01, 5, Double.NaN}) {
            assertThatThrownBy(() -> HoldTable.poultry(Bird.TURKEY, OptionalDouble.of(wrong)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("fat must be between 0 and 1");
        }
    }

    @Test
    void aboveTheLastTimedRowItsRateIsKept() {
        assertThat(CHICKEN.rate(fahrenheit(162))).isEqualTo(1 / 11.7, within(1e-12));
        assertThat(CHICKEN.rate(fahrenheit(210))).isEqualTo(1 / 11.7, within(1e-12));
        assertThat(CHICKEN.highestTimedTemperature()).isEqualTo(fahrenheit(161));
        assertThat(CHICKEN.instantTemperature()).isEqualTo(fahrenheit(162));
        assertThat(CHICKEN.lowestTemperature()).isEqualTo(fahrenheit(136));
    }

    @Test
    void meanRateIsTheIntegralOfTheRate() {
        for (double[] step : new double[][] {
            {120, 170}, {136, 137}, {150.2, 150.3}, {130, 136.5}, {155, 155}, {161.5, 190}, {140, 120}, {160.9, 161.1}
        }) {
            double from = fahrenheit(step[0]);
            double to = fahrenheit(step[1]);
            int n = 200_000;
            double sum = 0;
            for (int i = 0; i < n; i++) {
                sum += CHICKEN.rate(from + (to - from) * (i + 0.5) / n);
            }
            // midpoint rule; the jump at the first row costs at most one cell
            assertThat(CHICKEN.meanRate(from, to)).isEqualTo(sum / n, within(1e-4 / n * 10 + 1e-6 * sum / n));
            assertThat(CHICKEN.meanRate(to, from)).isEqualTo(CHICKEN.meanRate(from, to));
        }
    }

    @Test
    void temperatureForHoldInvertsTheTable() {
        assertThat(CHICKEN.temperatureForHold(1650).orElseThrow()).isEqualTo(fahrenheit(140), within(1e-9));
        assertThat(CHICKEN.temperatureForHold(Math.sqrt(1650 * 1320.0)).orElseThrow())
                .isEqualTo(fahrenheit(140.5), within(1e-9));
        assertThat(CHICKEN.temperatureForHold(1e6).orElseThrow()).isEqualTo(fahrenheit(136));
        assertThat(CHICKEN.temperatureForHold(4104).orElseThrow()).isEqualTo(fahrenheit(136));
        assertThat(CHICKEN.temperatureForHold(11.7).orElseThrow()).isEqualTo(fahrenheit(161), within(1e-9));
        assertThat(CHICKEN.temperatureForHold(11)).isEmpty();
        assertThatThrownBy(() -> CHICKEN.temperatureForHold(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void creditCanBeginAtAHigherRow() {
        HoldTable cut = HoldTable.meat().creditedFrom(fahrenheit(145) - 1e-6);
        assertThat(cut.lowestTemperature()).isEqualTo(fahrenheit(145));
        assertThat(cut.rate(fahrenheit(144.9))).isZero();
        assertThat(cut.requiredHold(fahrenheit(145)).orElseThrow()).isEqualTo(240, within(1e-9));
        assertThat(cut.instantTemperature()).isEqualTo(HoldTable.meat().instantTemperature());
        assertThatThrownBy(() -> HoldTable.meat().creditedFrom(400))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no row with a printed time");
    }

    @Test
    void titlesNameBirdColumnAndEdition() {
        assertThat(CHICKEN.title()).isEqualTo("Chicken, 5 % fat, 7-log10 Salmonella");
        assertThat(CHICKEN.edition()).contains("FSIS-GD-2021-0014").endsWith("Table 3 p. 37");
        assertThat(HoldTable.poultry(Bird.TURKEY, OptionalDouble.empty()).edition())
                .endsWith("Table 4 p. 38");
        assertThat(HoldTable.poultry(Bird.OTHER, OptionalDouble.empty()).title())
                .startsWith("Other poultry")
                .contains("12 % fat");
        assertThat(HoldTable.meat().edition()).endsWith("Table 2 p. 35");
        assertThat(HoldTable.meatFiveLog().edition()).endsWith("Table 6 p. 59");
        assertThat(HoldTable.foodCodeRoast().edition()).contains("3-401.11(B)");
    }

    @Test
    void notANumberGivesNotANumber() {
        assertThat(CHICKEN.rate(Double.NaN)).isNaN();
    }

    @Test
    void firstOrderKillFollowsDAndZ() {
        // acmsf2007: z = 6 K from 70 C / 2 min gives 13.6 min at 65 C and 18 s at 75 C (printed)
        FirstOrderKill kill = new FirstOrderKill(20, Temperature.fromCelsius(70), 6);
        assertThat(6 / kill.rate(Temperature.fromCelsius(65)) / 60).isEqualTo(13.6, within(0.05));
        assertThat(6 / kill.rate(Temperature.fromCelsius(75))).isEqualTo(18, within(0.5));
        assertThat(kill.meanRate(Temperature.fromCelsius(70), Temperature.fromCelsius(70)))
                .isEqualTo(0.05, within(1e-12));
        assertThatThrownBy(() -> new FirstOrderKill(0, 333, 6)).hasMessageContaining("D value");
        assertThatThrownBy(() -> new FirstOrderKill(1, 333, Double.NaN)).hasMessageContaining("z value");
        assertThatThrownBy(() -> new FirstOrderKill(1, 60, 6)).hasMessageContaining("reference temperature");
    }
}
