package io.github.saltfront.app.cli;

import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;

/**
 * Says on a terminal that something takes longer than a second, on one line that is cleared and ended before the result is
 * written. Says nothing where standard error is no terminal.
 */
final class Progress implements AutoCloseable {
    static final long AFTER = 1000;

    private final String what;
    private final PrintWriter err;
    private final long begin = System.nanoTime();
    private final Timer timer = new Timer("progress", true);
    private int shown;
    private boolean closed;

    private Progress(String what, PrintWriter err) {
        this.what = what;
        this.err = err;
    }

    /**
     * Starts to watch.
     *
     * @param what what goes on, such as {@code planning}
     * @param err where to say it
     * @param terminal whether somebody can see it there
     * @return the watch, to be closed before anything else is written
     */
    static Progress start(String what, PrintWriter err, boolean terminal) {
        Progress progress = new Progress(what, err);
        if (terminal) {
            progress.timer.schedule(
                    new TimerTask() {
                        @Override
                        public void run() {
                            progress.show();
                        }
                    },
                    AFTER,
                    AFTER);
        }
        return progress;
    }

    private synchronized void show() {
        if (closed) {
            return;
        }
        String line = "saltfront: " + what + " ... " + (System.nanoTime() - begin) / 1_000_000_000L + " s";
        err.print("\r" + line);
        err.flush();
        shown = line.length();
    }

    @Override
    public synchronized void close() {
        timer.cancel();
        closed = true;
        if (shown > 0) {
            err.println("\r" + " ".repeat(shown) + "\r");
            err.flush();
            shown = 0;
        }
    }
}
