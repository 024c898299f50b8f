package io.github.saltfront.app.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

/** Serves the files of the page from the class path: plain names in one folder, so that no path can lead out of it. */
final class PageFiles {
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*\\.(html|css|js|svg|webmanifest)");
    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "webmanifest", "application/manifest+json");

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
            throw new Refused(404, "", "There is no such page; go to the first page.");
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
        try (@Nullable InputStream stream = PageFiles.class.getResourceAsStream("page/" + name)) {
            String type = TYPES.get(name.substring(name.indexOf('.') + 1));
            return stream == null || type == null ? null : new PageFile(type, stream.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
