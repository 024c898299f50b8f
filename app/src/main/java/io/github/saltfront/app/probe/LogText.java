package io.github.saltfront.app.probe;

import io.github.saltfront.words.Phrases;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Turns the bytes of a file into text: byte order marks, UTF-16 without one, old single-byte encodings. */
final class LogText {
    private static final Phrases PHRASES = Phrases.of(LogText.class);

    private LogText() {}

    static String decode(byte[] data) throws LogReadException {
        if (data.length == 0) {
            throw new LogReadException(List.of(new LogProblem(0, PHRASES.say("the-file-is-empty-export"))));
        }
        Charset wide = wideCharset(data);
        if (wide != null) {
            return withoutMark(new String(data, wide));
        }
        if (isBinary(data)) {
            throw new LogReadException(List.of(new LogProblem(0, PHRASES.say("this-is-not-a-text"))));
        }
        try {
            return withoutMark(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(data))
                    .toString());
        } catch (CharacterCodingException e) {
            // the degree sign of an old spreadsheet is one byte
            return new String(data, StandardCharsets.ISO_8859_1);
        }
    }

    private static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static @org.jspecify.annotations.Nullable Charset wideCharset(byte[] data) {
        if (data.length >= 2 && (data[0] & 0xFF) == 0xFF && (data[1] & 0xFF) == 0xFE) {
            return StandardCharsets.UTF_16LE;
        }
        if (data.length >= 2 && (data[0] & 0xFF) == 0xFE && (data[1] & 0xFF) == 0xFF) {
            return StandardCharsets.UTF_16BE;
        }
        int sample = Math.min(data.length, 400) & ~1;
        int even = 0;
        int odd = 0;
        for (int i = 0; i < sample; i += 2) {
            even += data[i] == 0 ? 1 : 0;
            odd += data[i + 1] == 0 ? 1 : 0;
        }
        if (sample >= 8 && even == 0 && odd > 0.4 * sample) {
            return StandardCharsets.UTF_16LE;
        }
        return sample >= 8 && odd == 0 && even > 0.4 * sample ? StandardCharsets.UTF_16BE : null;
    }

    /** Control characters other than NUL, line ends and tabs do not occur in text; NUL may pad a broken end. */
    private static boolean isBinary(byte[] data) {
        int sample = Math.min(data.length, 4096);
        int control = 0;
        int nul = 0;
        for (int i = 0; i < sample; i++) {
            if (data[i] == 0) {
                nul++;
            } else if (data[i] > 0 && data[i] < 32 && data[i] != '\n' && data[i] != '\r' && data[i] != '\t') {
                control++;
            }
        }
        return control > sample / 50 || nul == sample || (nul > 0 && control > 2);
    }
}
