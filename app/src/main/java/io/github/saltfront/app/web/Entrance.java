package io.github.saltfront.app.web;

import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;

/** The page that asks for the access code. */
final class Entrance {
    private static final Phrases PHRASES = Phrases.of(Entrance.class);

    private static final int LARGEST = 1000;

    private final AccessCode access;

    Entrance(AccessCode access) {
        this.access = access;
    }

    /** Shows the form, or takes the code from the address that the QR code holds. */
    void show(Context context) {
        String code = context.queryParam("code");
        if (code == null) {
            page(context, 200, "");
        } else {
            enter(context, code);
        }
    }

    /** Takes the code from the form. */
    void post(Context context) {
        String body = new String(Bodies.read(context, LARGEST), java.nio.charset.StandardCharsets.UTF_8);
        enter(context, body.startsWith("code=") ? decoded(body.substring(5)) : "");
    }

    private static String decoded(String text) {
        try {
            return java.net.URLDecoder.decode(text, java.nio.charset.StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    private void enter(Context context, String code) {
        String address = Optional.ofNullable(context.ip()).orElse("");
        long now = System.currentTimeMillis();
        long wait = access.waitFor(address, now);
        if (wait > 0) {
            long seconds = wait / 1000 + 1;
            context.header("Retry-After", String.valueOf(seconds));
            page(context, 429, PHRASES.say("there-were-too-many-wrong", seconds));
        } else if (access.accepts(address, code, now)) {
            Cookie cookie = new Cookie(Guard.COOKIE, access.token());
            cookie.setHttpOnly(true);
            cookie.setSameSite(SameSite.LAX);
            cookie.setPath("/");
            context.cookie(cookie);
            context.redirect("/");
        } else {
            page(context, 403, PHRASES.say("that-is-not-the-code"));
        }
    }

    private static void page(Context context, int status, String problem) {
        String message =
                problem.isEmpty() ? "" : "<p class=\"error\" id=\"code-error\" role=\"alert\">" + problem + "</p>";
        context.status(status);
        context.contentType("text/html; charset=utf-8");
        context.result("""
                <!doctype html>
                <html lang="%s">
                <meta charset="utf-8">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <title>Saltfront: %s</title>
                <link rel="icon" href="/icon.svg">
                <link rel="stylesheet" href="/style.css">
                <main class="entrance">
                <h1>Saltfront</h1>
                <p>%s</p>
                <form method="post" action="/enter">
                <label for="code">%s</label>
                <input id="code" name="code" autocomplete="off" autocapitalize="characters" spellcheck="false" required>
                %s
                <button class="main-button">%s</button>
                </form>
                </main>
                </html>
                """.formatted(
                        Language.spoken().tag(),
                        PHRASES.say("access-code"),
                        PHRASES.say("who"),
                        PHRASES.say("access-code"),
                        message,
                        PHRASES.say("open")));
    }
}
