package io.github.saltfront.words;

import java.text.DecimalFormatSymbols;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The words of one class. They stand in {@code words.properties} beside it, English, and in {@code words_de.properties}; a key is
 * the name of the class, a dot, and what is said. Values are put in as by {@link java.util.Formatter}, with figures as the language
 * writes them; {@code %} itself is written {@code %%}.
 */
public final class Phrases {
    private static final Map<Language, Map<String, ResourceBundle>> BUNDLES = new ConcurrentHashMap<>();

    private final Class<?> user;
    private final String bundle;
    private final String prefix;

    private Phrases(Class<?> user) {
        this.user = user;
        bundle = user.getPackageName() + ".words";
        prefix = user.getSimpleName() + ".";
    }

    /**
     * Finds the words of a class.
     *
     * @param user the class that says them
     * @return its words
     */
    public static Phrases of(Class<?> user) {
        return new Phrases(user);
    }

    /**
     * Says something in the language that is spoken.
     *
     * @param key what, without the name of the class
     * @param values what to put in
     * @return the words
     * @throws MissingResourceException if there are no such words
     */
    public String say(String key, @Nullable Object... values) {
        Language language = Language.spoken();
        return String.format(language.locale(), bundle(language).getString(prefix + key), values);
    }

    /**
     * Says something if there are words for it in the language that is spoken.
     *
     * @param key what, without the name of the class
     * @return the words, as they stand
     */
    public Optional<String> find(String key) {
        ResourceBundle words = bundle(Language.spoken());
        return words.containsKey(prefix + key) ? Optional.of(words.getString(prefix + key)) : Optional.empty();
    }

    private ResourceBundle bundle(Language language) {
        return BUNDLES.computeIfAbsent(language, l -> new ConcurrentHashMap<>())
                .computeIfAbsent(bundle, name -> load(name, language));
    }

    private ResourceBundle load(String name, Language language) {
        // never the language of the computer in between
        Locale locale = language == Language.ENGLISH ? Locale.ROOT : language.locale();
        ClassLoader loader = Optional.ofNullable(user.getClassLoader()).orElseGet(ClassLoader::getSystemClassLoader);
        return ResourceBundle.getBundle(
                name,
                locale,
                loader,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /**
     * Writes figures as the language that is spoken does.
     *
     * @param format a format that needs no words, such as {@code %.1f °C}
     * @param values the figures
     * @return the text
     */
    public static String figures(String format, @Nullable Object... values) {
        return String.format(Language.spoken().locale(), format, values);
    }

    /**
     * Writes days and hours as the language that is spoken does.
     *
     * @param pattern as of {@link DateTimeFormatter}, such as {@code EEE HH:mm}
     * @param time the time
     * @return the text
     */
    public static String time(String pattern, TemporalAccessor time) {
        return DateTimeFormatter.ofPattern(pattern, Language.spoken().locale()).format(time);
    }

    /**
     * Writes a decimal number as the language that is spoken does.
     *
     * @param plain digits with at most one point, without grouping
     * @return the same with the sign of the language
     */
    public static String decimal(String plain) {
        char sign = DecimalFormatSymbols.getInstance(Language.spoken().locale()).getDecimalSeparator();
        return plain.replace('.', sign);
    }

    /**
     * A name as it stands within a sentence: English writes it small, German as it is.
     *
     * @param name the name
     * @return the name within a sentence
     */
    public static String within(String name) {
        return Language.spoken() == Language.ENGLISH ? name.toLowerCase(Locale.ROOT) : name;
    }
}
