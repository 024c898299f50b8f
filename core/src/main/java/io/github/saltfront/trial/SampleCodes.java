package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Three-digit codes that say nothing about the sample. No code comes twice in a trial. Left out are codes that begin with 0,
 * repeat a digit, run like 345, or read as a number upside down. On one sheet any two codes differ in at least two places and are
 * not made of the same digits, and for this 1 and 7, 3 and 8, and 0, 6 and 9 count as alike, since hurried hands write them so
 * (our rule; three random digits are common practice).
 */
public final class SampleCodes {
    private static final Phrases PHRASES = Phrases.of(SampleCodes.class);

    /** Most codes of one trial; beyond it the sheets would run out of codes that are clearly different. */
    public static final int MOST = 480;

    private static final String[] LOOKALIKE = {"6", "1", "2", "3", "4", "5", "6", "1", "3", "6"};

    private SampleCodes() {}

    /**
     * Draws codes.
     *
     * @param sheets number of sheets, at least 1
     * @param perSheet codes on each sheet, 1 to 10; all sheets together at most {@link #MOST}
     * @param seed seed; the same one gives the same codes
     * @return codes sheet by sheet
     * @throws IllegalArgumentException if more are asked for
     */
    public static List<List<String>> draw(int sheets, int perSheet, long seed) {
        Checks.require(sheets >= 1 && perSheet >= 1 && perSheet <= 10, "codes need sheets with 1 to 10 samples.");
        Checks.require(
                (long) sheets * perSheet <= MOST,
                "a trial can have " + MOST + " codes, got " + sheets + " sheets of " + perSheet
                        + "; split it into two sessions.");
        List<String> pool = Shuffle.of(pool(), new SplittableRandom(seed));
        List<List<String>> drawn = new ArrayList<>();
        for (int sheet = 0; sheet < sheets; sheet++) {
            List<String> codes = new ArrayList<>();
            for (int i = 0; i < perSheet; i++) {
                codes.add(take(pool, codes));
            }
            drawn.add(List.copyOf(codes));
        }
        return List.copyOf(drawn);
    }

    private static String take(List<String> pool, List<String> sheet) {
        for (int i = 0; i < pool.size(); i++) {
            String code = pool.get(i);
            if (sheet.stream().allMatch(other -> isClearlyDifferent(code, other))) {
                pool.remove(i);
                return code;
            }
        }
        throw new IllegalArgumentException(PHRASES.say("no-clearly-different-code-is"));
    }

    /**
     * Tells whether two codes can stand on one sheet.
     *
     * @param code three digits
     * @param other three digits
     * @return true if they differ in two places or more and in their digits, lookalikes counted as equal
     */
    static boolean isClearlyDifferent(String code, String other) {
        String a = folded(code);
        String b = folded(other);
        int differing = 0;
        for (int i = 0; i < a.length(); i++) {
            differing += a.charAt(i) == b.charAt(i) ? 0 : 1;
        }
        char[] sortedA = a.toCharArray();
        char[] sortedB = b.toCharArray();
        Arrays.sort(sortedA);
        Arrays.sort(sortedB);
        return differing >= 2 && !Arrays.equals(sortedA, sortedB);
    }

    private static String folded(String code) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < code.length(); i++) {
            text.append(LOOKALIKE[code.charAt(i) - '0']);
        }
        return text.toString();
    }

    private static List<String> pool() {
        List<String> pool = new ArrayList<>();
        for (int number = 100; number <= 999; number++) {
            String code = Integer.toString(number);
            if (isUsable(code)) {
                pool.add(code);
            }
        }
        return pool;
    }

    private static boolean isUsable(String code) {
        int step = code.charAt(1) - code.charAt(0);
        boolean run = Math.abs(step) == 1 && code.charAt(2) - code.charAt(1) == step;
        return code.chars().distinct().count() == code.length() && !run && !code.matches("[01689]{3}");
    }
}
