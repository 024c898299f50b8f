package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A file is there whole or not at all. */
class OutputFileTest {
    @TempDir
    private Path folder;

    @Test
    void failureHalfWayLeavesNothingNew() {
        Path file = folder.resolve("new.csv");
        assertThatThrownBy(() -> OutputFile.write(file, writer -> {
                    writer.write("x".repeat(100_000));
                    writer.flush();
                    throw new IOException("No space left on device");
                }))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessage("The file " + file + " cannot be written: IOException: No space left on device.");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void failureHalfWayKeepsWhatWasThere() throws IOException {
        Path file = folder.resolve("old.csv");
        Files.writeString(file, "old");
        assertThatThrownBy(() -> OutputFile.write(file, writer -> {
                    writer.write("half");
                    throw new IllegalStateException("a slip of ours");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(Files.readString(file)).isEqualTo("old");
        assertThat(listing()).containsExactly("old.csv");
    }

    @Test
    void linkKeepsBeingOne() throws IOException {
        Path file = Files.writeString(folder.resolve("real.csv"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), file);
        OutputFile.write(link, "new");
        assertThat(link).isSymbolicLink();
        assertThat(Files.readString(file)).isEqualTo("new");
    }

    @Test
    void fileCanBeReadByWhomTheSystemLets() throws IOException {
        Path usual = Files.writeString(folder.resolve("usual.csv"), "");
        Path written = folder.resolve("written.csv");
        OutputFile.write(written, "text");
        assertThat(Files.getPosixFilePermissions(written)).isEqualTo(Files.getPosixFilePermissions(usual));
    }

    @Test
    @Timeout(120)
    void processToldToEndWhileWritingLeavesNothing() throws IOException, InterruptedException {
        Process child = child(
                        SlowWriter.class.getName(), folder.resolve("slow.csv").toString())
                .start();
        try (BufferedReader out = child.inputReader()) {
            assertThat(out.readLine()).isEqualTo("half");
            assertThat(listing()).hasSize(1).doesNotContain("slow.csv");
            child.destroy();
            assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    @Timeout(120)
    void processToldToEndDuringALongRunLeavesNothing() throws IOException, InterruptedException {
        Path request = folder.resolve("long.yaml");
        Files.writeString(
                request,
                "piece: {shape: {kind: slab, thickness: 30 mm}, meat: chicken-breast-skinless, start_temperature: 4 °C}\n"
                        + "stages:\n  - {kind: heat, medium: {period: 20 s, swing: 40 K, mean: 80 °C}, time: 30 d}\n"
                        + "output: {every: 30 s, layers: 2000}\n");
        Path errors = Files.createTempFile("saltfront-errors", ".txt");
        // not a pipe, which ends with the process before it can be read
        Process child = child(
                        Main.class.getName(),
                        "simulate",
                        request.toString(),
                        "-o",
                        folder.resolve("long.json").toString())
                .redirectError(errors.toFile())
                .start();
        assertThat(child.waitFor(4, TimeUnit.SECONDS)).as("the run is long").isFalse();
        child.destroy();
        assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(errors).isEmptyFile();
        assertThat(listing()).containsExactly("long.yaml");
    }

    private static ProcessBuilder child(String... arguments) {
        List<String> command = new java.util.ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command);
    }

    private List<String> listing() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> String.valueOf(f.getFileName())).toList();
        }
    }

    /** Writes half of a file and waits. */
    static final class SlowWriter {
        private SlowWriter() {}

        public static void main(String[] args) {
            OutputFile.write(Path.of(args[0]), writer -> {
                writer.write("half");
                writer.flush();
                System.out.println("half");
                System.out.flush();
                try {
                    Thread.sleep(100_000);
                } catch (InterruptedException e) {
                    throw new IOException(e);
                }
            });
        }
    }
}
