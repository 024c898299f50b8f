package io.github.saltfront.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The offset of the Celsius scale is written once in the shipped sources, so that it cannot be mistyped a second time. */
class OneTemperatureOffsetTest {
    private static final String OFFSET = "273" + ".15";

    @Test
    void offsetStandsInOneFileOnly() throws IOException {
        assertThat(filesWithOffset(Path.of("src/main/java"))).containsExactly("Temperature.java");
        Path app = Path.of("../app/src/main/java");
        if (Files.isDirectory(app)) {
            assertThat(filesWithOffset(app)).isEmpty();
        }
    }

    private static List<String> filesWithOffset(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(".java"))
                    .filter(OneTemperatureOffsetTest::holdsOffset)
                    .map(f -> f.getFileName().toString())
                    .toList();
        }
    }

    private static boolean holdsOffset(Path file) {
        try {
            return Files.readString(file).contains(OFFSET);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
