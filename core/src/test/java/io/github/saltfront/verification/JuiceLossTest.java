package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.quality.CollagenTenderness;
import io.github.saltfront.quality.JuiceFactors;
import io.github.saltfront.quality.JuiceLoss;
import io.github.saltfront.quality.VanDerSmanJuiceLoss;
import io.github.saltfront.units.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The juice equations against values worked out by hand from their printed coefficients. */
class JuiceLossTest {
    private static final JuiceFactors FACTORS = JuiceFactors.load();

    // L = s g [0.063 (Xm + Xs)/2 + 0.182 Xa] by hand
    @ParameterizedTest
    @CsvSource({
        "beef, 1, 1, 1, 0, 0.298900", // 1.22 * 0.245
        "pork, 1, 1, 1, 0, 0.210700", // 0.86 * 0.245
        "duck, 1, 1, 0, 0, 0.069930", // 1.11 * 0.063
        "poultry-dark, 1, 0, 0, 0, 0.025200", // 0.80 * 0.0315
        "poultry-white, 1, 1, 0.5, 0, 0.132440", // 0.86 * (0.063 + 0.091)
        "poultry-white, 1, 1, 1, 0.010, 0.168560", // 0.86 * 0.8 * 0.245
        "beef, 1, 1, 1, 0.015, 0.179340", // 0.6 * 0.2989
        "beef, 0, 0, 0, 0.015, 0"
    })
    void lossFollowsTheEquation(String meat, double xm, double xs, double xa, double salt, double loss) {
        JuiceLoss model = FACTORS.find(meat).orElseThrow().model();
        assertThat(model.expelledFraction(xm, xs, xa, salt)).isCloseTo(loss, within(1e-9));
    }

    // the rule of the salt factor: 1 to 0.5 %, line to 0.60 at 1.5 %, 0.60 above
    @ParameterizedTest
    @CsvSource({"0, 1", "0.005, 1", "0.0075, 0.9", "0.010, 0.8", "0.015, 0.6", "0.03, 0.6"})
    void saltFactorFollowsItsRule(double salt, double factor) {
        assertThat(JuiceLoss.saltFactor(salt)).isCloseTo(factor, within(1e-12));
    }

    // bae2018, Table 8: ground chicken at 1 % salt loses 0.29 of the unsalted loss at 70-85 degrees. Whole muscle
    // cannot
    // be helped more than ground meat, so the factor must stay above it
    @Test
    void wholeMuscleIsNotHelpedMoreThanGroundMeat() {
        assertThat(JuiceLoss.saltFactor(0.01) - JuiceLoss.SALT_FACTOR_HALF_BAND).isGreaterThan(0.29);
        assertThat(JuiceLoss.saltFactor(0.03) - JuiceLoss.SALT_FACTOR_HALF_BAND).isGreaterThan(0.29);
    }

    @Property
    void moreDenaturationNeverKeepsMoreJuice(
            @ForAll @DoubleRange(min = 0, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double b,
            @ForAll @DoubleRange(min = 0, max = 0.1) double salt) {
        JuiceLoss model = FACTORS.find("beef").orElseThrow().model();
        double less = model.expelledFraction(Math.min(a, b), 0.5, 0.2, salt);
        double more = model.expelledFraction(Math.max(a, b), 0.5, 0.2, salt);
        assertThat(less).isLessThanOrEqualTo(more);
        assertThat(model.expelledFraction(a, b, 0.5, salt)).isLessThanOrEqualTo(model.expelledFraction(a, b, 0.5, 0));
    }

    // vandersman2007 and vandersman2013; values in percent worked out by a separate script, one decimal printed
    @ParameterizedTest
    @CsvSource({
        "beef, 50, 0.7",
        "beef, 55, 2.3",
        "beef, 60, 6.8",
        "beef, 65, 15.9",
        "beef, 70, 25.9",
        "beef, 75, 31.5",
        "beef, 80, 33.6",
        "chicken, 60, 12.9",
        "chicken, 65, 19.4",
        "chicken, 70, 24.7",
        "chicken, 75, 27.9",
        "chicken, 80, 29.6"
    })
    void sigmoidMatchesItsPrintedValues(String meat, double celsius, double percent) {
        VanDerSmanJuiceLoss model = meat.equals("beef") ? VanDerSmanJuiceLoss.BEEF : VanDerSmanJuiceLoss.CHICKEN_BREAST;
        assertThat(100 * model.equilibriumLoss(Temperature.fromCelsius(celsius)))
                .isCloseTo(percent, within(0.05));
    }

    // times of the trade (common practice, no source); the line claims a factor of 1.5
    @ParameterizedTest
    @CsvSource({"57, 36", "65, 21", "75, 12", "85, 5", "95, 3", "120, 0.8"})
    void tenderTimesLieWithinTheirFactorOfTheTrade(double celsius, double hours) {
        double time = CollagenTenderness.tenderTime(Temperature.fromCelsius(celsius), CollagenTenderness.MATURE) / 3600;
        assertThat(time).isBetween(hours / CollagenTenderness.FACTOR, hours * CollagenTenderness.FACTOR);
    }

    @Test
    void sharesOutsideZeroToOneAreRefused() {
        JuiceLoss model = FACTORS.find("beef").orElseThrow().model();
        assertThatThrownBy(() -> model.expelledFraction(1.2, 0, 0, 0))
                .hasMessageContaining("myosin")
                .hasMessageContaining("1.2");
        assertThatThrownBy(() -> model.expelledFraction(0, Double.NaN, 0, 0)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> JuiceLoss.saltFactor(-0.01)).hasMessageContaining("salt fraction");
    }
}
