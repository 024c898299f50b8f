package io.github.saltfront.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * A language the program speaks. Which one is spoken belongs to whoever asks, not to what is computed: it is bound for the time of a
 * call, in the thread of the call and in those its work is carried to, and otherwise it is English.
 */
public enum Language {
    /** English; figures with a point. */
    ENGLISH(Locale.ENGLISH),
    /** German; figures with a comma. */
    GERMAN(Locale.GERMAN);

    private static final ThreadLocal<Language> SPOKEN = ThreadLocal.withInitial(() -> ENGLISH);

    private final Locale locale;

    Language(Locale locale) {
        this.locale = locale;
    }

    /** Returns the locale of its figures, days and months. */
    public Locale locale() {
        return locale;
    }

    /** Returns its tag after BCP 47, such as {@code de}. */
    public String tag() {
        return locale.toLanguageTag();
    }

    /** Returns the language of the present call. */
    public static Language spoken() {
        return SPOKEN.get();
    }

    /** Returns the tags of all languages, English first. */
    public static List<String> tags() {
        return Arrays.stream(values()).map(Language::tag).toList();
    }

    /**
     * Finds a language by its tag.
     *
     * @param tag a tag such as {@code de} or {@code de-AT}
     * @return the language, if it is spoken here
     */
    public static Optional<Language> find(String tag) {
        String wanted = Locale.forLanguageTag(tag.strip()).getLanguage();
        return Arrays.stream(values())
                .filter(language -> language.locale.getLanguage().equals(wanted))
                .findFirst();
    }

    /**
     * Chooses the language a list of wishes likes best.
     *
     * @param ranges wishes as in the header Accept-Language of RFC 9110, such as {@code de-DE,de;q=0.9,en;q=0.5}
     * @return the first that is spoken here, English if none is or the list cannot be read
     */
    public static Language preferred(String ranges) {
        List<Locale> all = Arrays.stream(values()).map(Language::locale).collect(Collectors.toList());
        try {
            Optional<Locale> best = Locale.LanguageRange.parse(ranges).stream()
                    .filter(range -> range.getWeight() > 0)
                    .map(range -> Locale.lookup(List.of(range), all))
                    .flatMap(found -> Optional.ofNullable(found).stream())
                    .findFirst();
            return best.flatMap(found -> find(found.toLanguageTag())).orElse(ENGLISH);
        } catch (IllegalArgumentException e) {
            return ENGLISH;
        }
    }

    /** The time in which a language is spoken in a thread; closing it goes back to the one before. */
    public static final class Scope implements AutoCloseable {
        private final Language before;

        private Scope(Language before) {
            this.before = before;
        }

        @Override
        public void close() {
            SPOKEN.set(before);
        }
    }

    /**
     * Speaks this language in the present thread from now on.
     *
     * @return what to close when it is over
     */
    public Scope begin() {
        Scope scope = new Scope(SPOKEN.get());
        SPOKEN.set(this);
        return scope;
    }

    /**
     * Does something in this language.
     *
     * @param work what to do
     * @param <T> what it returns
     * @return what it returns
     */
    public <T> T speaking(Supplier<T> work) {
        try (Scope scope = begin()) {
            return work.get();
        }
    }

    /**
     * Carries the language of whoever hands over a task to the thread that does it.
     *
     * @param executor where tasks are done
     * @return the same, in the language of the present call of {@code execute}
     */
    public static Executor carrying(Executor executor) {
        return task -> {
            Language language = spoken();
            executor.execute(() -> {
                try (Scope scope = language.begin()) {
                    task.run();
                }
            });
        };
    }
}
