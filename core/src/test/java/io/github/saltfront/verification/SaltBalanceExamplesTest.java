package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.plan.AcidFront;
import io.github.saltfront.plan.Evenness;
import io.github.saltfront.plan.IceBalance;
import io.github.saltfront.plan.IceBalance.Warm;
import io.github.saltfront.plan.MeatInBath;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Arithmetic of salting against examples worked out by hand for this project (mass balance, ice, acid) and against series
 * evaluated by a separate script (crank1975). Tolerances are half a unit of the last printed digit unless said otherwise.
 */
class SaltBalanceExamplesTest {
    private static final double KG = 1;

    // Example A: 1 kg lean of 75 % water, 1.5 g native salt, 1 kg water, 20 g salt, K 1
    @Test
    void exampleAEndsAtTheStatedSalt() {
        MeatInBath.Equilibrium end = new MeatInBath(KG, 0.75, 0.0015, 1).equilibrium(1, 0.020);
        assertThat(end.saltPerWater()).isCloseTo(0.01229, within(0.5e-5));
        assertThat(end.saltInMeat() * 1000).isCloseTo(9.21, within(0.005));
        assertThat(end.meatSaltFraction() * 100).isCloseTo(0.913, within(0.0005));
        assertThat(end.bathSaltFraction() * 100).isCloseTo(1.21, within(0.005));
    }

    // Example B: dose for 1.0 % in 1 kg lean of 75 % water; grams
    @ParameterizedTest
    @CsvSource({
        "0.5, 1, 0, 16.8",
        "1, 1, 0, 23.6",
        "2, 1, 0, 37.0",
        "0.5, 1, 1.2, 15.6",
        "1, 1, 1.2, 22.4",
        "2, 1, 1.2, 35.8",
        "0.5, 0.9, 0, 17.6",
        "1, 0.9, 0, 25.1",
        "2, 0.9, 0, 40.0"
    })
    void exampleBDosesTheStatedSalt(double water, double partition, double nativeGrams, double grams) {
        double dose = new MeatInBath(KG, 0.75, nativeGrams / 1000, partition).doseFor(water, 0.01);
        assertThat(dose * 1000).isCloseTo(grams, within(0.05));
    }

    // Example C: what is left of the strength of a fixed brine, K 1, 75 % water
    @ParameterizedTest
    @CsvSource({"0.5, 0.40", "1, 0.57", "2, 0.73", "4, 0.84"})
    void exampleCDepletesAsStated(double waterPerMeat, double left) {
        assertThat(new MeatInBath(KG, 0.75, 0, 1).remainingStrength(waterPerMeat))
                .isCloseTo(left, within(0.005));
    }

    // Example D: 6 kg bird of 70 % water and 0.18 % native salt in 6 kg water, 0.9 %, K 1: 122 g, 2.0 % of the brine
    @Test
    void exampleDDosesAWholeBird() {
        double dose = new MeatInBath(6, 0.70, 6 * 0.0018, 1).doseFor(6, 0.009);
        assertThat(dose * 1000).isCloseTo(122, within(0.5));
        assertThat(100 * dose / (6 + dose)).isCloseTo(2.0, within(0.05));
    }

    // The shortcut: 20 g where 23.6 g are needed, so that the meat ends at 0.86 % (printed; computed 0.8498)
    @Test
    void shortcutDoseEndsTooLow() {
        MeatInBath meat = new MeatInBath(KG, 0.75, 0, 1);
        double dose = meat.shortcutDose(1, 0.01);
        assertThat(dose * 1000).isCloseTo(20, within(1e-9));
        double reached = 100 * meat.equilibrium(1, dose).meatSaltFraction();
        // per mass of meat without its salt the printed 0.86 is met; per salted meat, the basis used here, it is 0.85
        assertThat(reached / (1 - reached / 100)).isCloseTo(0.86, within(0.005));
        assertThat(reached).isCloseTo(0.85, within(0.005));
    }

    // Ice from -18 C to water of 4 C takes 387.2 kJ/kg
    @Test
    void heatOfIceIsAsWorkedOut() {
        assertThat(IceBalance.heatOfIce(celsius(-18), celsius(4)) / 1e3).isCloseTo(387.2, within(0.05));
    }

    // mass kg, heat capacity J/(kg.K), temperature C, ice kg printed
    @ParameterizedTest
    @CsvSource({
        "3, 4190, 20, 0.52",
        "5.2, 3870, 20, 0.83",
        "1.24, 3400, 95, 0.99",
        "1.24, 3400, 60, 0.61",
        "2, 3400, 10, 0.11"
    })
    void iceIsAsWorkedOut(double mass, double capacity, double from, double ice) {
        double needed = IceBalance.iceFor(List.of(new Warm(mass, capacity, celsius(from))), celsius(-18), celsius(4));
        assertThat(needed).isCloseTo(ice, within(0.005));
    }

