package io.github.saltfront.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The solver's view of the juice model is the model with a species factor of 1. */
class KajitaniJuiceTest {
    @ParameterizedTest
    @CsvSource({"0, 0, 0, 0.002", "1, 0, 0, 0.002", "0, 1, 0, 0.002", "0.4, 0.3, 0.2, 0.01", "1, 1, 1, 0.02"})
    void juiceIsThatOfTheModelWithAFactorOfOne(double myosin, double sarcoplasmic, double actin, double salt) {
        JuiceLoss model = new JuiceLoss(new Band(1, 1, 1));
        assertThat(new KajitaniJuice().expelled(new double[] {myosin, sarcoplasmic, actin}, salt))
                .isCloseTo(model.expelledFraction(myosin, sarcoplasmic, actin, salt), within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({"0", "0.003", "0.02"})
    void rawMeatExpelsNothing(double salt) {
        assertThat(new KajitaniJuice().expelled(new double[3], salt)).isZero();
    }
}
