package io.github.saltfront.app.follow;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.app.export.OutlookJson;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.words.Phrases;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is said when a cook is over, beside what was expected of it. */
final class CookEnding {
    private static final Phrases PHRASES = Phrases.of(CookEnding.class);

    private static final Map<String, String> SALT = words("too-mild", "just-right", "too-salty");
    private static final Map<String, String> JUICE = words("dry", "juicy", "very-juicy");
    private static final Map<String, String> DONENESS = words("underdone", "just-right", "overdone");

    private CookEnding() {}

    private static Map<String, String> words(String... words) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String word : words) {
            map.put(word, word);
        }
        return map;
    }

    static Map<String, Object> read(byte[] body, Optional<Outlook> outlook) {
        Document document = DocumentReader.read("ending", body, DocumentFormat.JSON);
        Node root = document.root();
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("kind", RunningCook.ENDING);
        OptionalDouble raw = root.findQuantityInRange("weight_before", Dimension.MASS, "1 g", "60 kg");
        OptionalDouble cooked = root.findQuantityInRange("weight_after", Dimension.MASS, "1 g", "60 kg");
        raw.ifPresent(mass -> content.put("weight_before_g", 1000 * mass));
        cooked.ifPresent(mass -> content.put("weight_after_g", 1000 * mass));
        root.findChoice("salt", SALT).ifPresent(word -> content.put("salt", word));
        root.findChoice("juice", JUICE).ifPresent(word -> content.put("juice", word));
        root.findChoice("doneness", DONENESS).ifPresent(word -> content.put("doneness", word));
        root.findParsed("note", PHRASES.say("a-few-words"), ToldEvent::note)
                .ifPresent(text -> content.put("note", text));
        if (raw.isPresent() && cooked.isPresent() && !(cooked.getAsDouble() <= 1.2 * raw.getAsDouble())) {
            root.problem("weight_after", PHRASES.say("the-piece-weighs-more-after"));
        }
        document.requireNoErrors();
        if (raw.isPresent() && cooked.isPresent()) {
            content.put("mass_loss_pct", 100 * (1 - cooked.getAsDouble() / raw.getAsDouble()));
        }
        outlook.ifPresent(last -> {
            content.put("time_s", last.time());
            content.put("outlook", OutlookJson.outlook(last));
        });
        return content;
    }
}