    // 240 g salt, 4.0 kg water in all: 2.03 kg at 95 C and 1.97 kg ice end at 4 C
    @Test
    void halfHotHalfIceEndsCold() {
        double ice = IceBalance.iceOfHotAndIce(4.0, 0.240, celsius(95), celsius(-18), celsius(4));
        assertThat(ice).isCloseTo(1.97, within(0.005));
    }

    // 240 g salt cool 4 kg water by 1.0 K (15.9 kJ)
    @Test
    void dissolvingCoolsByOneKelvin() {
        assertThat(IceBalance.dissolving(0.240, 4.0)).isCloseTo(1.0, within(0.06));
    }

    // lemon juice thinned to 0.1 mol/L: 4.4 mm in 12 h; buttermilk, 45 mol/m3 free: 3.5 mm
    @ParameterizedTest
    @CsvSource({"1.344e-10, 100, 4.4", "1.9e-10, 45, 3.5"})
    void acidGoesAFewMillimetersOvernight(double diffusivity, double acid, double millimeters) {
        double depth = new AcidFront(diffusivity, acid, 60).depth(12 * 3600);
        assertThat(depth * 1000).isCloseTo(millimeters, within(0.05));
    }

    // crank1975: series evaluated by a script, five printed decimals
    @TestFactory
    List<DynamicTest> evennessMatchesTheSeries() {
        return CsvTable.load(SaltBalanceExamplesTest.class, "crank_check.csv").rows().stream()
                .map(row -> DynamicTest.dynamicTest("Fo " + row.text("Fo_Dt_over_L2"), () -> {
                    double fourier = row.number("Fo_Dt_over_L2");
                    assertThat(Evenness.centerOverMean(fourier))
                            .isCloseTo(row.number("surface_dose_slab_centre_over_mean"), within(0.6e-5));
                    assertThat(Evenness.surfaceOverMean(fourier))
                            .isCloseTo(row.number("surface_dose_slab_surface_over_mean"), within(0.6e-5));
                }))
                .toList();
    }

    // Fourier numbers at which the middle reaches 90 and 50 % of the mean
    @ParameterizedTest
    @CsvSource({"0.9, 0.3035", "0.5, 0.1388"})
    void middleReachesItsShareAtTheStatedFourierNumber(double share, double fourier) {
        assertThat(Evenness.fourierAt(share)).isCloseTo(fourier, within(0.5e-4));
    }

    // thickness mm, hours to 90 % at 3.2e-10 m2/s and at both ends of its band, center/mean after 24, 48, 72 h
    @ParameterizedTest
    @CsvSource({
        "10, 7, 2, 19, 1.00, 1.00, 1.00",
        "15, 15, 5, 43, 0.98, 1.00, 1.00",
        "20, 26, 9, 76, 0.87, 0.99, 1.00",
        "25, 41, 14, 118, 0.65, 0.94, 0.99",
        "30, 59, 21, 170, 0.42, 0.82, 0.95",
        "40, 105.6, 36, 312, 0.12, 0.50, 0.74",
        "50, 165.6, 57.6, 480, 0.02, 0.22, 0.47"
    })
    void slabsEvenOutAsTabulated(
            double thickness, double hours, double fast, double slow, double day1, double day2, double day3) {
        double path = thickness / 2000;
        // the long times were printed in days with two digits
        double rounding = hours > 100 ? 0.06 * 24 : 0.55;
        assertThat(Evenness.timeTo(0.9, path, 3.2e-10) / 3600).isCloseTo(hours, within(rounding));
        assertThat(Evenness.timeTo(0.9, path, 9.2e-10) / 3600).isCloseTo(fast, within(rounding));
        // 1.1e-10 is itself rounded: 3.2e-10 / 1.9^1.645 = 1.113e-10
        assertThat(Evenness.timeTo(0.9, path, 1.113e-10) / 3600).isCloseTo(slow, within(0.04 * slow));
        assertThat(after(24, path)).isCloseTo(day1, within(0.005));
        assertThat(after(48, path)).isCloseTo(day2, within(0.005));
        assertThat(after(72, path)).isCloseTo(day3, within(0.005));
    }

    // hours, reach in mm at 3.2e-10 m2/s
    @ParameterizedTest
    @CsvSource({"1, 2.1", "4, 4.3", "12, 7.4", "24, 10.5", "48, 14.9", "72, 18.2"})
    void saltReachesAsDeepAsStated(double hours, double millimeters) {
        assertThat(Evenness.reach(hours * 3600, 3.2e-10) * 1000).isCloseTo(millimeters, within(0.05));
    }

    private static double after(double hours, double path) {
        return Evenness.centerOverMeanAfter(hours * 3600, path, 3.2e-10);
    }

    private static double celsius(double value) {
        return Temperature.fromCelsius(value);
    }
}
