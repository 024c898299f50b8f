package io.github.saltfront.app.web;

import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

/** Serves the files of the page from the class path: plain names in one folder, so that no path can lead out of it. */
final class PageFiles {
    private static final Phrases PHRASES = Phrases.of(PageFiles.class);

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*\\.(html|css|js|json|svg|webmanifest)");
    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "json", "application/json; charset=utf-8",
            "svg", "image/svg+xml",
            "webmanifest", "application/manifest+json");

    /** What the worker of the pages names, and the word that stands for the version of all of it. */
    private static final String WORKER = "worker.js";

    private static final Pattern NAMED = Pattern.compile("\"/([a-z][a-z0-9-]*\\.[a-z]+)\"");
    private static final String VERSION = "@VERSION@";

    private final Map<String, PageFile> files = new ConcurrentHashMap<>();

    /** A file as it goes out; the arrays are never changed. */
    private static final class PageFile {
        private final String type;
        private final byte[] plain;
        private final byte[] packed;
        private final String tag;

        private PageFile(String type, byte[] plain) {
            this.type = type;
            this.plain = plain;
            packed = gzip(plain);
            tag = "\"" + hash(plain) + "\"";
        }
    }

    void first(Context context) {
        send(context, "index.html");
    }

    void named(Context context) {
        send(context, context.pathParam("file"));
    }

    private void send(Context context, String name) {
        PageFile file = find(name);
        if (file == null) {
            throw new Refused(404, "", PHRASES.say("there-is-no-such-page"));
        }
        context.header("ETag", file.tag);
        context.header("Vary", "Accept-Encoding");
        if (file.tag.equals(context.header("If-None-Match"))) {
            context.status(304);
            return;
        }
        context.contentType(file.type);
        boolean packs = Optional.ofNullable(context.header("Accept-Encoding"))
                .orElse("")
                .contains("gzip");
        if (packs) {
            context.header("Content-Encoding", "gzip");
        }
        context.result(packs ? file.packed : file.plain);
    }

    /** What is not there is not remembered: anybody can ask for a million names. */
    private @Nullable PageFile find(String name) {
        PageFile known = files.get(name);
        if (known != null || !NAME.matcher(name).matches()) {
            return known;
        }
        PageFile loaded = load(name);
        if (loaded != null) {
            files.put(name, loaded);
        }
        return loaded;
    }

    private static @Nullable PageFile load(String name) {
        String type = TYPES.get(name.substring(name.indexOf('.') + 1));
        byte[] content = content(name);
        return content.length == 0 || type == null ? null : new PageFile(type, content);
    }

    /** What goes out under a name; nothing if there is no such file. */
    static byte[] content(String name) {
        byte[] content = raw(name);
        return name.equals(WORKER) ? versioned(content) : content;
    }

    private static byte[] raw(String name) {
        try (@Nullable InputStream stream = PageFiles.class.getResourceAsStream("page/" + name)) {
            return stream == null ? new byte[0] : stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Other files make another worker, and so a browser learns of them. */
    private static byte[] versioned(byte[] worker) {
        String text = new String(worker, StandardCharsets.UTF_8);
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(worker);
        all.writeBytes(raw("index.html"));
        Matcher named = NAMED.matcher(text);
        while (named.find()) {
            all.writeBytes(raw(named.group(1)));
        }
        return text.replace(VERSION, hash(all.toByteArray())).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] gzip(byte[] plain) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream packing = new GZIPOutputStream(bytes)) {
            packing.write(plain);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static String hash(byte[] plain) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(plain), 0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
