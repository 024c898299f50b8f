package io.github.saltfront.app.web;

import io.github.saltfront.words.Language;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Optional;

/** The language a request is answered in: that of its parameter {@code language}, else what its header Accept-Language likes best. */
final class RequestLanguage {
    private static final String PARAMETER = "language";

    private RequestLanguage() {}

    static Language of(Context context) {
        return Optional.ofNullable(context.queryParam(PARAMETER))
                .flatMap(Language::find)
                .orElseGet(() -> Language.preferred(
                        Optional.ofNullable(context.header("Accept-Language")).orElse("")));
    }

    /** The same handler, answering in the language of the request. */
    static Handler spoken(Handler handler) {
        return context -> {
            Language language = of(context);
            context.header("Content-Language", language.tag());
            context.header("Vary", "Accept-Language");
            try (Language.Scope scope = language.begin()) {
                handler.handle(context);
            }
        };
    }
}
