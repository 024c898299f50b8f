package io.github.saltfront.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
    private static final List<String> KNOWN = List.of(
            "thickness", "mass", "start_temperature", "stages", "solver", "medium", "coefficient", "at_most", "salt");

    @ParameterizedTest
    @CsvSource({
        "thikness, thickness",
        "thicknes, thickness",
        "Thickness, thickness",
        "htickness, thickness",
        "temperature, start_temperature",
        "start-temperature, start_temperature",
        "startTemperature, start_temperature",
        "stage, stages",
        "coeff, coefficient",
        "atmost, at_most",
        "slat, salt",
    })
    void nearestComesFirst(String got, String expected) {
        assertThat(NearestName.suggest(got, KNOWN, 3)).first().isEqualTo(expected);
    }

    @Test
    void nothingNearGivesNothing() {
        assertThat(NearestName.suggest("zzzz", KNOWN, 3)).isEmpty();
        assertThat(NearestName.suggest("", KNOWN, 3)).isEmpty();
        assertThat(NearestName.suggest("mass", List.of(), 3)).isEmpty();
        assertThat(NearestName.question("zzzz", KNOWN)).isEmpty();
    }

    @Test
    void givesAtMostTheCountAskedFor() {
        assertThat(NearestName.suggest("aa", List.of("ab", "ac", "ad"), 2)).containsExactly("ab", "ac");
    }

    /** Swap of neighbors is one edit: "ca" to "ac" is nearer than "ca" to "xy" and as near as one replaced letter. */
    @Test
    void swappedNeighborsCountOnce() {
        assertThat(NearestName.suggest("form", List.of("from", "farms"), 1)).containsExactly("from");
    }

    @Test
    void longTextIsCut() {
        assertThat(NearestName.suggest("x".repeat(1_000_000), KNOWN, 3)).isEmpty();
    }

    @Test
    void questionEndsASentence() {
        assertThat(NearestName.question("thikness", KNOWN)).isEqualTo("; did you mean \"thickness\"?");
    }
}
