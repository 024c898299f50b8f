package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.safety.ColdStorage;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Temperature;
import org.junit.jupiter.api.Test;

class CoolingTest {
    private static final double HOT = Temperature.fromCelsius(60);
    private static final double HOUR = 3600;
    private static final Composition PORK = new Composition(0.70, 0.21, 0.08, 0, 0.01);
    private static final CoolingMedium REFRIGERATOR = CoolingMedium.get(CoolingMedium.REFRIGERATOR);
    private static final CoolingMedium ICE = CoolingMedium.get(CoolingMedium.ICE_BATH);

    private static HotFood joint(double thickness) {
        return HotFood.piece("joint", PORK, new Shape.Box(0.2, 0.15, thickness), 2, HOT);
    }

    @Test
    void aJointInTheRefrigeratorBreaksTheLimitsAndAnIceBathKeepsThem() {
        CoolingAdvice advice = CoolingAdvice.of(joint(0.066), REFRIGERATOR);
        assertThat(advice.asked().keepsLimits()).isFalse();
        assertThat(advice.smallestChange()).isPresent();
        assertThat(advice.smallestChange().orElseThrow().words()).isEqualTo("ice bath");
        assertThat(advice.storage().id()).isEqualTo("cooked-meat");
        assertThat(Temperature.toFahrenheit(advice.reheating().temperature())).isEqualTo(165, within(1e-9));
    }

    @Test
    void whatIsThinEnoughNeedsNoChange() {
        CoolingAdvice advice = CoolingAdvice.of(joint(0.008), REFRIGERATOR);
        assertThat(advice.asked().keepsLimits()).isTrue();
        assertThat(advice.changes()).isEmpty();
        assertThat(advice.smallestChange()).isEmpty();
    }

    @Test
    void theThickestPortionPassesAndAMillimeterMoreFails() {
        for (CoolingAdvice.Change change :
                CoolingAdvice.of(joint(0.1), REFRIGERATOR).changes()) {
            if (change.thickness().isPresent()) {
                double thickness = change.thickness().getAsDouble();
                CoolingMedium medium = change.forecast().medium();
                assertThat(change.forecast().keepsLimits()).isTrue();
                assertThat(CoolingForecast.cautious(joint(0.1).layer(thickness + 0.001), medium)
                                .keepsLimits())
                        .isFalse();
            }
        }
    }

    @Test
    void theCautiousEndIsNeverFasterThanTheMiddleOfTheBands() {
        for (CoolingMedium medium : CoolingMedium.load()) {
            HotFood food = joint(0.04);
            assertThat(CoolingForecast.cautious(food, medium).timeToFirst().orElseThrow())
                    .isGreaterThan(
                            CoolingForecast.typical(food, medium).timeToFirst().orElseThrow());
        }
    }

    @Test
    void aThinStillLayerCoolsLikeAStirredOne() {
        // at a Biot number near zero conduction and the exponential of the mixed liquid are one
        HotFood thin = HotFood.pot(0.5, 0.1, false, HOT).layer(0.003);
        CoolingForecast still = CoolingForecast.typical(thin, REFRIGERATOR);
        CoolingForecast stirred = CoolingForecast.typical(thin.stirred(), REFRIGERATOR);
        double expected = stirred.timeToTotal().orElseThrow();
        assertThat(still.timeToTotal().orElseThrow()).isEqualTo(expected, within(0.02 * expected));
    }

    @Test
    void aStirredPotFollowsTheExponential() {
        HotFood pot = HotFood.pot(4, 0.15, true, Temperature.fromCelsius(90));
        CoolingForecast forecast = CoolingForecast.typical(pot, REFRIGERATOR);
        // times of two falls of one exponential are as their logarithms
        double medium = REFRIGERATOR.temperature();
        double start = Temperature.fromFahrenheit(135) - medium;
        double first = Math.log(start / (Temperature.fromFahrenheit(70) - medium));
        double total = Math.log(start / (Temperature.fromFahrenheit(41) - medium));
        assertThat(forecast.timeToTotal().orElseThrow() / forecast.timeToFirst().orElseThrow())
                .isEqualTo(total / first, within(1e-3));
        // the top of a pot in a bath gives nothing off
        assertThat(pot.shapeIn(ICE).surfaceToVolume())
                .isLessThan(pot.shapeIn(REFRIGERATOR).surfaceToVolume());
    }

    @Test
    void aStillPotIsTheSlowerOne() {
        HotFood still = HotFood.pot(8, 0.2, false, HOT);
        CoolingAdvice advice = CoolingAdvice.of(still, ICE);
        assertThat(advice.asked().keepsLimits()).isFalse();
        assertThat(advice.changes().get(0).words()).startsWith("stir");
        assertThat(advice.smallestChange().orElseThrow().words()).startsWith("stir");
        assertThat(advice.storage().id()).isEqualTo("soup");
        // 8 kg from 60 to 5 °C take the melting of about 8 * 4.1 * 55 / 333.55 kg of ice
        assertThat(advice.ice()).isEqualTo(8 * 4.1 * 55 / 333.55, within(0.2));
    }

    @Test
    void aRefrigeratorAboveTheLimitNeverGetsThere() {
        CoolingForecast forecast = CoolingForecast.cautious(joint(0.01), REFRIGERATOR.at(Temperature.fromCelsius(6)));
        assertThat(forecast.timeToTotal()).isEmpty();
        assertThat(forecast.keepsLimits()).isFalse();
        assertThat(forecast.total().measured()).isGreaterThan(6 * HOUR);
    }

    @Test
    void theClockStartsAt135FahrenheitSoColderFoodIsRefused() {
        assertThatThrownBy(() -> HotFood.pot(1, 0.1, false, Temperature.fromCelsius(50)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("start temperature");
        assertThatThrownBy(() -> CoolingMedium.get("lake")).hasMessageContaining("refrigerator");
    }

    @Test
    void theChartOfStorageIsInOrder() {
        assertThat(ColdStorage.load()).allMatch(line -> 0 < line.daysLow() && line.daysLow() <= line.daysHigh());
        assertThat(ColdStorage.get("cooked-meat").describe()).startsWith("cooked meat or poultry: 3 to 4 days");
    }
}
