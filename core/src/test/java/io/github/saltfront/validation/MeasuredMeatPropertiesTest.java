package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.matter.ConductivityModel;
import io.github.saltfront.matter.FreezingPointModel;
import io.github.saltfront.matter.Levy1981;
import io.github.saltfront.matter.MaxwellEucken;
import io.github.saltfront.matter.MeatThermalProperties;
import io.github.saltfront.matter.Parallel;
import io.github.saltfront.units.Temperature;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Meat properties against published measurements. */
class MeasuredMeatPropertiesTest {
    /** Chicken breast, skinless, raw: USDA SR28, food 05062. */
    private static final Composition CHICKEN_BREAST = Composition.ofPrinted(0.739, 0.225, 0.0262, 0, 0.0113);

    /** Turkey, meat and skin: ASHRAE Handbook Refrigeration, Thermal properties of foods, Table 3. */
    private static final Composition TURKEY = Composition.ofPrinted(0.7040, 0.2042, 0.0802, 0, 0.0088);

    /** Reproducibility of measured heat capacities: beef of 74.5 % and of 74.5-78.5 % water was given as 3.60 and 3.81. */
    private static final double HEAT_CAPACITY_SPREAD = 0.06;

    /** Levy's model met lamb from -40 to 30 C within 10 % (Pham and Willix 1989, J Food Sci 54:508, abstract). */
    private static final double CONDUCTIVITY_ERROR = 0.10;

    private static final Map<String, String> HEAT_CAPACITY_KNOWN_MISSES = Map.of(
            "fatty beef", "measured 8 % lower; composition other than water unknown",
            "pork 57 %", "measured 7 % lower; composition other than water unknown",
            "fatty pork", "measured 10 % lower; composition other than water unknown",
            "ham", "measured 17 % higher than the components can give; fat melts between 4.5 and 24 C",
            "chicken", "measured 6 % lower than the mean of the components from 0 to 100 C",
            "poultry", "9 % lower; textbook table without conditions",
            "pork 60 %", "14 % lower; textbook table without conditions",
            "lamb 70 %", "10 % lower; textbook table without conditions");

    /** Sweat, Haugh and Stadelman 1973, J Food Sci 38 (abstract): 0.476 + 0.00060 t, 0 to 20 C, 48 samples. */
    @ParameterizedTest
    @CsvSource({"0", "5", "10", "15", "20"})
    void levyMeetsTheConductivityOfChickenBreast(double celsius) {
        double measured = 0.476 + 0.00060 * celsius;
        assertThat(conductivity(CHICKEN_BREAST, new Levy1981(), celsius))
                .isCloseTo(measured, within(CONDUCTIVITY_ERROR * measured));
    }

    /** The same abstract: 1.07 - 0.0149 t - 1.04e-4 t^2, -75 to -10 C (the sign and place of 0.0149 read from "0149T"). */
    @ParameterizedTest
    @CsvSource({"-10", "-20", "-30", "-40"})
    void levyMeetsTheConductivityOfFrozenChickenBreast(double celsius) {
        double measured = 1.07 - 0.0149 * celsius - 1.04e-4 * celsius * celsius;
        assertThat(conductivity(CHICKEN_BREAST, new Levy1981(), celsius))
                .isCloseTo(measured, within(CONDUCTIVITY_ERROR * measured));
    }

    @Test
    void levyMeetsTheConductivityOfTurkeyButForTheHotEnd() {
        // Chang, Carpenter and Toledo 1998, J Food Sci 63:257 (abstract): 0.464 as one value for 0 to 80 C
        for (double celsius = 0; celsius <= 50; celsius += 10) {
            assertThat(conductivity(TURKEY, new Levy1981(), celsius))
                    .as("at " + celsius)
                    .isCloseTo(0.464, within(CONDUCTIVITY_ERROR * 0.464));
        }
        // known miss: at 80 C the raw components give 12 % more; cooked meat has lost water and denatured, for which
        // the model
        // needs the water content of the moment
        assertThat(conductivity(TURKEY, new Levy1981(), 80) / 0.464).isBetween(1.10, 1.13);
    }

    /** Mean absolute error over -40 to -10 and 0 to 20 C: 3.1, 3.8 and 18.6 %. */
    @Test
    void levyIsCloserToChickenBreastThanItsRivals() {
        double levy = meanError(new Levy1981());
        double maxwell = meanError(new MaxwellEucken());
        double parallel = meanError(new Parallel());
        assertThat(levy).isLessThan(maxwell);
        assertThat(maxwell).isLessThan(parallel);
    }

