package io.github.saltfront.app.web;

import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URI;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Looks at every request before it is answered: its host, where it comes from and, in a network, whether it may come in. */
final class Guard {
    private static final Phrases PHRASES = Phrases.of(Guard.class);

    static final String COOKIE = "saltfront_access";
    static final String ENTRANCE = "/enter";

    /** What the entrance itself needs, and the page of a taster, whose token is the key to one sheet. */
    private static final Set<String> OPEN = Set.of(
            ENTRANCE,
            "/style.css",
            "/icon.svg",
            TastingApi.PAGE,
            "/tasting.js",
            "/dom.js",
            "/notebook.css",
            "/say.js",
            "/entries.js",
            "/words-en.json",
            "/words-de.json");

    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self';"
                    + " manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            "X-Frame-Options",
            "DENY",
            "Referrer-Policy",
            "no-referrer",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Permissions-Policy",
            "camera=(), geolocation=(), microphone=()");

    private final Set<String> hosts;
    private final Optional<AccessCode> access;

    Guard(Set<String> hosts, Optional<AccessCode> access) {
        this.hosts = hosts;
        this.access = access;
    }

    void check(Context context) {
        HEADERS.forEach(context::header);
        context.header("Cache-Control", "no-cache");
        checkHost(context);
        boolean reads = context.method() == HandlerType.GET || context.method() == HandlerType.HEAD;
        if (!reads) {
            checkOrigin(context);
        }
        checkAccess(context);
    }

    private void checkHost(Context context) {
        String host = Optional.ofNullable(context.host()).orElse("");
        String name = host.replaceFirst(":\\d+$", "").toLowerCase(Locale.ROOT);
        if (!hosts.contains(name)) {
            throw new Refused(403, "", PHRASES.say("this-server-does-not-answer"));
        }
    }

    private void checkOrigin(Context context) {
        String origin = context.header("Origin");
        boolean foreign = origin != null && !isOwn(origin, String.valueOf(context.host()));
        String site = context.header("Sec-Fetch-Site");
        boolean crossed = site != null && !site.equals("same-origin") && !site.equals("none");
        if (foreign || crossed) {
            throw new Refused(403, "", PHRASES.say("this-request-comes-from-a"));
        }
    }

    private static boolean isOwn(String origin, String host) {
        try {
            URI uri = URI.create(origin);
            return "http".equals(uri.getScheme()) && host.equalsIgnoreCase(uri.getRawAuthority());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private void checkAccess(Context context) {
        if (access.isEmpty() || OPEN.contains(context.path()) || context.path().startsWith(TastingApi.OPEN)) {
            return;
        }
        String token = context.cookie(COOKIE);
        if (token != null && access.get().isToken(token)) {
            return;
        }
        if (context.path().equals("/") && context.method() == HandlerType.GET) {
            context.redirect(ENTRANCE);
            context.skipRemainingHandlers();
            return;
        }
        throw new Refused(401, "", PHRASES.say("this-program-asks-for-its"));
    }
}
