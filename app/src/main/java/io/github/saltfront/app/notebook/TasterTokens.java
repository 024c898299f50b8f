package io.github.saltfront.app.notebook;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;

/** Words that open the sheet of one taster: 79 bits each, so that nobody finds another taster's sheet by trying. */
public final class TasterTokens {
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int LENGTH = 16;
    private static final SecureRandom RANDOM = new SecureRandom();

    private TasterTokens() {}

    /**
     * Draws new ones.
     *
     * @param count how many
     * @return the words, in order of the tasters
     */
    public static List<String> draw(int count) {
        List<String> tokens = new ArrayList<>();
        for (int taster = 0; taster < count; taster++) {
            StringBuilder token = new StringBuilder();
            for (int i = 0; i < LENGTH; i++) {
                token.append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
            }
            tokens.add(token.toString());
        }
        return tokens;
    }
}
