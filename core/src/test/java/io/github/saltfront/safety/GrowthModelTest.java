package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.data.DataException;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.verification.OfficialHoldTablesMarker;
import org.junit.jupiter.api.Test;

class GrowthModelTest {
    @Test
    void ratesAgreeWithTheTabulatedOnes() {
        for (CsvTable.Row row : CsvTable.load(OfficialHoldTablesMarker.class, "safety_growth_rates.csv")
                .rows()) {
            double rate = GrowthModel.get(row.text("model")).rate(Temperature.fromCelsius(row.number("temperature_c")));
            assertThat(3600 * rate)
                    .as(row.text("model") + " at " + row.text("temperature_c"))
                    .isEqualTo(row.number("rate_log10_h"), within(0.000051));
        }
    }

    @Test
    void nothingGrowsOutsideTheCardinalTemperatures() {
        GrowthModel salmonella = GrowthModel.get("salmonella-chicken");
        assertThat(salmonella.rate(Temperature.fromCelsius(5.6))).isZero();
        assertThat(salmonella.rate(Temperature.fromCelsius(49.3))).isZero();
        assertThat(salmonella.rate(Temperature.fromCelsius(5.8))).isPositive();
        assertThat(salmonella.rate(Temperature.fromCelsius(49.2))).isPositive();
    }

    @Test
    void listeriaFollowsTheSquareRoot() {
        // review2014 table 2: 0.40 log10/day at 7 deg C; by the conversion 0.23 at 5 deg C
        GrowthModel listeria = GrowthModel.get("listeria-ham");
        assertThat(86400 * listeria.rate(Temperature.fromCelsius(7))).isEqualTo(0.40, within(1e-9));
        assertThat(86400 * listeria.rate(Temperature.fromCelsius(5))).isEqualTo(0.23, within(0.005));
        assertThat(listeria.rate(Temperature.fromCelsius(-1.5))).isZero();
    }

    @Test
    void growthIsTheIntegralOfTheRate() {
        GrowthModel salmonella = GrowthModel.get("salmonella-chicken");
        double warm = Temperature.fromCelsius(30);
        // 0.5102 log10/h, computed by an independent script
        assertThat(salmonella.growth(TemperatureHistory.of(new double[] {0, 7200}, new double[] {warm, warm})))
                .isEqualTo(1.0204, within(0.0002));
        TemperatureHistory rise = TemperatureHistory.of(
                new double[] {0, 36_000}, new double[] {Temperature.fromCelsius(0), Temperature.fromCelsius(60)});
        double sum = 0;
        for (int i = 0; i < 60_000; i++) {
            sum += salmonella.rate(Temperature.fromCelsius((i + 0.5) / 1000));
        }
        assertThat(salmonella.growth(rise)).isEqualTo(sum / 60_000 * 36_000, within(1e-4));
    }

    @Test
    void withoutLagTheModelCondemnsCoolingThatIsAccepted() {
        // exponential fall 54.4 to 27 deg C in 1.5 h: 2.4 log10 without lag against a published 1.1 with lag; the time
        // constant
        // is not stated in the row, air at 4.4 deg C is our assumption
        double[] t = new double[91];
        double[] k = new double[91];
        double rate = Math.log((54.4 - 4.4) / (27 - 4.4)) / 90;
        for (int i = 0; i <= 90; i++) {
            t[i] = 60 * i;
            k[i] = Temperature.fromCelsius(4.4 + 50 * Math.exp(-rate * i));
        }
        assertThat(GrowthModel.get("perfringens-chicken").growth(TemperatureHistory.of(t, k)))
                .isEqualTo(2.4, within(0.2));
    }

    @Test
    void unknownModelsAndWrongParametersAreRefused() {
        assertThatThrownBy(() -> GrowthModel.get("yeti")).isInstanceOf(DataException.class);
        assertThatThrownBy(() -> new CardinalTemperatureModel(1, 300, 290, 310)).hasMessageContaining("must rise");
        assertThatThrownBy(() -> new CardinalTemperatureModel(1, 280, 290, 290)).hasMessageContaining("must rise");
        assertThatThrownBy(() -> new CardinalTemperatureModel(0, 280, 290, 310)).hasMessageContaining("optimum rate");
        assertThatThrownBy(() -> new SquareRootModel(1, 280, 280)).hasMessageContaining("below the reference");
        assertThatThrownBy(() -> new SquareRootModel(0, 270, 280)).hasMessageContaining("reference rate");
    }

    @Test
    void papersGiveASpreadAndNeverAFigureAboveSeven() {
        double k = Temperature.fromCelsius(60);
        TemperatureHistory tenMinutes = TemperatureHistory.of(new double[] {0, 600}, new double[] {k, k});
        // 10 min against D60 of 13.24 (resistant strain) and 5.02 min (thigh): 0.75 and 1.99 decades
        assertThat(InactivationModel.spread("salmonella", tenMinutes)).isEqualTo("0.7 to 1.9 decades in 3 studies");
        TemperatureHistory day = TemperatureHistory.of(new double[] {0, 86_400}, new double[] {k, k});
        assertThat(InactivationModel.spread("listeria", day)).isEqualTo("7 or more decades in 5 studies");
        double warm = Temperature.fromCelsius(50);
        TemperatureHistory below = TemperatureHistory.of(new double[] {0, 600}, new double[] {warm, warm});
        assertThat(InactivationModel.spread("e-coli", below)).isEqualTo("no study covers these temperatures");
        // four of the five begin at 60 deg C or below, the policy value at 65
        assertThat(InactivationModel.spread("e-coli", tenMinutes)).endsWith("decades in 4 studies");
    }

    @Test
    void papersAreNotStretchedBeyondWhatWasStudied() {
        InactivationModel thigh = InactivationModel.all("salmonella").stream()
                .filter(m -> m.id().equals("salmonella-chicken-thigh"))
                .findFirst()
                .orElseThrow();
        assertThat(thigh.organism()).isEqualTo("Salmonella");
        assertThat(thigh.sourceId()).isEqualTo("murphy2004");
        double cold = Temperature.fromCelsius(54.9);
        assertThat(thigh.logReduction(TemperatureHistory.of(new double[] {0, 1e5}, new double[] {cold, cold})))
                .isZero();
        double hot = Temperature.fromCelsius(90);
        double top = thigh.kill().rate(thigh.highest());
        assertThat(thigh.logReduction(TemperatureHistory.of(new double[] {0, 10}, new double[] {hot, hot})))
                .isEqualTo(10 * top, within(1e-9));
        // murphy2004: D printed 0.07 min at 70 deg C, one significant figure
        assertThat(1 / thigh.kill().rate(Temperature.fromCelsius(70)) / 60).isEqualTo(0.07, within(0.005));
        assertThat(1 / thigh.kill().rate(Temperature.fromCelsius(55)) / 60).isEqualTo(43.33, within(0.2));
    }
}
