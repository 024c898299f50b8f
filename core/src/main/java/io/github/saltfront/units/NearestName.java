package io.github.saltfront.units;

import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Known names near to one that was not found, for "did you mean". Only ever a suggestion; nothing is decided by it.
 *
 * <p>Two names are as far apart as the share of letters to change (insert, delete, replace, or swap two neighbors: the
 * optimal string alignment form of the Damerau-Levenshtein distance), or less if one begins with the other or if they
 * share whole words. Names farther than {@link #LIMIT} are not suggested. Cost: the product of the lengths, by name.
 */
public final class NearestName {
    private static final Phrases PHRASES = Phrases.of(NearestName.class);

    /** Distance above which a name is no help [-]; half of the letters wrong is a different word. */
    public static final double LIMIT = 0.5;

    private static final double PREFIX_DISTANCE = 0.3;
    private static final double WORD_DISTANCE = 0.4;
    private static final int LONGEST = 80;

    private NearestName() {}

    /**
     * Returns the nearest known names, nearest first; ties by first letter, then by length, then in alphabetical order.
     *
     * @param got the name that was not found; only its first 80 characters count
     * @param known names that would have been found
     * @param count largest number of suggestions
     * @return at most {@code count} names, none if nothing is near
     */
    public static List<String> suggest(String got, Collection<String> known, int count) {
        String asked = normalize(got);
        List<Scored> scored = new ArrayList<>();
        for (String name : known) {
            double distance = distance(asked, normalize(name));
            if (distance <= LIMIT) {
                scored.add(new Scored(name, distance, unlikeness(asked, normalize(name))));
            }
        }
        scored.sort(Comparator.comparingDouble(Scored::distance)
                .thenComparingInt(Scored::unlikeness)
                .thenComparing(Scored::name));
        return scored.stream().limit(count).map(Scored::name).toList();
    }

    /**
     * Returns the suggestion as the end of a sentence.
     *
     * @param got the name that was not found
     * @param known names that would have been found
     * @return such as {@code ; did you mean "thickness"?}, or empty if nothing is near
     */
    public static String question(String got, Collection<String> known) {
        List<String> names = suggest(got, known, 2);
        return names.isEmpty() ? "" : PHRASES.say("did-you-mean", String.join("\" or \"", names));
    }

    private record Scored(String name, double distance, int unlikeness) {}

    /** Breaks ties: a first letter that differs is a rarer slip than any other, then a length that differs. */
    private static int unlikeness(String asked, String name) {
        boolean sameStart = !asked.isEmpty() && name.startsWith(asked.substring(0, 1));
        return (sameStart ? 0 : 2 * LONGEST) + Math.abs(asked.length() - name.length());
    }

    private static String normalize(String text) {
        String lower = text.substring(0, Math.min(text.length(), LONGEST)).toLowerCase(Locale.ROOT);
        return lower.replaceAll("[\\s_-]+", " ").strip();
    }

    private static double distance(String asked, String name) {
        if (asked.equals(name)) {
            return 0;
        }
        int longer = Math.max(asked.length(), name.length());
        double best = edits(asked, name) / (double) longer;
        boolean begins =
                asked.length() >= 2 && name.length() >= 2 && (name.startsWith(asked) || asked.startsWith(name));
        if (begins) {
            best = Math.min(best, PREFIX_DISTANCE);
        }
        if (shareWord(asked, name)) {
            best = Math.min(best, WORD_DISTANCE);
        }
        return best;
    }

    private static boolean shareWord(String asked, String name) {
        List<String> words = List.of(name.split(" ", -1));
        for (String word : asked.split(" ", -1)) {
            if (word.length() > 2 && words.contains(word)) {
                return true;
            }
        }
        return false;
    }

    private static int edits(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, i, j, d);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(String a, String b, int i, int j, int[][] d) {
        int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(replaced, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
