package io.github.saltfront.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiscriminationTest {
    /**
     * Largest counts that let one say, at 95 %, that at most this share can tell: ISO 4120 Table A.2 rule, recomputed elsewhere with
     * the exact binomial (n = 36: 11, 13, 16, 18 for 20 to 50 %).
     */
    @ParameterizedTest
    @CsvSource({"30, 0.2, 9", "30, 0.3, 11", "36, 0.2, 11", "36, 0.3, 13", "36, 0.4, 16", "36, 0.5, 18", "60, 0.3, 25"})
    void noDifferenceShownLeavesTheLargestShareOfTheStandard(int n, double share, int most) {
        assertThat(new Discrimination(new Triangle(), most, n, 0.95).largestDiscriminators())
                .isLessThanOrEqualTo(share);
        assertThat(new Discrimination(new Triangle(), most + 1, n, 0.95).largestDiscriminators())
                .isGreaterThan(share);
    }

    @Test
    void chanceLeavesRoomForADifference() {
        Discrimination found = new Discrimination(new Triangle(), 8, 24, 0.95);
        assertThat(found.isDifferenceShown()).isFalse();
        assertThat(found.needed()).contains(13);
        assertThat(found.distance().value()).isZero();
        assertThat(found.largestDistance()).isBetween(1.2, 1.9);
    }

    @Test
    void allRightHasNoUpperEnd() {
        Discrimination found = new Discrimination(new ForcedChoice(2), 12, 12, 0.95);
        assertThat(found.distance().value()).isInfinite();
        assertThat(found.distance().high()).isInfinite();
        assertThat(found.distance().low()).isBetween(1.0, 3.0);
        assertThat(found.discriminators().high()).isEqualTo(1);
    }

    @Test
    void tooFewTastingsCanShowNothing() {
        Discrimination found = new Discrimination(new DuoTrio(), 4, 4, 0.95);
        assertThat(found.needed()).isEmpty();
        assertThat(found.isDifferenceShown()).isFalse();
    }

    @Test
    void preferenceSetsTheUndecidedAsideAndCountsBothTails() {
        // 1 against 11 of 12 decided: P = 0.006, course of the University of York, question on the sign test (read)
        Preference found = new Preference(11, 1, 8, 0.95);
        assertThat(found.probabilityIfEven()).isCloseTo(0.006, within(0.0005));
        assertThat(found.decided()).isEqualTo(12);
        assertThat(found.isPreferenceShown()).isTrue();
        assertThat(new Preference(5, 5, 0, 0.95).probabilityIfEven()).isEqualTo(1);
        assertThat(new Preference(38, 22, 0, 0.95).isPreferenceShown()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"-1, 5", "6, 5", "0, 0"})
    void countsOutOfRangeAreRefused(int right, int n) {
        assertThatThrownBy(() -> new Discrimination(new Triangle(), right, n, 0.95))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("got");
    }

    @Test
    void unknownMethodIsToldWhatThereIs() {
        assertThatThrownBy(() -> TastingMethod.get("tetrad")).hasMessageContaining("expected triangle, duo-trio");
        assertThat(TastingMethod.get("4-afc").guessRate()).isEqualTo(0.25);
        assertThatThrownBy(() -> new Triangle().proportionCorrect(Double.NaN)).hasMessageContaining("NaN");
    }

    @Test
    void yieldsAreComparedWithinBlocksWhereAllBlocksHaveBoth() {
        List<WeighedPiece> pieces = new ArrayList<>(List.of(
                new WeighedPiece("bird 1", "brined", 0.2, 0.17),
                new WeighedPiece("bird 1", "plain", 0.2, 0.15),
                new WeighedPiece("bird 2", "brined", 0.2, 0.16),
                new WeighedPiece("bird 2", "plain", 0.2, 0.15),
                new WeighedPiece("bird 3", "brined", 0.2, 0.15),
                new WeighedPiece("bird 3", "plain", 0.2, 0.136)));
        YieldComparison paired = YieldComparison.of(pieces, 0.95);
        assertThat(paired.yields().paired()).isTrue();
        assertThat(paired.yields().difference().value()).isCloseTo(0.0733333333, within(1e-9));
        pieces.add(new WeighedPiece("", "plain", 0.2, 0.14));
        assertThat(YieldComparison.of(pieces, 0.95).yields().paired()).isFalse();
        assertThatThrownBy(() -> new WeighedPiece("", "plain", 0.2, 0.5)).hasMessageContaining("between 0 and 2");
    }

    @Test
    void ratingsThatCannotBeComparedAreRefused() {
        assertThatThrownBy(() -> RatingsAnalysis.of(List.of(new Score("a", "x", 5), new Score("b", "y", 6)), 0.95))
                .hasMessageContaining("no taster scored two samples");
        List<Score> flat = new ArrayList<>();
        for (String taster : List.of("a", "b", "c")) {
            flat.add(new Score(taster, "x", 5));
            flat.add(new Score(taster, "y", 5));
        }
        assertThatThrownBy(() -> RatingsAnalysis.of(flat, 0.95)).hasMessageContaining("do not vary");
    }
}
