package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every exact solution the layer solver can meet, each row within the bound derived in {@link Check}. */
class AnalyticChecksTest {
    @ParameterizedTest(name = "{0}")
    @EnumSource
    void everyRowOfAGroupLiesWithinItsDerivedBound(CheckedGroup group) {
        List<Check> checks = group.checks();
        assertThat(checks).hasSize(group.rows());
        assertThat(checks.stream().filter(c -> !c.holds()).toList()).isEmpty();
    }
}
