package io.github.saltfront.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The solver's view of the juice model against the model itself. */
class KajitaniJuiceTest {
    private final KajitaniJuice juice = new KajitaniJuice();

    @Test
    void expelsWhatTheModelExpelsForEachReactionAlone() {
        // amplitudes of juiciness model: 0.063 shared by the early two, 0.182 for actin; no salt effect at 0.2 % salt
        assertThat(juice.expelled(new double[] {0, 0, 0}, 0.002)).isZero();
        assertThat(juice.expelled(new double[] {1, 0, 0}, 0.002)).isCloseTo(0.0315, within(1e-12));
        assertThat(juice.expelled(new double[] {0, 1, 0}, 0.002)).isCloseTo(0.0315, within(1e-12));
        assertThat(juice.expelled(new double[] {0, 0, 1}, 0.002)).isCloseTo(0.182, within(1e-12));
        assertThat(juice.expelled(new double[] {1, 1, 1}, 0.002)).isCloseTo(0.245, within(1e-12));
    }

    @Test
    void ratesAreThoseOfTheKineticsInOrder() {
        assertThat(juice.reactions()).isEqualTo(3);
        assertThat(juice.rate(0, 330.15))
                .isEqualTo(DenaturationKinetics.KAJITANI_2011.myosin().rateConstant(330.15));
        assertThat(juice.rate(1, 339.15))
                .isEqualTo(DenaturationKinetics.KAJITANI_2011.sarcoplasmic().rateConstant(339.15));
        assertThat(juice.rate(2, 343.15))
                .isEqualTo(DenaturationKinetics.KAJITANI_2011.actin().rateConstant(343.15));
    }
}
