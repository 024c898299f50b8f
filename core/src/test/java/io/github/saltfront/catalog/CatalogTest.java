package io.github.saltfront.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.Bibliography;
import io.github.saltfront.units.Temperature;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The catalog as a whole: enough of everything, every row sourced, plausible and findable. */
class CatalogTest {
    private static final Catalog CATALOG = Catalog.load();

    @Test
    void thereIsEnoughOfEverything() {
        assertThat(CATALOG.cuts().all()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(CATALOG.salts().all()).hasSizeGreaterThanOrEqualTo(5);
        assertThat(CATALOG.liquids().all()).hasSizeGreaterThanOrEqualTo(12);
        assertThat(CATALOG.appliances().all()).hasSizeGreaterThanOrEqualTo(8);
        assertThat(CATALOG.measures().all()).hasSizeGreaterThanOrEqualTo(10);
    }

    @Test
    void everyEntryIsNamedOnceAndHasASource() {
        Bibliography bibliography = Bibliography.load();
        assertThat(entries()).allSatisfy(entry -> {
            assertThat(entry.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
            assertThat(entry.name()).isNotBlank();
            assertThat(entry.provenance().sourceIds())
                    .isNotEmpty()
                    .allMatch(id -> bibliography.find(id).isPresent());
        });
    }

    @Test
    void noAliasNamesTwoEntriesOfATable() {
        for (NamedTable<?> table : tables()) {
            Set<String> seen = new HashSet<>();
            for (CatalogEntry entry : table.all()) {
                Set<String> own = new HashSet<>();
                own.add(NameMatch.normalize(entry.id()));
                own.add(NameMatch.normalize(entry.name()));
                entry.aliases().forEach(a -> own.add(NameMatch.normalize(a)));
                assertThat(own).as(entry.id()).noneMatch(seen::contains);
                seen.addAll(own);
            }
        }
    }

    @Test
    void compositionsAddUpAndNormalizeToOne() {
        assertThat(CATALOG.cuts().all()).allSatisfy(cut -> {
            CutComposition c = cut.composition();
            assertThat(c.nativeSalt()).as(cut.id()).isBetween(0.0005, 0.01);
            assertThat(c.nativeSalt()).isLessThan(c.ash());
            assertThat(c.density()).isBetween(970.0, 1070.0);
            CutComposition n = c.normalized();
            assertThat(n.water() + n.protein() + n.fat() + n.carbohydrate() + n.ash())
                    .isCloseTo(1, within(1e-12));
        });
    }

    // mass / (density length width thickness): 0.38-1.0 for solid cuts and birds, 0.31-0.35 for cone-shaped legs
    @Test
    void massesFillTheirBoxes() {
        assertThat(CATALOG.cuts().all())
                .allSatisfy(cut -> assertThat(
                                cut.size().fillFactor(cut.composition().density()))
                        .as(cut.id())
                        .isBetween(cut.id().contains("leg") ? 0.31 : 0.38, 1.0));
    }

    @Test
    void qualityTemperaturesStayInTheKitchen() {
        assertThat(CATALOG.cuts().all()).allSatisfy(cut -> {
            assertThat(Temperature.toCelsius(cut.qualityCore().low()))
                    .as(cut.id())
                    .isGreaterThanOrEqualTo(45);
            assertThat(Temperature.toCelsius(cut.qualityCore().high())).isLessThanOrEqualTo(96);
        });
    }

    @Test
    void everyCutHasARuleOfTreatment() {
        assertThat(CATALOG.cuts().all())
                .allSatisfy(
                        cut -> assertThat(CATALOG.treatmentOf(cut, "any").why()).isNotBlank());
        assertThat(CATALOG.treatments().all())
                .allSatisfy(rule -> assertThat(CATALOG.cuts().all())
                        .as(rule.treatmentClass())
                        .anyMatch(cut -> cut.treatmentClass().equals(rule.treatmentClass())));
    }

    // USDA SR28: NDB 05062, 10218, 23230; README rule of the salt tables: D at 5 degrees 3.2, 2.8, 2.5e-10 m2/s
    @ParameterizedTest
    @CsvSource({
        "chicken-breast-skinless, 0.7390, 0.2250, 0.0262, 3.2e-10, 1.9",
        "pork-tenderloin, 0.7497, 0.2065, 0.0353, 2.8e-10, 1.9",
        "beef-ribeye-steak, 0.6302, 0.1926, 0.1671, 2.5e-10, 2.0"
    })
    void cutsCarryTheirPublishedFigures(
            String id, double water, double protein, double fat, double diffusivity, double spread) {
        Cut cut = CATALOG.cuts().get(id);
        assertThat(cut.composition().water()).isEqualTo(water, within(1e-12));
        assertThat(cut.composition().protein()).isEqualTo(protein, within(1e-12));
        assertThat(cut.composition().fat()).isEqualTo(fat, within(1e-12));
        assertThat(cut.saltDiffusivity().medianAt5C()).isEqualTo(diffusivity);
        assertThat(cut.saltDiffusivity().geometricStandardDeviation()).isEqualTo(spread);
    }

    // 5 and 95 % points as printed beside the medians: R01 9.74e-11 and 8.05e-10, R05 7.99e-11 and 7.82e-10
    @ParameterizedTest
    @CsvSource({"R01, 9.74e-11, 8.05e-10", "R02, 1.11e-10, 9.20e-10", "R05, 7.99e-11, 7.82e-10"})
    void spreadsGiveThePrintedBands(String id, double low, double high) {
        SaltDiffusivity d = CATALOG.diffusivities().stream()
                .filter(x -> x.id().equals(id))
                .findFirst()
                .orElseThrow();
        double energy = d.activationEnergy().typical();
        assertThat(d.at(Temperature.fromCelsius(5), -1.6449, energy)).isCloseTo(low, within(0.005 * low));
        assertThat(d.at(Temperature.fromCelsius(5), 1.6449, energy)).isCloseTo(high, within(0.005 * high));
        assertThat(d.medianAt(Temperature.fromCelsius(25)) / d.medianAt5C()).isCloseTo(1.786, within(0.001));
    }

    @Test
    void chopsAndSteaksGetNoThickerWithMassButRoastsDo() {
        CutSize chop = CATALOG.cuts().get("pork-loin-chop").size();
        assertThat(chop.thicknessAt(2 * chop.mass().typical())).isEqualTo(chop.thickness());
        CutSize roast = CATALOG.cuts().get("beef-round-roast").size();
        assertThat(roast.thicknessAt(8 * roast.mass().typical())).isCloseTo(2 * roast.thickness(), within(2e-4));
        assertThatThrownBy(() -> chop.thicknessAt(0)).hasMessageContaining("mass of the piece");
    }

    @ParameterizedTest
    @CsvSource({
        "Ribeye, beef-ribeye-steak",
        "chicken breast, chicken-breast-skinless",
        "whole turkey, turkey-whole",
        "Pork Chop, pork-loin-chop",
        "prime rib, beef-rib-roast"
    })
    void plainWordsFindCuts(String words, String id) {
        assertThat(CATALOG.findCut(words)).map(Cut::id).contains(id);
    }

    @ParameterizedTest
    @CsvSource({
        "chiken brest, chicken-breast",
        "turky, turkey",
        "beef rib eye stake, beef-ribeye-steak",
        "pork tenderlion, pork-tenderloin",
        "salmon filet, salmon-fillet"
    })
    void misspelledWordsFindNearCuts(String words, String start) {
        assertThat(CATALOG.findCut(words)).isEmpty();
        assertThat(CATALOG.nearestCuts(words, 3)).hasSize(3).extracting(Cut::id).anyMatch(id -> id.startsWith(start));
        assertThat(CATALOG.nearestCuts(words, 3).get(0).id()).startsWith(start);
    }

    @Test
    void anUnknownNameIsAnsweredWithTheNearest() {
        assertThatThrownBy(() -> CATALOG.appliances().get("ovn"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("appliance")
                .hasMessageContaining("\"ovn\"")
                .hasMessageContaining("oven-");
    }

    private static List<NamedTable<?>> tables() {
        return List.of(CATALOG.cuts(), CATALOG.salts(), CATALOG.liquids(), CATALOG.appliances(), CATALOG.measures());
    }

    private static List<CatalogEntry> entries() {
        return tables().stream()
                .flatMap(t -> Stream.<CatalogEntry>concat(Stream.empty(), t.all().stream()))
                .toList();
    }
}
