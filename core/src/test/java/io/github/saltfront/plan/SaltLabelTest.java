package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.plan.SaltedAlready.Verdict;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Labels of meat and of servings. */
class SaltLabelTest {
    // cfr21-101-9 (c)(4): below 5 mg nothing, to 5 mg up to 140, to 10 mg above
    @ParameterizedTest
    @CsvSource({"4.9, 0", "5, 5", "7.6, 10", "12.4, 10", "138, 140", "141, 140", "147, 150", "353, 350", "2298, 2300"})
    void sodiumIsDeclaredAsTheRuleSays(double milligrams, double declared) {
        assertThat(Sodium.declared(milligrams * 1e-6) * 1e6).isCloseTo(declared, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"2300, 100", "353, 15", "140, 6", "11, 0"})
    void percentOfTheDailyValueIsWhole(double milligrams, int percent) {
        assertThat(Sodium.dailyValuePercent(milligrams * 1e-6)).isEqualTo(percent);
    }

    // hand computed: raw 0.75 % x 0.90 / 0.75 = 0.90 % cooked; 113 g hold 400 mg sodium
    @Test
    void servingHoldsTheSaltThatStayed() {
        assertThat(Sodium.ofServing(0.0075, 0.75, 0.90, 0.113) * 1e6).isCloseTo(400, within(0.5));
    }

    // rule in the table of salt kept: juices hold 0.4 times the raw salt at yield 0.75 and 0.90 kept
    @Test
    void panJuicesHoldFourTenthsOfTheRawSalt() {
        assertThat(Sodium.ofPanJuices(0.0075, 0.75, 0.90)).isCloseTo(0.4 * 0.0075, within(1e-12));
    }

    // cfr9-317: a 15 % label is 13.0 % of the pack
    @Test
    void solutionCountsOnTheMeatWithoutIt() {
        SaltedAlready meat =
                new SaltedAlready(OptionalDouble.of(0.15), OptionalDouble.of(173e-5), 0.0017, false, false);
        assertThat(100 * meat.solutionOfPack()).isCloseTo(13.0, within(0.05));
    }

    // usda2013 NDB 05314: 173 mg/100 g is 0.44 % salt
    @Test
    void labelSodiumIsSalt() {
        SaltedAlready meat =
                new SaltedAlready(OptionalDouble.of(0.12), OptionalDouble.of(173e-5), 0.0017, false, false);
        assertThat(100 * meat.salt()).isCloseTo(0.44, within(0.005));
        assertThat(meat.verdict()).isEqualTo(Verdict.COUNT_IN);
        assertThat(meat.reason()).hasValueSatisfying(r -> assertThat(r).contains("0.29 %"));
    }

    @Test
    void stronglySaltedUnknownAndKosherMeatIsRefusedWithTheReason() {
        SaltedAlready strong =
                new SaltedAlready(OptionalDouble.empty(), OptionalDouble.of(243e-5), 0.0013, false, false);
        SaltedAlready unknown =
                new SaltedAlready(OptionalDouble.of(0.15), OptionalDouble.empty(), 0.0017, false, false);
        SaltedAlready kosher = new SaltedAlready(OptionalDouble.empty(), OptionalDouble.empty(), 0.0017, true, false);
        assertThat(strong.reason().orElseThrow()).contains("0.49 %", "0.3 %");
        assertThat(unknown.reason().orElseThrow()).contains("Give the sodium of the label");
        assertThat(kosher.reason().orElseThrow()).contains("Rinsing does not");
        assertThat(strong.verdict()).isEqualTo(Verdict.REFUSE);
        assertThat(unknown.verdict()).isEqualTo(Verdict.REFUSE);
        assertThat(kosher.verdict()).isEqualTo(Verdict.REFUSE);
    }

    // usda2015: plain lean meat 44-124 mg/100 g; cod and dark poultry are saltier by nature
    @Test
    void plainMeatIsPlainAndTheGreyZoneAsks() {
        assertThat(sodium(70, false)).isEqualTo(Verdict.PLAIN);
        assertThat(sodium(120, false)).isEqualTo(Verdict.ASK_FOR_LABEL);
        assertThat(sodium(124, true)).isEqualTo(Verdict.PLAIN);
        assertThat(sodium(150, false)).isEqualTo(Verdict.COUNT_IN);
        assertThat(SaltedAlready.plain(0.0017).verdict()).isEqualTo(Verdict.PLAIN);
    }

    private static Verdict sodium(double milligramsPerHundredGrams, boolean saltier) {
        return new SaltedAlready(
                        OptionalDouble.empty(),
                        OptionalDouble.of(milligramsPerHundredGrams * 1e-5),
                        0.0017,
                        false,
                        saltier)
                .verdict();
    }
}
