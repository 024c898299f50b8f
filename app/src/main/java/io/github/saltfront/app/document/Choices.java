package io.github.saltfront.app.document;

import io.github.saltfront.units.NearestName;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Picks one of several words. */
final class Choices {
    private static final Phrases PHRASES = Phrases.of(Choices.class);

    private static final int SHOWN = 12;

    private Choices() {}

    static <E extends Enum<E>> Map<String, E> of(Class<E> type) {
        Map<String, E> choices = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            choices.put(plain(constant.name()), constant);
        }
        return choices;
    }

    static <T> T first(Map<String, T> choices) {
        return choices.values().iterator().next();
    }

    static String words(Map<String, ?> choices) {
        List<String> names = new ArrayList<>(choices.keySet());
        if (names.size() > SHOWN) {
            return PHRASES.say("one-of-names-such-as", names.size(), String.join(", ", names.subList(0, SHOWN)));
        }
        return names.size() == 1 ? names.get(0) : PHRASES.say("one-of", String.join(", ", names));
    }

    static <T> T pick(String text, Map<String, T> choices) {
        for (Map.Entry<String, T> choice : choices.entrySet()) {
            if (plain(choice.getKey()).equals(plain(text))) {
                return choice.getValue();
            }
        }
        String question = NearestName.question(text, choices.keySet());
        throw new IllegalArgumentException(PHRASES.say(
                "got-expected",
                Wording.clipped(text),
                words(choices),
                (question.isEmpty() ? PHRASES.say("choose-one-of-them") : question)));
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
    }
}
