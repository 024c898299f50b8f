package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How much more of its mass one treatment keeps than another. Where every block holds pieces of both, blocks are compared with
 * themselves (paired), since pieces of one animal or package resemble each other; else the two groups are (Welch).
 *
 * @param first first treatment, in order of appearance
 * @param second second treatment
 * @param yields their mean yields and the difference, first less second [kg/kg]
 */
public record YieldComparison(String first, String second, MeanDifference yields) {
    /**
     * Compares two treatments.
     *
     * @param pieces pieces of exactly two treatments
     * @param level level of the interval [-], 0.5 to 0.9999
     * @return the comparison
     * @throws IllegalArgumentException if there are not two treatments or too few pieces
     */
    public static YieldComparison of(List<WeighedPiece> pieces, double level) {
        List<String> treatments =
                pieces.stream().map(WeighedPiece::treatment).distinct().toList();
        Checks.require(
                treatments.size() == 2,
                "a comparison of yields needs exactly two treatments, got " + treatments + "; compare two at a time.");
        String first = treatments.get(0);
        String second = treatments.get(1);
        Map<String, double[]> means = blockMeans(pieces, first);
        boolean paired = means.size() >= 2
                && !means.containsKey("")
                && means.values().stream().noneMatch(m -> Double.isNaN(m[0]) || Double.isNaN(m[1]));
        MeanDifference yields = paired
                ? MeanDifference.paired(column(means, 0), column(means, 1), level)
                : MeanDifference.welch(yields(pieces, first), yields(pieces, second), level);
        return new YieldComparison(first, second, yields);
    }

    private static Map<String, double[]> blockMeans(List<WeighedPiece> pieces, String first) {
        Map<String, double[]> sums = new LinkedHashMap<>();
        for (WeighedPiece piece : pieces) {
            double[] sum = sums.computeIfAbsent(piece.block(), b -> new double[4]);
            int at = piece.treatment().equals(first) ? 0 : 1;
            sum[at] += piece.yield();
            sum[at + 2]++;
        }
        sums.replaceAll((block, sum) -> new double[] {sum[0] / sum[2], sum[1] / sum[3]});
        return sums;
    }

    private static double[] column(Map<String, double[]> means, int at) {
        return means.values().stream().mapToDouble(m -> m[at]).toArray();
    }

    private static double[] yields(List<WeighedPiece> pieces, String treatment) {
        return pieces.stream()
                .filter(p -> p.treatment().equals(treatment))
                .mapToDouble(WeighedPiece::yield)
                .toArray();
    }
}
