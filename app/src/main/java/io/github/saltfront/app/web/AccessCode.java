package io.github.saltfront.app.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * The code that opens the program to the kitchen's network. Whoever gives it gets a token for a cookie; wrong codes are slowed
 * down for each address and, more loosely, for all together.
 */
final class AccessCode {
    /** No letters that are taken for digits. */
    private static final String LETTERS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    private static final int LENGTH = 8;
    private static final int FREE_ATTEMPTS = 5;
    private static final int FREE_FOR_ALL = 50;
    private static final long FIRST_WAIT_MS = 5_000;
    private static final long LONGEST_WAIT_MS = 900_000;
    private static final int ADDRESSES = 1000;

    private final String code;
    private final String token;
    private final Map<String, Attempts> attempts = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Attempts> eldest) {
            return size() > ADDRESSES;
        }
    };
    private final Attempts all = new Attempts();

    /** Wrong codes so far, and until when no other is looked at. */
    private static final class Attempts {
        private int wrong;
        private long closedUntil;

        private void count(long now, int free) {
            wrong++;
            if (wrong >= free) {
                long wait = FIRST_WAIT_MS << Math.min(20, wrong - free);
                closedUntil = now + Math.min(LONGEST_WAIT_MS, wait);
            }
        }
    }

    AccessCode(SecureRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        code = text.toString();
        byte[] bytes = new byte[16];
        random.nextBytes(bytes);
        token = HexFormat.of().formatHex(bytes);
    }

    /** Returns the code. */
    String code() {
        return code;
    }

    /** Returns the token for those who gave the code. */
    String token() {
        return token;
    }

    boolean isToken(String given) {
        return same(token, given);
    }

    /**
     * Returns how long an address has to wait.
     *
     * @param address address of the network
     * @param now present time [ms]
     * @return time [ms]; 0 if a code will be looked at
     */
    synchronized long waitFor(String address, long now) {
        Attempts own = attempts.get(address);
        long until = Math.max(all.closedUntil, own == null ? 0 : own.closedUntil);
        return Math.max(0, until - now);
    }

    /**
     * Checks a code.
     *
     * @param address address of the network it came from
     * @param given the code; small letters, spaces and hyphens do not matter
     * @param now present time [ms]
     * @return whether it is right; false without a look while the address has to wait
     */
    synchronized boolean accepts(String address, String given, long now) {
        if (waitFor(address, now) > 0) {
            return false;
        }
        if (same(code, given.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT))) {
            attempts.remove(address);
            return true;
        }
        attempts.computeIfAbsent(address, a -> new Attempts()).count(now, FREE_ATTEMPTS);
        all.count(now, FREE_FOR_ALL);
        return false;
    }

    /** Takes the same time wherever the first difference is. */
    private static boolean same(String a, String b) {
        return MessageDigest.isEqual(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
    }
}
