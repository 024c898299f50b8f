package io.github.saltfront.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ServingOrdersTest {
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8, 9, 10})
    void everySampleComesEquallyOftenInEveryPlaceAndAfterEveryOther(int t) {
        List<List<Integer>> orders = ServingOrders.williams(t);
        assertThat(orders).hasSize(t % 2 == 0 ? t : 2 * t);
        int[][] places = new int[t][t];
        int[][] after = new int[t][t];
        for (List<Integer> order : orders) {
            for (int i = 0; i < t; i++) {
                places[order.get(i)][i]++;
                if (i > 0) {
                    after[order.get(i)][order.get(i - 1)]++;
                }
            }
        }
        int each = t % 2 == 0 ? 1 : 2;
        for (int a = 0; a < t; a++) {
            for (int b = 0; b < t; b++) {
                assertThat(places[a][b]).isEqualTo(each);
                assertThat(after[a][b]).isEqualTo(a == b ? 0 : each);
            }
        }
    }

    /** Williams 1949 (from memory) for four samples: ABDC BCAD CDBA DACB. */
    @Test
    void designOfFourIsThePublishedOne() {
        assertThat(ServingOrders.williams(4).stream()
                        .map(o -> String.join(
                                "",
                                o.stream().map(s -> "ABCD".substring(s, s + 1)).toList())))
                .containsExactly("ABDC", "BCAD", "CDBA", "DACB");
    }

    @Test
    void theRightAnswerIsTheOddTheMatchingOrTheStrongerOne() {
        Triangle triangle = new Triangle();
        Set<List<Integer>> seen = new HashSet<>(triangle.orders());
        assertThat(seen).hasSize(6);
        for (List<Integer> order : triangle.orders()) {
            int odd = order.get(triangle.rightPlace(order));
            assertThat(order.stream().filter(s -> s == odd)).hasSize(1);
        }
        DuoTrio duoTrio = new DuoTrio();
        for (List<Integer> order : duoTrio.orders()) {
            assertThat(order.get(duoTrio.rightPlace(order))).isEqualTo(order.get(0));
            assertThat(order.get(1)).isNotEqualTo(order.get(2));
        }
        ForcedChoice three = new ForcedChoice(3);
        assertThat(three.orders().stream().map(three::rightPlace)).containsExactly(0, 1, 2);
    }

    @Test
    void tooLittleMeatIsToldWithTheNumberOfPiecesThatWouldDo() {
        TrialRequest request = new TrialRequest(
                new RightWrongProtocol(new Triangle(), ""),
                List.of("plain", "brined"),
                List.of(new Piece("1", ""), new Piece("2", "")),
                8,
                12,
                1,
                1);
        assertThatThrownBy(() -> TrialDesign.draw(request))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(
                        "needs 18 portions of \"plain\", got pieces for 8; take 3 pieces for each sample");
    }

    @Test
    void platesWithOneOfEachComeFromOneBirdAndOddPlatesFromDifferentOnes() {
        List<Piece> pieces = List.of(
                new Piece("1 left", "bird 1"),
                new Piece("1 right", "bird 1"),
                new Piece("2 left", "bird 2"),
                new Piece("2 right", "bird 2"),
                new Piece("3 left", "bird 3"),
                new Piece("3 right", "bird 3"));
        TrialDesign pairs =
                TrialDesign.draw(new TrialRequest(new PreferenceProtocol(), List.of("a", "b"), pieces, 6, 18, 1, 7));
        assertThat(pairs.sheets())
                .allMatch(s -> s.servings().get(0).piece().charAt(0)
                        == s.servings().get(1).piece().charAt(0));
        TrialDesign triangles = TrialDesign.draw(
                new TrialRequest(new RightWrongProtocol(new Triangle(), ""), List.of("a", "b"), pieces, 9, 12, 1, 7));
        assertThat(triangles.sheets())
                .allMatch(s -> s.servings().stream()
                                .map(v -> v.piece().charAt(0))
                                .distinct()
                                .count()
                        == 3);
        assertThat(triangles.tastersToBalance()).isZero();
        assertThat(triangles.orderCounts().values()).containsOnly(2);
    }
}
