package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every exact solution the layer solver can meet, each row within the bound derived in {@link Check}. */
class AnalyticChecksTest {
    static Stream<Arguments> groups() {
        return Stream.of(
                group("SER", 858, ConductionChecks::series),
                group("SERX", 72, ConductionChecks::inside),
                group("FOT", 120, ConductionChecks::times),
                group("LAG", 108, ConductionChecks::warmingMedium),
                group("REST", 108, ConductionChecks::rest),
                group("SEMI", 9, ConductionChecks::semiInfinite),
                group("CRU", 120, SaltChecks::limitedBath),
                group("DIF", 32, SaltChecks::infiniteBath),
                group("crank", 231, SaltChecks::crankTable),
                group("crank dose", 42, SaltChecks::surfaceDose),
                group("STEF", 22, FreezingChecks::similarity));
    }

    private static Arguments group(String name, int rows, Supplier<List<Check>> checks) {
        return Arguments.of(name, rows, checks);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("groups")
    void everyRowOfAGroupLiesWithinItsDerivedBound(String name, int rows, Supplier<List<Check>> supplier) {
        List<Check> checks = supplier.get();
        assertThat(checks).hasSize(rows);
        assertThat(checks.stream().filter(c -> !c.holds()).toList()).isEmpty();
    }
}
