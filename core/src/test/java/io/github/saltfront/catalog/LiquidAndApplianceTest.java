package io.github.saltfront.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Appliance.Evaporation;
import io.github.saltfront.catalog.Liquid.Allergen;
import io.github.saltfront.catalog.TreatmentRules.Treatment;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Liquids, appliances and rules of treatment. */
class LiquidAndApplianceTest {
    private static final Catalog CATALOG = Catalog.load();

    // printed beside the USDA rows: salt in the water phase, percent with two decimals. The rows print salt to two
    // decimals too, so 0.006 is the tolerance
    @ParameterizedTest
    @CsvSource({"buttermilk, 0.53", "milk, 0.12", "soy-sauce, 16.41", "chicken-broth, 0.96", "tamari, 17.71"})
    void waterPhaseSaltMatchesThePrintedFigure(String id, double percent) {
        assertThat(100 * CATALOG.liquids().get(id).waterPhaseSalt()).isCloseTo(percent, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        "buttermilk, MILK",
        "yogurt, MILK",
        "soy-sauce, SOY",
        "soy-sauce, GLUTEN",
        "beer, GLUTEN",
        "wine, SULFITES"
    })
    void allergensAreNamed(String id, Allergen allergen) {
        assertThat(CATALOG.liquids().get(id).allergens()).contains(allergen);
    }

    @Test
    void everyDairyAndSoyLiquidNamesItsAllergen() {
        assertThat(CATALOG.liquids().all())
                .filteredOn(l -> l.id().matches(".*(milk|yogurt).*") && !l.id().startsWith("coconut"))
                .allMatch(l -> l.allergens().contains(Allergen.MILK));
        assertThat(CATALOG.liquids().all())
                .filteredOn(l -> l.id().matches(".*(soy|tamari).*"))
                .allMatch(l -> l.allergens().contains(Allergen.SOY));
    }

    @Test
    void lemonIsStrongAcidAndButtermilkIsNot() {
        assertThat(CATALOG.liquids().get("lemon-juice").acid().isStrong()).isTrue();
        assertThat(CATALOG.liquids().get("buttermilk").acid().isStrong()).isFalse();
    }

    // chang1998: 19.25 W/(m2.K) measured in a home oven at 162.8 degrees with the fan off; convection and black-wall
    // radiation to a surface at 60 degrees give 18.3, within 5 %
    @Test
    void stillOvenAddsUpToTheMeasuredCoefficient() {
        Appliance oven = CATALOG.appliances().get("oven-conventional");
        double wall = oven.temperature().typical();
        double surface = Temperature.fromCelsius(60);
        double radiative = oven.radiation().emissivity().typical()
                * PhysicalConstants.STEFAN_BOLTZMANN
                * (surface * surface + wall * wall)
                * (surface + wall);
        double total = oven.convection().typical() + radiative;
        assertThat(total).isCloseTo(18.3, within(0.1));
        assertThat(total).isCloseTo(19.25, within(0.05 * 19.25));
    }

    @Test
    void liquidsDoNotEvaporateAndAirHasAHumidity() {
        assertThat(CATALOG.appliances().all()).allSatisfy(a -> {
            if (a.medium() == Appliance.Medium.LIQUID || a.medium() == Appliance.Medium.STEAM) {
                assertThat(a.evaporation().kind()).as(a.id()).isEqualTo(Evaporation.Kind.NONE);
                assertThat(a.radiation().emissivity().high()).isZero();
            }
            if (a.evaporation().kind() == Evaporation.Kind.TO_AIR) {
                assertThat(a.evaporation().wetFractionSkin())
                        .isLessThanOrEqualTo(a.evaporation().wetFractionBare());
            }
        });
    }

    @Test
    void appliancesKnowTheirRange() {
        Appliance oven = CATALOG.appliances().get("oven");
        assertThat(oven.reaches(Temperature.fromCelsius(180))).isTrue();
        assertThat(oven.reaches(Temperature.fromCelsius(400))).isFalse();
        assertThat(oven.reaches(Double.NaN)).isFalse();
    }

    // decision table of treatments (common practice, no source)
    @ParameterizedTest
    @CsvSource({
        "chicken-breast-skinless, any, WET_BRINE, DRY_SALT, ACID",
        "chicken-whole, any, DRY_SALT, WET_THEN_DRY, WET_BRINE",
        "chicken-drumstick, fry-or-grill, DAIRY, DRY_SALT, NONE",
        "chicken-drumstick, roast, DRY_SALT, DAIRY, NONE",
        "beef-strip-steak, any, DRY_SALT, SURFACE_SALT, WET_BRINE",
        "turkey-whole-enhanced, any, NONE, DRY_SALT, WET_BRINE",
        "burger-patty, any, SURFACE_SALT, NONE, DRY_SALT"
    })
    void treatmentsFollowTheTable(String cut, String cook, Treatment first, Treatment second, Treatment avoid) {
        TreatmentRules.Rule rule = CATALOG.treatmentOf(CATALOG.cuts().get(cut), cook);
        assertThat(rule.first().treatment()).isEqualTo(first);
        assertThat(rule.second().treatment()).isEqualTo(second);
        assertThat(rule.avoid()).isEqualTo(avoid);
    }

    @Test
    void whoAvoidsSaltIsAskedBeforeTaste() {
        assertThat(CATALOG.treatments().choiceSteps())
                .extracting(TreatmentRules.ChoiceStep::step)
                .isSorted()
                .doesNotHaveDuplicates();
        assertThat(CATALOG.treatments().choiceSteps().get(0).id()).isEqualTo("already-salted");
        assertThat(CATALOG.treatments().choiceSteps().get(1).id()).isEqualTo("sodium-limit");
    }
}
