package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class VerdictTest {
    private static final SafetyRule CHICKEN =
            new SafetyRule(Meat.CHICKEN, OptionalDouble.of(0.05), false, Kitchen.HOME);
    private static final SafetyRule CHICKEN_FOR_VULNERABLE =
            new SafetyRule(Meat.CHICKEN, OptionalDouble.of(0.05), true, Kitchen.HOME);
    private static final ProbeError GOOD = new DeclaredProbeError(0.2);

    /** One reading a minute: 4 to 60 deg C-ish in half an hour, then a plateau. */
    private static TemperatureLog cook(double plateauCelsius, int minutes) {
        int n = 31 + minutes;
        double[] t = new double[n];
        double[] k = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = 60 * i;
            k[i] = Temperature.fromCelsius(4 + (plateauCelsius - 4) * Math.min(1, i / 30.0));
        }
        return TemperatureLog.of(t, k);
    }

    private static MeasuredVerdict judge(SafetyRule rule, TemperatureLog log) {
        return rule.judge(MeasuredRecord.of(log, GOOD, Placement.colderBy(0)));
    }

    @Test
    void aMeasuredHoldShows() {
        MeasuredVerdict verdict = judge(CHICKEN, cook(62.2, 30));
        assertThat(verdict).isInstanceOf(ShownByMeasurement.class);
        assertThat(verdict.isMet()).isTrue();
        assertThat(verdict.reasons()).isEmpty();
        assertThat(verdict.headline()).isEqualTo("Shown by measurement: the required hold was reached.");
        assertThat(verdict.consumerMinimum().describe()).isEqualTo("74 °C (165 °F)");
        assertThat(((ShownByMeasurement) verdict).measured().log().size()).isEqualTo(61);
        assertThat(verdict.rule()).isEqualTo(CHICKEN);
        assertThat(verdict.evidence().lethality().isFulfilled()).isTrue();
        assertThat(verdict.kitchenNote()).startsWith("The record speaks");
    }

    @Test
    void vulnerableGuestsForceTheConsumerMinimum() {
        MeasuredVerdict hold = judge(CHICKEN_FOR_VULNERABLE, cook(62.2, 60));
        assertThat(hold).isInstanceOf(NotMet.class);
        assertThat(hold.evidence().lethality().isFulfilled()).isTrue();
        assertThat(hold.reasons().get(0))
                .contains("74 °C (165 °F) was not reached")
                .contains("vulnerable");
        MeasuredVerdict minimum = judge(CHICKEN_FOR_VULNERABLE, cook(74.2, 2));
        assertThat(minimum).isInstanceOf(ShownByMeasurement.class);
        assertThat(minimum.headline()).contains("official minimum of 74 °C (165 °F)");
    }

    @Test
    void theErrorDecidesAtTheEdge() {
        // 165 F is 73.89 deg C: 74.0 less an error of 0.2 does not reach it
        assertThat(judge(CHICKEN_FOR_VULNERABLE, cook(74.0, 5))).isInstanceOf(NotMet.class);
    }

    @Test
    void aShortHoldIsNotMetAndSaysHowFarItGot() {
        MeasuredVerdict verdict = judge(CHICKEN, cook(60.3, 10));
        assertThat(verdict).isInstanceOf(NotMet.class);
        assertThat(verdict.isMet()).isFalse();
        assertThat(verdict.reasons().get(0)).matches("only \\d\\d % of the required hold, and .*");
        assertThat(verdict.headline()).isEqualTo("Not met. Cook on to the official minimum of 74 °C (165 °F).");
    }

    @Test
    void withoutACheckOfTheThermometerItCannotTell() {
        MeasuredVerdict verdict =
                CHICKEN.judge(MeasuredRecord.of(cook(64, 30), new UnknownProbeError(), Placement.unknown()));
        assertThat(verdict).isInstanceOf(CannotTell.class);
        assertThat(verdict.isMet()).isFalse();
        assertThat(verdict.reasons()).hasSize(2);
        assertThat(verdict.reasons().get(0)).contains("thermometer");
        assertThat(verdict.reasons().get(1)).contains("coldest spot");
        assertThat(verdict.headline()).startsWith("Cannot tell.").contains("74 °C (165 °F)");
    }

    @Test
    void whatIsShortOnItsOwnReadingsIsNotMetWhateverIsMissing() {
        assertThat(CHICKEN.judge(MeasuredRecord.of(cook(58, 5), new UnknownProbeError(), Placement.unknown())))
                .isInstanceOf(NotMet.class);
    }

    @Test
    void aGapThatMattersIsNamed() {
        double k = Temperature.fromCelsius(63);
        TemperatureLog log = TemperatureLog.of(new double[] {0, 60, 1200, 1260}, new double[] {k, k, k, k});
        MeasuredVerdict verdict = judge(CHICKEN, log);
        assertThat(verdict).isInstanceOf(CannotTell.class);
        assertThat(verdict.reasons()).containsExactly("readings: 1 gap longer than 300 s or with the clock set back");
    }

    @Test
    void aGapThatHidesTheStayAtTheMinimumIsNamedForVulnerableGuests() {
        double k = Temperature.fromCelsius(76);
        TemperatureLog log = TemperatureLog.of(new double[] {0, 5, 1200, 1205}, new double[] {k, k, k, k});
        MeasuredVerdict verdict = judge(CHICKEN_FOR_VULNERABLE, log);
        assertThat(verdict).isInstanceOf(CannotTell.class);
        assertThat(verdict.reasons().get(0)).startsWith("readings: 1 gap");
    }

    @Test
    void twoReadingsAreEnoughToJudge() {
        double k = Temperature.fromCelsius(76);
        TemperatureLog log = TemperatureLog.of(new double[] {0, 60}, new double[] {k, k});
        assertThat(judge(CHICKEN, log)).isInstanceOf(ShownByMeasurement.class);
    }

    @Test
    void aGapThatDoesNotMatterIsNotHeldAgainstIt() {
        double k = Temperature.fromCelsius(70);
        TemperatureLog log = TemperatureLog.of(new double[] {0, 60, 1200, 1260}, new double[] {k, k, k, k});
        assertThat(judge(CHICKEN, log)).isInstanceOf(ShownByMeasurement.class);
    }

    @Test
    void aReadingHotterThanMeatSpoilsTheProof() {
        double k = Temperature.fromCelsius(70);
        TemperatureLog log =
                TemperatureLog.of(new double[] {0, 60, 120, 180}, new double[] {k, k, k, Temperature.fromCelsius(150)});
        MeasuredVerdict verdict = judge(CHICKEN, log);
        assertThat(verdict).isInstanceOf(CannotTell.class);
        assertThat(verdict.reasons().get(0)).contains("105 °C");
    }

    @Test
    void aSingleReadingCannotTell() {
        TemperatureLog one = TemperatureLog.of(new double[] {0}, new double[] {Temperature.fromCelsius(80)});
        assertThat(judge(CHICKEN, one)).isInstanceOf(CannotTell.class);
    }

    @Test
    void tooSlowAComeUpCannotBeMendedByCooking() {
        // seven hours from 4 to 55 deg C, then hot
        int n = 500;
        double[] t = new double[n];
        double[] k = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = 60 * i;
            k[i] = Temperature.fromCelsius(i < 470 ? 4 + 52.0 * i / 470 : 80);
        }
        MeasuredVerdict verdict = judge(CHICKEN, TemperatureLog.of(t, k));
        assertThat(verdict).isInstanceOf(NotMet.class);
        assertThat(verdict.headline()).contains("does not mend it");
        assertThat(verdict.reasons().get(0)).contains("10 to 54 °C").contains("at most 6.0 h");
    }

    @Test
    void aPredictionIsNeverShownByMeasurement() {
        PredictedVerdict verdict = CHICKEN.judge(new PredictedKill(50, true, true, true, true));
        assertThat(verdict).isInstanceOf(PredictedMet.class);
        assertThat(verdict.headline()).contains("not proof");
        assertThat(verdict.isMet()).isTrue();
        assertThat(verdict.reasons()).isEmpty();
        assertThat(verdict.kitchenNote()).startsWith("Only a thermometer");
        assertThat(PredictedVerdict.class.isAssignableFrom(ShownByMeasurement.class))
                .isFalse();
        assertThat(Arrays.stream(ShownByMeasurement.class.getDeclaredConstructors())
                        .noneMatch(c -> Modifier.isPublic(c.getModifiers())))
                .isTrue();
    }

    @Test
    void predictionsFollowTheSameRoutes() {
        assertThat(CHICKEN.judge(new PredictedKill(1, false, true, true, true))).isInstanceOf(PredictedMet.class);
        assertThat(CHICKEN.judge(new PredictedKill(0.99, false, true, true, true)))
                .isInstanceOf(NotMet.class);
        assertThat(CHICKEN.judge(new PredictedKill(0, true, true, true, true))).isInstanceOf(PredictedMet.class);
        assertThat(CHICKEN_FOR_VULNERABLE.judge(new PredictedKill(9, false, true, true, true)))
                .isInstanceOf(NotMet.class);
        assertThat(CHICKEN.judge(new PredictedKill(9, true, true, false, true)).headline())
                .contains("does not mend it");
    }

    @Test
    void aPieceThatWasWarmBeforeTheHeatIsNotMendedByIt() {
        PredictedVerdict verdict = CHICKEN.judge(new PredictedKill(9, true, true, true, false));
        assertThat(verdict).isInstanceOf(NotMet.class);
        assertThat(verdict.headline()).contains("does not mend it");
        assertThat(verdict.reasons().get(0)).contains("before the heat");
    }

    @Test
    void saltedMeatNeedsALongerHoldBelow64Degrees() {
        SafetyRule salted = CHICKEN.withSalt(true);
        double cold = Temperature.fromFahrenheit(140);
        double hot = Temperature.fromFahrenheit(148);
        double official = CHICKEN.holdTable().requiredHold(cold).orElseThrow();
        assertThat(salted.holdTable().requiredHold(cold).orElseThrow()).isEqualTo(2.45 * official, within(1e-6));
        assertThat(salted.officialTable().requiredHold(cold).orElseThrow()).isEqualTo(official);
        assertThat(salted.holdTable().requiredHold(hot))
                .isEqualTo(CHICKEN.holdTable().requiredHold(hot));
        assertThat(salted.holdTable().title()).contains("for salt").contains("our allowance");
        assertThat(CHICKEN.holdTable().title()).doesNotContain("salt");
        assertThat(salted.withSalt(false)).isEqualTo(CHICKEN);
        // a record that is just enough without salt is not enough with it
        TemperatureHistory justEnough = TemperatureHistory.of(new double[] {0, official}, new double[] {cold, cold});
        assertThat(CHICKEN.judge(PredictedKill.along(CHICKEN, justEnough, true)).isMet())
                .isTrue();
        assertThat(salted.judge(PredictedKill.along(salted, justEnough, true)).isMet())
                .isFalse();
    }

    @ParameterizedTest
    @EnumSource(Meat.class)
    void theAllowanceForSaltNeverShortensAHold(Meat meat) {
        SafetyRule rule = new SafetyRule(meat, OptionalDouble.empty(), false, Kitchen.HOME);
        HoldTable salted = rule.withSalt(true).holdTable();
        for (double celsius = 50; celsius < 80; celsius += 0.1) {
            double kelvin = Temperature.fromCelsius(celsius);
            assertThat(salted.rate(kelvin)).isLessThanOrEqualTo(rule.holdTable().rate(kelvin));
        }
        assertThat(salted.lowestTemperature()).isEqualTo(rule.holdTable().lowestTemperature());
        assertThat(salted.instantTemperature()).isEqualTo(rule.holdTable().instantTemperature());
    }

    @Test
    void aPredictionWithoutTheSurfaceCannotTell() {
        PredictedVerdict verdict = CHICKEN.judge(new PredictedKill(9, true, false, true, true));
        assertThat(verdict).isInstanceOf(CannotTell.class);
        assertThat(verdict.reasons().get(0)).startsWith("the surface");
    }

    @Test
    void predictionIsEvaluatedAlongAHistory() {
        double hot = Temperature.fromCelsius(75);
        TemperatureHistory history = TemperatureHistory.of(
                new double[] {0, 1800, 1830}, new double[] {Temperature.fromCelsius(4), hot, hot});
        PredictedKill kill = PredictedKill.along(CHICKEN, history, true);
        assertThat(kill.consumerMinimumMet()).isTrue();
        assertThat(kill.comeUpKept()).isTrue();
        assertThat(kill.surfaceIncluded()).isTrue();
        assertThat(kill.holdShare()).isGreaterThan(1);
        TemperatureHistory slow = TemperatureHistory.of(
                new double[] {0, 36_000, 37_000}, new double[] {Temperature.fromCelsius(4), hot, hot});
        assertThat(PredictedKill.along(CHICKEN, slow, true).comeUpKept()).isFalse();
        assertThatThrownBy(() -> new PredictedKill(Double.NaN, true, true, true, true))
                .hasMessageContaining("share of the hold");
    }

    @Test
    void predictedMetRefusesEvidenceThatFallsShort() {
        Evidence little = new Evidence(new Lethality(0.5, 7, OptionalDouble.empty()), false);
        assertThatThrownBy(() -> new PredictedMet(CHICKEN, little)).hasMessageContaining("must meet the rule");
    }

    @ParameterizedTest
    @EnumSource(Meat.class)
    void everyRuleHasATableAMinimumAndAFoodCodeLine(Meat meat) {
        SafetyRule rule = new SafetyRule(meat, OptionalDouble.empty(), false, Kitchen.PROFESSIONAL);
        assertThat(rule.holdTable().lowestTemperature()).isGreaterThanOrEqualTo(Temperature.fromFahrenheit(130));
        assertThat(rule.consumerMinimum().temperature()).isGreaterThanOrEqualTo(Temperature.fromFahrenheit(145));
        assertThat(rule.foodCodeMinimums()).isNotEmpty();
    }

    @ParameterizedTest
    // fsis2025, chart; fsis2021 Tables 2-4 (first rows); wac2022, 246-215-03400
    @CsvSource({
        "CHICKEN, 136, 74 °C (165 °F)",
        "TURKEY, 136, 74 °C (165 °F)",
        "OTHER_POULTRY, 136, 74 °C (165 °F)",
        "MIXED_WITH_POULTRY, 136, 74 °C (165 °F)",
        "INTACT, 130, 63 °C (145 °F) and 3 min rest",
        "GROUND, 145, 72 °C (160 °F)",
        "TENDERIZED_OR_INJECTED, 145, 72 °C (160 °F)"
    })
    void minimumsAndFirstCreditedRows(Meat meat, double firstFahrenheit, String minimum) {
        SafetyRule rule = new SafetyRule(meat, OptionalDouble.empty(), false, Kitchen.HOME);
        assertThat(rule.holdTable().lowestTemperature()).isEqualTo(Temperature.fromFahrenheit(firstFahrenheit));
        assertThat(rule.consumerMinimum().describe()).isEqualTo(minimum);
    }

    @Test
    void foodCodeLinesAreThoseOfTheClass() {
        assertThat(new SafetyRule(Meat.GROUND, OptionalDouble.empty(), false, Kitchen.PROFESSIONAL).foodCodeMinimums())
                .contains("155 °F: 17 s", "145 °F: 3 min")
                .doesNotContain("145 °F: 15 s");
    }

    @Test
    void unknownFatTakesTheStrictestColumn() {
        SafetyRule rule = new SafetyRule(Meat.CHICKEN, OptionalDouble.empty(), false, Kitchen.HOME);
        assertThat(rule.holdTable().title()).contains("12 % fat");
        assertThatThrownBy(() -> new SafetyRule(Meat.CHICKEN, OptionalDouble.of(5), false, Kitchen.HOME))
                .hasMessageContaining("fat");
    }

    @Test
    void consumerRestIsPartOfTheMinimum() {
        ConsumerMinimum roast = ConsumerMinimum.get("intact-meat");
        double k = roast.temperature();
        assertThat(roast.requiredStay()).isEqualTo(180);
        assertThat(roast.isMetBy(TemperatureHistory.of(new double[] {0, 180}, new double[] {k, k})))
                .isTrue();
        assertThat(roast.isMetBy(TemperatureHistory.of(new double[] {0, 179}, new double[] {k, k})))
                .isFalse();
        ConsumerMinimum bird = ConsumerMinimum.get("poultry");
        assertThat(bird.requiredStay()).isEqualTo(15);
        MeasuredRecord measured = MeasuredRecord.of(
                TemperatureLog.of(new double[] {0, 15}, new double[] {bird.temperature(), bird.temperature()}),
                new DeclaredProbeError(0),
                Placement.colderBy(0));
        assertThat(bird.isMetBy(measured)).isTrue();
        MeasuredRecord shorter = MeasuredRecord.of(
                TemperatureLog.of(new double[] {0, 14}, new double[] {bird.temperature(), bird.temperature()}),
                new DeclaredProbeError(0),
                Placement.colderBy(0));
        assertThat(bird.isMetBy(shorter)).isFalse();
    }

    @Test
    void professionalsAreSentToTheirCode() {
        SafetyRule rule = new SafetyRule(Meat.INTACT, OptionalDouble.empty(), false, Kitchen.PROFESSIONAL);
        assertThat(judge(rule, cook(65, 30)).kitchenNote())
                .contains("Local code comes first")
                .contains("not validation");
        SafetyRule school = new SafetyRule(Meat.INTACT, OptionalDouble.empty(), false, Kitchen.TEACHING);
        assertThat(judge(school, cook(65, 30)).kitchenNote()).contains("class");
    }

    @Test
    void noVerdictSaysSafe() {
        for (Kitchen kitchen : Kitchen.values()) {
            SafetyRule rule = new SafetyRule(Meat.CHICKEN, OptionalDouble.empty(), false, kitchen);
            for (Verdict verdict : java.util.List.<Verdict>of(
                    judge(rule, cook(75, 10)),
                    judge(rule, cook(50, 10)),
                    rule.judge(new PredictedKill(9, true, true, true, true)),
                    rule.judge(new PredictedKill(9, true, false, true, true)))) {
                assertThat(verdict.headline() + verdict.kitchenNote() + verdict.reasons())
                        .doesNotContainIgnoringCase("safe");
            }
        }
    }

    @Test
    void cautionsFollowTheRuleAndTheSituation() {
        assertThat(Caution.select(CHICKEN, Set.of()))
                .extracting(Caution::id)
                .containsExactlyInAnyOrder(
                        "vulnerable",
                        "proof",
                        "coldest-spot",
                        "clock",
                        "instrument",
                        "no-credit",
                        "come-up",
                        "interrupted");
        assertThat(Caution.select(CHICKEN_FOR_VULNERABLE, Set.of()))
                .extracting(Caution::id)
                .containsExactly("vulnerable", "proof", "coldest-spot");
        SafetyRule injected =
                new SafetyRule(Meat.TENDERIZED_OR_INJECTED, OptionalDouble.empty(), true, Kitchen.PROFESSIONAL);
        assertThat(Caution.select(injected, Set.of(Caution.Situation.BRINED)))
                .extracting(Caution::id)
                .containsExactlyInAnyOrder("vulnerable", "proof", "not-intact", "local-code", "brine", "salt");
        SafetyRule ground = new SafetyRule(Meat.GROUND, OptionalDouble.empty(), true, Kitchen.HOME);
        SafetyRule mixed = new SafetyRule(Meat.MIXED_WITH_POULTRY, OptionalDouble.empty(), true, Kitchen.HOME);
        assertThat(Caution.select(ground, Set.of())).extracting(Caution::id).contains("not-intact");
        assertThat(Caution.select(mixed, Set.of())).extracting(Caution::id).contains("not-intact", "coldest-spot");
    }

    /** "fish ... 145 F ... 15 s" (wac2022, Food Code 3-401.11(A)(1)); "fish and shellfish: 145 F" (fsis2025). */
    @Test
    void fishKnowsOneFigureAndNoHold() {
        SafetyRule fish = new SafetyRule(Meat.FISH, OptionalDouble.empty(), false, Kitchen.HOME, true);
        assertThat(fish.holdTable().requiredHold(Temperature.fromFahrenheit(145)))
                .hasValue(15);
        assertThat(fish.holdTable().requiredHold(Temperature.fromFahrenheit(144.9)))
                .isEmpty();
        assertThat(fish.allowsHold()).isFalse();
        assertThat(fish.consumerMinimum().temperature()).isCloseTo(Temperature.fromFahrenheit(145), within(1e-9));
        PredictedVerdict held = fish.judge(new PredictedKill(50, false, true, true, true));
        assertThat(held.isMet()).isFalse();
        assertThat(fish.judge(new PredictedKill(1, true, true, true, true)).isMet())
                .isTrue();
        assertThat(Caution.select(fish, Set.of()))
                .extracting(Caution::id)
                .contains("fish")
                .doesNotContain("salt");
    }

    @Test
    void cautionsThatCannotBeSwitchedOffComeFirstAndAllAreShort() {
        var all = Caution.select(CHICKEN, EnumSet.allOf(Caution.Situation.class));
        assertThat(all).hasSize(18).allMatch(c -> c.text().length() <= 120);
        assertThat(all.stream().dropWhile(Caution::cannotBeSwitchedOff)).noneMatch(Caution::cannotBeSwitchedOff);
        assertThat(all).filteredOn(Caution::cannotBeSwitchedOff).hasSize(14);
    }
}
