package io.github.saltfront.app.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: the text goes to a hidden file beside it, which takes its place when it is complete and is
 * removed after a failure or when the process is told to end. What is no plain file, such as a pipe, is written to directly.
 */
final class OutputFile {
    private OutputFile() {}

    /** What to write. */
    @FunctionalInterface
    interface Content {
        /**
         * Writes everything.
         *
         * @param writer where to
         * @throws IOException if that fails
         */
        void writeTo(Writer writer) throws IOException;
    }

    /** What to write as bytes. */
    @FunctionalInterface
    private interface Bytes {
        void writeTo(OutputStream stream) throws IOException;
    }

    /**
     * Writes a file.
     *
     * @param file the file
     * @param bytes its content
     * @throws UncheckedIOException if it cannot be written; then nothing of it is left and what was there before still is
     */
    static void write(Path file, byte[] bytes) {
        writeBytes(file, stream -> stream.write(bytes));
    }

    /**
     * Writes a file.
     *
     * @param file the file
     * @param text its text
     * @throws UncheckedIOException if it cannot be written; then nothing of it is left and what was there before still is
     */
    static void write(Path file, String text) {
        write(file, writer -> writer.write(text));
    }

    static void write(Path file, Content content) {
        writeBytes(file, stream -> {
            Writer writer = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
            content.writeTo(writer);
            writer.flush();
        });
    }

    private static void writeBytes(Path file, Bytes content) {
        try {
            // a link keeps being one: the file it names is replaced
            Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            if (Files.isDirectory(target)) {
                throw failed(file, "it is a folder, expected a file; name a file in it.", new IOException("folder"));
            }
            if (Files.exists(target) && !Files.isRegularFile(target)) {
                try (OutputStream stream = Files.newOutputStream(target)) {
                    content.writeTo(stream);
                }
                return;
            }
            replace(target, content);
        } catch (NoSuchFileException e) {
            throw failed(file, "its folder does not exist; make the folder first.", e);
        } catch (IOException e) {
            throw failed(file, e.getClass().getSimpleName() + ": " + e.getMessage() + ".", e);
        }
    }

    private static void replace(Path target, Bytes content) throws IOException {
        Path partial = partial(target);
        partial.toFile().deleteOnExit();
        try {
            try (OutputStream stream =
                    Files.newOutputStream(partial, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                content.writeTo(stream);
            }
            Files.move(partial, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(partial);
        }
    }

    /** Not a file of createTempFile, which nobody but its owner could read. */
    private static Path partial(Path target) throws IOException {
        Path partial = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        if (Files.exists(partial)) {
            throw new FileAlreadyExistsException(partial.toString());
        }
        return partial;
    }

    private static UncheckedIOException failed(Path file, String why, IOException cause) {
        return new UncheckedIOException("The file " + file + " cannot be written: " + why, cause);
    }
}
