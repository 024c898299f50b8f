package io.github.saltfront.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.QuantityParser;
import io.github.saltfront.units.SpoonSystem;
import java.util.MissingResourceException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LanguageTest {
    /** Wishes as RFC 9110, section 12.5.4, writes them. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    de                        | GERMAN
                    de-AT                     | GERMAN
                    de-DE,de;q=0.9,en;q=0.5   | GERMAN
                    en-GB,en;q=0.9,de;q=0.8   | ENGLISH
                    fr, de;q=0.4              | GERMAN
                    fr;q=0.9, en;q=0.2        | ENGLISH
                    de;q=0, en;q=0.1          | ENGLISH
                    fr                        | ENGLISH
                    *                         | ENGLISH
                    ;;=,q                     | ENGLISH
                    ''                        | ENGLISH
                    """)
    void theBestWishThatIsSpokenIsTaken(String ranges, Language expected) {
        assertThat(Language.preferred(ranges)).isEqualTo(expected);
    }

    @Test
    void itIsSpokenForTheTimeOfACallAndNoLonger() {
        assertThat(Language.spoken()).isEqualTo(Language.ENGLISH);
        String german = Language.GERMAN.speaking(Uncertainty.THICKNESS::words);
        assertThat(german).isEqualTo("Dicke des Stücks");
        assertThat(Uncertainty.THICKNESS.words()).isEqualTo("thickness of the piece");
        assertThatThrownBy(() -> Language.GERMAN.speaking(() -> {
                    throw new IllegalStateException();
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(Language.spoken()).isEqualTo(Language.ENGLISH);
    }

    @Test
    void workCarriesItToOtherThreadsAndLeavesNothingThere() {
        ExecutorService thread = Executors.newSingleThreadExecutor();
        try {
            CompletableFuture<Language> carried = Language.GERMAN.speaking(
                    () -> CompletableFuture.supplyAsync(Language::spoken, Language.carrying(thread)));
            assertThat(carried.join()).isEqualTo(Language.GERMAN);
            assertThat(CompletableFuture.supplyAsync(Language::spoken, thread).join())
                    .isEqualTo(Language.ENGLISH);
        } finally {
            thread.shutdown();
        }
    }

    @Test
    void figuresFollowIt() {
        assertThat(Phrases.figures("%.1f °C", 63.5)).isEqualTo("63.5 °C");
        assertThat(Language.GERMAN.speaking(() -> Phrases.figures("%.1f °C", 63.5)))
                .isEqualTo("63,5 °C");
        assertThat(Language.GERMAN.speaking(() -> QuantityFormat.mass(1.25, KitchenUnits.METRIC)))
                .isEqualTo("1,25 kg");
    }

    @Test
    void germanQuantitiesCanBeReadBack() {
        String spoons = Language.GERMAN.speaking(() -> QuantityFormat.spoons(5e-6, SpoonSystem.METRIC));
        assertThat(spoons).isEqualTo("1 TL");
        assertThat(QuantityParser.parse(spoons, io.github.saltfront.units.Dimension.VOLUME))
                .isEqualTo(5e-6);
        assertThat(QuantityParser.parse("1,25 kg", io.github.saltfront.units.Dimension.MASS))
                .isEqualTo(1.25);
    }

    /** Files name things by English names too, whatever is spoken. */
    @Test
    void theCatalogIsTranslatedAndKnowsItsEnglishNames() {
        Catalog german = Language.GERMAN.speaking(Catalog::load);
        assertThat(german.cuts().get("chicken-breast-skinless").name())
                .isEqualTo("Hähnchenbrust ohne Haut und Knochen");
        Catalog.load()
                .cuts()
                .all()
                .forEach(cut -> assertThat(german.findCut(cut.name()))
                        .as(cut.name())
                        .hasValueSatisfying(found -> assertThat(found.id()).isEqualTo(cut.id())));
        Catalog.load()
                .salts()
                .all()
                .forEach(
                        salt -> assertThat(german.salts().get(salt.name()).id()).isEqualTo(salt.id()));
        assertThat(Catalog.load().cuts().get("chicken-breast-skinless").name()).startsWith("Chicken breast");
    }

    @Test
    void wordsThatAreMissingAreAFault() {
        assertThatThrownBy(() -> Phrases.of(LanguageTest.class).say("nothing"))
                .isInstanceOf(MissingResourceException.class);
        assertThat(Phrases.of(Uncertainty.class).find("nothing")).isEmpty();
    }
}
