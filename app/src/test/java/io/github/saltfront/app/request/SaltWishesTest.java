package io.github.saltfront.app.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.PlanningException;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Request.Treatment;
import io.github.saltfront.safety.Meat;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a request says of label, liquid, vessel and sodium, and what becomes of it. */
class SaltWishesTest {
    private static final Catalog CATALOG = Catalog.load();

    // facts of the trade, common practice: lean skinless pieces gain most from a wet brine; skin-on birds and fatty or
    // tough
    // meat are salted dry; a braise needs none; meat that holds a solution gets none
    @ParameterizedTest
    @CsvSource({
        "chicken-breast-skinless, 220 g, oven-fan, WET_BRINE",
        "pork-loin-chop, 190 g, pan, WET_BRINE",
        "pork-tenderloin, 500 g, oven-fan, WET_BRINE",
        "chicken-whole, 1.6 kg, oven-fan, DRY_SALT",
        "duck-whole, 2.2 kg, oven-fan, DRY_SALT",
        "turkey-whole, 5.5 kg, oven-conventional, DRY_SALT",
        "pork-shoulder-butt, 2 kg, oven-low, DRY_SALT",
        "beef-ribeye-steak, 340 g, pan, DRY_SALT",
        "beef-brisket-whole, 5 kg, smoker, DRY_SALT",
        "beef-chuck-roast, 1.8 kg, simmer, NONE",
        "chicken-breast-skinless, 220 g, pressure-cooker, NONE",
        "chicken-thigh-boneless, 110 g, deep-fryer, DAIRY",
        "turkey-whole-enhanced, 5.5 kg, oven-conventional, NONE",
        "pork-tenderloin-enhanced, 500 g, oven-fan, NONE",
        "burger-patty, 113 g, pan, SURFACE_SALT"
    })
    void planFollowsTheTrade(String cut, String mass, String appliance, Treatment treatment) {
        Plan.SaltPlan plan = salting("cut: %s\nmass: %s\nappliance: %s".formatted(cut, mass, appliance));
        assertThat(plan.treatment()).isEqualTo(treatment);
        assertThat(plan.reasons()).allMatch(r -> !r.sources().isEmpty());
        assertThat(plan.reasons().stream().flatMap(r -> r.sources().stream())).anyMatch(s -> !s.equals("model"));
    }

    @Test
    void strongBrineOfSaltedMeatIsRefusedWithTheReason() {
        String request = "cut: chicken-breast-skinless\nmass: 220 g\nlabel: {solution: 12 %, sodium: 173 mg}\n"
                + "salting: {treatment: wet-brine}";
        assertThatThrownBy(() -> salting(request))
                .isInstanceOf(PlanningException.class)
                .hasMessageContaining("The maker has already added about 0.34 %")
                .hasMessageContaining("equilibrium");
    }

    // 173 mg sodium / 0.39337 = 0.440 %; to 0.75 %: (0.0075 - 0.0044) / 0.9925 of 220 g = 0.69 g
    @Test
    void labelledSaltIsCountedInWhenDosedDry() {
        Plan.SaltPlan plan =
                salting("cut: chicken-breast-skinless\nmass: 220 g\nlabel: {solution: 12 %, sodium: 173 mg}\n"
                        + "salting: {treatment: dry-salt, time: 12 h}");
        assertThat(plan.salt() * 1000).isCloseTo(0.69, within(0.01));
    }

    @Test
    void kosherBirdGetsNoMoreSalt() {
        Plan.SaltPlan plan = salting("cut: chicken-whole\nmass: 1.6 kg\nlabel: {kosher: yes}");
        assertThat(plan.treatment()).isEqualTo(Treatment.NONE);
        assertThat(plan.reasons().get(0).words()).contains("salted at the plant");
    }

    // a solution goes in with needles: the inside counts as contaminated (fsis2021, p. 24)
    @Test
    void meatWithSolutionIsNotIntactToTheSafetyRules() {
        assertThat(read("cut: pork-loin-roast\nmass: 1.8 kg\nlabel: {solution: 10 %}")
                        .food()
                        .meat()
                        .safety())
                .isEqualTo(Meat.TENDERIZED_OR_INJECTED);
    }

    @Test
    void amountOfLiquidFollowsTheVesselUnlessGiven() {
        String base =
                "cut: pork-loin-chop\npieces: 4\nmass: 190 g\nthickness: 25 mm\nsalting: {treatment: wet-brine}\n";
        // covering.csv: bag 0.4 L/kg, tub 1.1 L/kg of 0.76 kg; water 0.9982 kg/L
        assertThat(salting(base + "vessel: bag").water()).isCloseTo(0.4 * 0.76 * 0.9982, within(1e-3));
        assertThat(salting(base + "vessel: tub").water()).isCloseTo(1.1 * 0.76 * 0.9982, within(1e-3));
        assertThat(salting(base + "liquid_per_meat: 2 kg per kg meat").water()).isCloseTo(1.52, within(1e-9));
    }

    @Test
    void whatTheLiquidBringsIsInTheStrength() {
        Plan.SaltPlan plan =
                salting("cut: pork-loin-chop\nmass: 190 g\nliquid: chicken-broth\nliquid_per_meat: 1 kg per kg meat\n"
                        + "salting: {treatment: wet-brine, strength: 4 % of water}");
        assertThat(plan.saltPerWater()).isCloseTo(0.04, within(1e-12));
        // 190 g broth: 0.94 % salt, 97.81 % water
        assertThat(plan.salt() * 1000).isCloseTo(190 * (0.9781 * 0.04 - 0.0094), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "liquid: butermilk | a liquid of the catalog; nearest are buttermilk",
                "vessel: bucket | bag, tub, bird-in-pot or the width",
                "label: {solution: 80 %} | 50",
                "taste: {sodium: 5 mg} | 20 mg to 2 g",
                "salt: pink curing salt | nitrite"
            })
    void wrongWishesAreExplained(String line, String message) {
        assertThatThrownBy(() -> read("cut: pork-loin-chop\nmass: 190 g\n" + line))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining(message);
    }

    private static Plan.SaltPlan salting(String yaml) {
        return Planner.planSalting(read(yaml), Runnable::run, 1);
    }

    private static Request read(String yaml) {
        return PlanFile.read(
                DocumentReader.read("request.yaml", yaml.getBytes(StandardCharsets.UTF_8), DocumentFormat.YAML),
                CATALOG,
                ZonedDateTime.parse("2026-11-23T12:00-05:00"));
    }
}
