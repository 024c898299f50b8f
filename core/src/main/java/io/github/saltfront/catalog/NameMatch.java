package io.github.saltfront.catalog;

import java.util.Locale;

/** How far two names are apart, for suggestions. Not for decisions. */
final class NameMatch {
    /** Weight of words of the candidate that were not asked for; small, so that "ribeye" is near "beef ribeye steak". */
    private static final double UNASKED_WORD = 0.15;

    private NameMatch() {}

    /** Lower case, everything but letters and digits to single spaces. */
    static String normalize(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    /** 0 for the same words, about 1 for nothing in common. */
    static double distance(String asked, String candidate) {
        String[] left = normalize(asked).split(" ");
        String[] right = normalize(candidate).split(" ");
        return meanDistance(left, right) + UNASKED_WORD * meanDistance(right, left);
    }

    private static double meanDistance(String[] from, String[] to) {
        double sum = 0;
        for (String word : from) {
            double best = 1;
            for (String other : to) {
                best = Math.min(best, wordDistance(word, other));
            }
            sum += best;
        }
        return sum / from.length;
    }

    private static double wordDistance(String a, String b) {
        int longer = Math.max(a.length(), b.length());
        return longer == 0 ? 0 : Math.min(1, edits(a, b) / (double) longer);
    }

    /** Edit distance with swaps of neighbors counted once (optimal string alignment). */
    static int edits(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + same, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