    /**
     * Heat capacity of meat of known water content [low, high C; kJ/(kg.K)]: Morley 1972 as tabulated in James and James 2002,
     * Meat Refrigeration, Table 13.2, and (poultry, pork 60 %, lamb 70 %) Geankoplis, Appendix A.4-1. Protein and fat have nearly
     * the same heat capacity, so the dry matter is taken as protein; a range is entered by its middle.
     */
    @ParameterizedTest
    @CsvSource({
        "lean beef, 0.745, 0, 10, 3.60",
        "beef 76.5 %, 0.765, 0, 30, 3.81",
        "lean beef 72 %, 0.72, 0, 100, 3.43",
        "fatty beef, 0.51, 0, 100, 2.89",
        "veal, 0.775, 0, 32, 3.64",
        "veal 63 %, 0.63, 0, 100, 3.22",
        "lean pork, 0.733, 0, 18, 3.52",
        "pork 57 %, 0.57, 0, 100, 3.06",
        "fatty pork, 0.39, 0, 100, 2.60",
        "pork 76.8 %, 0.768, 0, 30, 3.81",
        "ham, 0.52, 4.5, 24, 3.65",
        "lamb leg, 0.578, 0, 20, 3.18",
        "mutton, 0.70, 0, 20, 3.39",
        "chicken, 0.73, 0, 100, 3.39",
        "poultry, 0.74, 0, 20, 3.31",
        "pork 60 %, 0.60, 0, 20, 2.85",
        "lamb 70 %, 0.70, 32, 33.6, 3.18"
    })
    void heatCapacityMeetsMeasurementsButForTheListedMisses(
            String meat, double water, double low, double high, double measured) {
        Composition composition = new Composition(water, 1 - water, 0, 0, 0);
        MeatThermalProperties properties = MeatThermalProperties.of(composition.dryMatter());
        double perSolids = composition.waterPerSolids();
        double rise = properties.enthalpy(Temperature.fromCelsius(high), perSolids, 0)
                - properties.enthalpy(Temperature.fromCelsius(low), perSolids, 0);
        double mean = rise / (high - low) * (1 - water) / 1000;
        double error = Math.abs(mean / measured - 1);
        if (HEAT_CAPACITY_KNOWN_MISSES.containsKey(meat)) {
            assertThat(error).as(meat).isBetween(HEAT_CAPACITY_SPREAD, 0.18);
        } else {
            assertThat(error).as(meat).isLessThanOrEqualTo(HEAT_CAPACITY_SPREAD);
        }
    }

    /**
     * Heat from -30 to 20 C against the enthalpy of Chen 1985 (ASHRAE Handbook Refrigeration, Thermal properties of foods), itself
     * a fit to measured enthalpies, for the same freezing point [C] and composition: rows P261/P263, P271/P273, P281/P283. Models
     * of this kind meet measured heat loads within 10 % (Pham 1996, J Food Eng 30:95, abstract).
     */
    @ParameterizedTest
    @CsvSource({
        "0.7170, 0.2124, 0.0440, 0.0108, -1.7, 22.0528, 351.3991",
        "0.7342, 0.2029, 0.0525, 0.0106, -1.9, 22.2984, 357.4355",
        "0.7263, 0.1955, 0.0714, 0.0102, -2.2, 22.9124, 354.6976"
    })
    void heatToThawMeetsChen1985(
            double water, double protein, double fat, double ash, double freezing, double cold, double warm) {
        Composition composition = Composition.ofPrinted(water, protein, fat, 0, ash);
        MeatThermalProperties meat = MeatThermalProperties.of(composition.dryMatter())
                .withFreezingPointModel(new FreezingPointModel.Fixed(Temperature.fromCelsius(freezing)));
        double perSolids = composition.waterPerSolids();
        double heat = (meat.enthalpy(Temperature.fromCelsius(20), perSolids, 0)
                        - meat.enthalpy(Temperature.fromCelsius(-30), perSolids, 0))
                / (1 + perSolids)
                / 1000;
        assertThat(heat).isCloseTo(warm - cold, within(0.10 * (warm - cold)));
    }

    private static double meanError(ConductivityModel model) {
        double sum = 0;
        int count = 0;
        for (double t = -40; t <= 20; t += 5) {
            if (t <= -10 || t >= 0) {
                double measured = t < 0 ? 1.07 - 0.0149 * t - 1.04e-4 * t * t : 0.476 + 0.00060 * t;
                sum += Math.abs(conductivity(CHICKEN_BREAST, model, t) / measured - 1);
                count++;
            }
        }
        return sum / count;
    }

    private static double conductivity(Composition composition, ConductivityModel model, double celsius) {
        return MeatThermalProperties.of(composition.dryMatter())
                .withConductivityModel(model)
                .conductivity(Temperature.fromCelsius(celsius), composition.waterPerSolids(), 0);
    }
}
