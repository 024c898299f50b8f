package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** The progress line comes late, on terminals only, and leaves a clear line behind. */
class ProgressTest {
    private final StringWriter err = new StringWriter();

    @Test
    void longRunIsSaidOnOneLineThatIsClearedAndEnded() throws InterruptedException {
        run(true, Progress.AFTER + 500);
        String line = "saltfront: planning \\.\\.\\. \\d s";
        assertThat(err.toString()).matches("(\r" + line + ")+\r {27}\r" + System.lineSeparator());
    }

    @Test
    void shortRunIsNotSaid() throws InterruptedException {
        run(true, 10);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void nothingIsSaidWhereThereIsNoTerminal() throws InterruptedException {
        run(false, Progress.AFTER + 300);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void testsHaveNoTerminalUnlessTheyAreToldSo() {
        System.setProperty(Terminal.PROPERTY, "true");
        try {
            assertThat(Terminal.isErr()).isTrue();
            System.setProperty(Terminal.PROPERTY, "false");
            assertThat(Terminal.isErr()).isFalse();
        } finally {
            System.clearProperty(Terminal.PROPERTY);
        }
    }

    private void run(boolean terminal, long time) throws InterruptedException {
        try (Progress progress = Progress.start("planning", new PrintWriter(err), terminal)) {
            assertThat(progress).isNotNull();
            Thread.sleep(time);
        }
    }
}
