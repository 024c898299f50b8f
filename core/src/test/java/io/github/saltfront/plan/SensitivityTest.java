package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SensitivityTest {
    private static final List<Draw> DRAWS = Draw.ensemble(200, 5);

    /** A linear result of independent standard normal luck: slopes and shares of the variance are known. */
    @Test
    void slopesOfALinearResultAreFoundExactly() {
        double[] values = DRAWS.stream()
                .mapToDouble(d -> 30 + 4 * d.normal(Uncertainty.THICKNESS) - 3 * d.normal(Uncertainty.SETTING))
                .toArray();
        List<Sensitivity> ranked = Sensitivity.ranked(Sensitivity.Result.TIME_TO_PULL, DRAWS, values);
        assertThat(ranked).extracting(Sensitivity::input).containsExactly(Uncertainty.THICKNESS, Uncertainty.SETTING);
        assertThat(ranked.get(0).effect()).isCloseTo(4 * Draw.NINETY_FIVE, within(1e-9));
        assertThat(ranked.get(1).effect()).isCloseTo(-3 * Draw.NINETY_FIVE, within(1e-9));
        // 16 / 25 and 9 / 25, but for the chance correlation of two columns of 200
        assertThat(ranked.get(0).share()).isCloseTo(0.64, within(0.1));
        assertThat(ranked.get(1).share()).isCloseTo(0.36, within(0.1));
    }

    @Test
    void nothingMattersToWhatDoesNotChange() {
        assertThat(Sensitivity.ranked(Sensitivity.Result.MEAN_SALT, DRAWS, new double[DRAWS.size()]))
                .isEmpty();
    }
}
