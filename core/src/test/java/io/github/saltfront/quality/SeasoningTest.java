package io.github.saltfront.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.quality.DonenessWords.Scale;
import io.github.saltfront.quality.Seasoning.Taste;
import io.github.saltfront.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Salt levels and doneness words. */
class SeasoningTest {
    private static final Seasoning SEASONING = Seasoning.load();
    private static final DonenessWords WORDS = DonenessWords.load();

    // raw = cooked x yield / kept: 0.9 % x 0.75 / 0.90 = 0.75 %, the printed default
    @Test
    void rawAndCookedTargetsAgree() {
        double raw = Seasoning.rawSaltFor(
                SEASONING.targetCooked().typical(),
                0.75,
                SEASONING.saltKept(false).typical());
        assertThat(raw).isCloseTo(0.0075, within(1e-12));
        assertThat(SEASONING.targetRaw().typical()).isCloseTo(raw, within(1e-12));
    }

    // cubero2019: 18.5-22 % less salt in sausages (2 %) was not noticed; far more is
    @ParameterizedTest
    @CsvSource({"0.0200, 0.0165, false", "0.0200, 0.0150, true", "0.0075, 0.0075, false", "0.0001, 0, false"})
    void differencesBelowAFifthAreNotTasted(double a, double b, boolean tellable) {
        assertThat(SEASONING.isTellable(a, b)).isEqualTo(tellable);
        assertThat(SEASONING.isTellable(b, a)).isEqualTo(tellable);
    }

    @ParameterizedTest
    @CsvSource({"0.002, UNDER", "0.009, JUST_RIGHT", "0.0125, FIRM", "0.015, TOO_SALTY", "0.021, HAM_LIKE"})
    void wordsFollowTheBands(double salt, Taste taste) {
        assertThat(SEASONING.tasteOf(salt)).isEqualTo(taste);
    }

    @Test
    void unknownLevelsAndImpossibleSaltAreRefused() {
        assertThatThrownBy(() -> SEASONING.level("nonsense")).hasMessageContaining("nonsense");
        assertThatThrownBy(() -> SEASONING.tasteOf(Double.NaN)).hasMessageContaining("NaN");
    }

    // mmb11227 (research): medium-rare 63; restaurants (common practice): 54-57
    @Test
    void oneWordMeansTemperaturesNineKelvinApart() {
        var meanings = WORDS.meaningsOf("Medium Rare");
        assertThat(meanings).extracting(DonenessWords.DonenessWord::scale).containsExactlyInAnyOrder(Scale.values());
        double lowest = meanings.stream()
                .mapToDouble(DonenessWords.DonenessWord::coreLow)
                .min()
                .orElseThrow();
        double highest = meanings.stream()
                .mapToDouble(DonenessWords.DonenessWord::coreHigh)
                .max()
                .orElseThrow();
        assertThat(highest - lowest).isCloseTo(9, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "RESTAURANT, 55, medium-rare",
        "RESEARCH, 55, very rare",
        "GOVERNMENT, 70, medium",
        "RESTAURANT, 90, well done"
    })
    void aTemperatureGetsTheWordOfItsScale(Scale scale, double celsius, String word) {
        assertThat(WORDS.nearest(scale, Temperature.fromCelsius(celsius)).word())
                .isEqualTo(word);
    }

    @Test
    void bandsThatFallAreRefused() {
        assertThatThrownBy(() -> new Band(1, 0.5, 2)).hasMessageContaining("0.5");
        assertThatThrownBy(() -> new Band(0, Double.NaN, 2)).hasMessageContaining("NaN");
    }
}
