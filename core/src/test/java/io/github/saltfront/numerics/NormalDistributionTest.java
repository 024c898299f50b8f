package io.github.saltfront.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantiles of the standard normal distribution against those of {@code NormalDist.inv_cdf} of the Python library, 3.11. */
class NormalDistributionTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1e-6, -4.753424308822899",
        "0.001, -3.090232306167813",
        "0.025, -1.9599639845400538",
        "0.05, -1.6448536269514726",
        "0.3, -0.5244005127080407",
        "0.5, 0",
        "0.5000001, 2.506628273311649e-7",
        "0.8, 0.8416212335729144",
        "0.95, 1.6448536269514715",
        "0.975, 1.9599639845400536",
        "0.9999, 3.7190164854557084",
    })
    void quantilesAreThoseOfAReferenceLibrary(double probability, double quantile) {
        assertThat(NormalDistribution.quantile(probability)).isCloseTo(quantile, within(1e-9));
        assertThat(NormalDistribution.cumulative(quantile)).isCloseTo(probability, within(1e-12));
    }
}
