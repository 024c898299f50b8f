package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.DenaturationKinetics;
import io.github.saltfront.quality.JuiceFactors;
import io.github.saltfront.quality.JuiceLoss;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Juice loss of evenly warm meat against measured losses in water baths. The species factors of duck, pork and beef were
 * fitted to these rows among others, so this shows that the code is the fitted model, not that the model predicts.
 * Warming-up is left out, which overshoots short baths.
 *
 * <p>Sources: park2020 (Poult. Sci., doi 10.1016/j.psj.2020.03.004), duck2023 (Poult. Sci. 102(6) 102636, Table 3),
 * porksv2019 (Food Sci. Anim. Resour. 39(1) 65, Table 1), beefsm2024 (Meat Research 38(1) 44).
 */
class BathLossTest {
    /** Points of loss; the spread between animals and the faults of the model. */
    private static final double TOLERANCE = 7;

    @TestFactory
    List<DynamicTest> lossesLieWithinSevenPointsButForTheKnownMisses() {
        JuiceFactors factors = JuiceFactors.load();
        return CsvTable.load(BathLossTest.class, "bath_losses.csv").rows().stream()
                .map(row -> DynamicTest.dynamicTest(row.text("id"), () -> {
                    JuiceLoss model =
                            factors.find(row.text("meat")).orElseThrow().model();
                    double error = predictedPercent(model, row.number("bath_c"), row.number("time_min"))
                            - row.number("loss_pct");
                    if (row.text("known_miss").isEmpty()) {
                        assertThat(Math.abs(error)).isLessThanOrEqualTo(TOLERANCE);
                    } else {
                        assertThat(Math.abs(error)).as("known miss").isGreaterThan(TOLERANCE);
                    }
                }))
                .toList();
    }

    private static double predictedPercent(JuiceLoss model, double celsius, double minutes) {
        DenaturationKinetics kinetics = DenaturationKinetics.KAJITANI_2011;
        double temperature = Temperature.fromCelsius(celsius);
        double time = minutes * 60;
        return 100
                * model.expelledFraction(
                        kinetics.myosin().advance(0, temperature, time),
                        kinetics.sarcoplasmic().advance(0, temperature, time),
                        kinetics.actin().advance(0, temperature, time),
                        0);
    }
}
