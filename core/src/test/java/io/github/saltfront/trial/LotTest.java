package io.github.saltfront.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The lot over 10 000 draws: no piece, order or code is favored, and no code comes twice in a trial. */
class LotTest {
    private static final int DRAWS = 10_000;

    /** Six standard deviations of a share of one half in 10 000 draws; a fair lot passes it in all but one of 500 million. */
    private static final double FAIR = 6 * Math.sqrt(0.25 / DRAWS);

    private static List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (int block = 1; block <= 3; block++) {
            for (int i = 1; i <= 3; i++) {
                pieces.add(new Piece("animal " + block + " no. " + i, "animal " + block));
            }
        }
        return pieces;
    }

    /** Nine pieces of three animals, two treatments: four and five in all, one and two within each animal. */
    @Test
    void piecesAreSharedOutFairly() {
        List<Piece> pieces = pieces();
        int[] treated = new int[9];
        int unbalanced = 0;
        for (int seed = 0; seed < DRAWS; seed++) {
            List<Allocation.Assignment> assignments =
                    Allocation.draw(pieces, 2, seed).assignments();
            int inAll = 0;
            for (int block = 0; block < 3; block++) {
                int inBlock = 0;
                for (int i = 3 * block; i < 3 * block + 3; i++) {
                    treated[i] += assignments.get(i).treatment();
                    inBlock += assignments.get(i).treatment();
                }
                inAll += inBlock;
                unbalanced += inBlock == 1 || inBlock == 2 ? 0 : 1;
            }
            unbalanced += inAll == 4 || inAll == 5 ? 0 : 1;
        }
        assertThat(unbalanced).isZero();
        requireFair(treated);
    }

    @Test
    void placesOnThePlateAreSharedOutFairly() {
        List<List<Integer>> orders = new PreferenceProtocol().orders(2);
        int[] first = new int[6];
        int unbalanced = 0;
        for (int seed = 0; seed < DRAWS; seed++) {
            int sum = 0;
            List<List<Integer>> drawn = ServingOrders.assign(orders, 6, new SplittableRandom(seed));
            for (int taster = 0; taster < 6; taster++) {
                int sample = drawn.get(taster).get(0);
                first[taster] += sample;
                sum += sample;
            }
            unbalanced += sum == 3 ? 0 : 1;
        }
        assertThat(unbalanced).as("both orders equally often").isZero();
        requireFair(first);
    }

    private static void requireFair(int[] counts) {
        for (int count : counts) {
            assertThat(count / (double) DRAWS).isBetween(0.5 - FAIR, 0.5 + FAIR);
        }
    }

    @Test
    void noCodeComesTwiceInATrial() {
        int repeated = 0;
        for (int seed = 0; seed < 500; seed++) {
            Set<String> seen = new HashSet<>();
            for (List<String> sheet : SampleCodes.draw(12, 3, seed)) {
                for (String code : sheet) {
                    repeated += seen.add(code) ? 0 : 1;
                }
            }
        }
        assertThat(repeated).isZero();
    }
}
