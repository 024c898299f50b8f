package io.github.saltfront.app.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.SaltJson;
import io.github.saltfront.app.export.SaltSection;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Request.Treatment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The twelve requests of examples/salting, their salting section only. Grams are hand computed from the figures of the catalog
 * (cut, liquid, K 0.95): a strength times the water of the vessel, a mass balance of meat and liquid, or a dry dose.
 */
class SaltingExamplesTest {
    private static final Path FOLDER = Path.of("../examples/salting");
    private static final Catalog CATALOG = Catalog.load();
    private static final ZonedDateTime NOW = ZonedDateTime.parse("2026-11-23T12:00-05:00");
    private static final double HALF_A_GRAM = 0.5;

    private static final List<Expected> EXPECTED = List.of(
            // 60 g per liter of 1.186 L of water, 1.1 L/kg of 1.08 kg
            new Expected("01-thin-cutlets", Treatment.WET_BRINE, 71.2, 0.70, 0.82),
            // pot of 24 cm filled to 45 mm less 0.76/1054 m3 = 1.315 L at 20 C, 60 g per liter
            new Expected("02-pork-chops-in-a-pot", Treatment.WET_BRINE, 78.7, 0.70, 0.80),
            // 0.88 kg in 364.7 g buttermilk with 1.75 g salt: 0.010411 (0.3287 + 0.6372) kg - 2.12 g - 1.75 g
            new Expected("03-fried-thighs-in-buttermilk", Treatment.DAIRY, 6.2, 0.60, 0.76),
            new Expected("04-lamb-in-yogurt", Treatment.DAIRY, 8.2, 0.60, 0.78),
            // 54 g of soy sauce bring it all
            new Expected("05-flank-in-soy", Treatment.MARINADE, 0, 0.45, 0.60),
            new Expected("06-cod-in-lemon", Treatment.MARINADE, 3.6, 0.20, 0.45),
            // (1.203 x 0.9781 kg water x 0.0343) - 1.203 kg x 0.94 %; the strength is searched for by simulation
            new Expected("07-tenderloin-in-stock", Treatment.WET_BRINE, 29.1, 0.70, 0.80),
            // 1.8 kg in 3.523 kg of beer: 0.011429 (3.2398 + 1.1901) kg - 2.14 g - 0.35 g
            new Expected("08-pork-roast-in-beer", Treatment.EQUILIBRIUM, 48.1, 0.35, 0.55),
            new Expected("09-breast-with-solution", Treatment.NONE, 0, 0.43, 0.45),
            // 140 mg / 0.39337 x 0.75 / (0.9 x 85 g) = 0.349 %, less 0.114 %, of 880 g
            new Expected("10-low-sodium-breast", Treatment.DRY_SALT, 2.1, 0.33, 0.36),
            new Expected("11-pot-roast", Treatment.NONE, 0, 0.19, 0.20),
            // (0.0075 - 0.00183) / 0.9925 of 2.3 kg less 14 % bone; three days in the open dry it by up to 7 %
            new Expected("12-turkey-breast", Treatment.DRY_SALT, 11.3, 0.75, 0.81));

    private record Expected(String file, Treatment treatment, double saltG, double afterLowPct, double afterHighPct) {}

    @TestFactory
    List<DynamicTest> everySaltingIsWithinItsStatedBand() {
        return EXPECTED.stream()
                .map(e -> DynamicTest.dynamicTest(e.file(), () -> check(e)))
                .toList();
    }

    private static void check(Expected expected) throws IOException {
        Request request = PlanFile.read(DocumentReader.read(FOLDER.resolve(expected.file() + ".yaml")), CATALOG, NOW);
        Plan.SaltPlan plan = Planner.planSalting(request, Runnable::run, 1);
        String text = SaltSection.of(request, plan);
        Files.createDirectories(Path.of("target/salting"));
        Files.writeString(Path.of("target/salting", expected.file() + ".txt"), text);
        assertThat(plan.treatment()).isEqualTo(expected.treatment());
        assertThat(plan.salt() * 1000).isCloseTo(expected.saltG(), within(HALF_A_GRAM));
        assertThat(plan.after().median() * 100).isBetween(expected.afterLowPct(), expected.afterHighPct());
        assertThat(plan.reasons()).isNotEmpty();
        assertThat(text.lines()).allMatch(line -> line.length() <= 64);
        plan.soaking()
                .ifPresent(s -> s.bath()
                        .allergens()
                        .forEach(a -> assertThat(text).contains(a.name().toLowerCase(java.util.Locale.ROOT))));
        assertThat(SaltJson.of(request, plan)).containsKeys("reasons", "salt_g", "after_salting_pct", "cautions");
    }

    @TestFactory
    List<DynamicTest> everyFileIsListed() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> f.getFileName().toString().replace(".yaml", ""))
                    .map(name -> DynamicTest.dynamicTest(
                            name,
                            () -> assertThat(EXPECTED)
                                    .extracting(Expected::file)
                                    .contains(name)))
                    .toList();
        }
    }
}
