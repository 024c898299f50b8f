package io.github.saltfront.app.document;

import io.github.saltfront.words.Phrases;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** Reads a request file whole, refusing what cannot be one before it is parsed. */
public final class DocumentReader {
    private static final Phrases PHRASES = Phrases.of(DocumentReader.class);

    /** Largest file [byte]; requests take about a thousand. */
    public static final int LARGEST = 1_000_000;

    private final ProblemLog problems;

    private DocumentReader(String name) {
        this.problems = new ProblemLog(name);
    }

    /**
     * Reads a file. The end of its name says the format: {@code .yaml}, {@code .yml} or {@code .json}.
     *
     * @param file the file
     * @return its contents, to be asked for values
     * @throws DocumentException if it is missing, is no text in UTF-8, is larger than {@link #LARGEST} or has no valid form
     */
    public static Document read(Path file) {
        return new DocumentReader(file.toString()).readFile(file);
    }

    /**
     * Reads contents that are at hand.
     *
     * @param name what to call them in messages
     * @param content the bytes; not modified
     * @param format their format
     * @return the contents, to be asked for values
     * @throws DocumentException as {@link #read(Path)}
     */
    public static Document read(String name, byte[] content, DocumentFormat format) {
        return new DocumentReader(name).parse(content, format);
    }

    private Document readFile(Path file) {
        if (!Files.exists(file)) {
            throw problems.stop(0, PHRASES.say("there-is-no-such-file"));
        }
        if (Files.isDirectory(file)) {
            throw problems.stop(0, PHRASES.say("this-is-a-folder-expected"));
        }
        DocumentFormat format = DocumentFormat.of(String.valueOf(file.getFileName()))
                .orElseThrow(() -> problems.stop(0, PHRASES.say("the-end-of-the-file")));
        try (InputStream stream = Files.newInputStream(file)) {
            return parse(stream.readNBytes(LARGEST + 1), format);
        } catch (IOException e) {
            throw problems.stop(
                    0, PHRASES.say("the-file-cannot-be-read", e.getClass().getSimpleName()));
        }
    }

    private Document parse(byte[] content, DocumentFormat format) {
        if (content.length > LARGEST) {
            throw problems.stop(0, PHRASES.say("the-file-is-larger-than"));
        }
        String text = decode(content);
        if (text.isBlank()) {
            throw problems.stop(0, PHRASES.say("the-file-is-empty-expected"));
        }
        TokenStreamFactory factory = format == DocumentFormat.JSON ? new JsonFactory() : new YAMLFactory();
        try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text)) {
            return new Document(problems, new RawReader(parser, problems).read());
        } catch (JacksonException e) {
            throw problems.stop(SyntaxMessage.of(e, format));
        }
    }

    private String decode(byte[] content) {
        refuseControlCharacters(content);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer bytes = ByteBuffer.wrap(content);
        CharBuffer chars = CharBuffer.allocate(content.length);
        CoderResult result = decoder.decode(bytes, chars, true);
        if (result.isError()) {
            int at = 1;
            for (int i = 0; i < bytes.position(); i++) {
                at += content[i] == '\n' ? 1 : 0;
            }
            throw problems.stop(at, String.format(PHRASES.say("the-byte-0x-02x-on"), content[bytes.position()]));
        }
        String text = chars.flip().toString();
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    /** Both formats forbid them, and they are the surest sign of a file that is no text. */
    private void refuseControlCharacters(byte[] content) {
        int line = 1;
        for (byte b : content) {
            line += b == '\n' ? 1 : 0;
            boolean allowed = b == '\n' || b == '\r' || b == '\t';
            if (b >= 0 && b < ' ' && !allowed) {
                throw problems.stop(line, String.format(PHRASES.say("the-line-holds-the-control"), b));
            }
        }
    }
}
