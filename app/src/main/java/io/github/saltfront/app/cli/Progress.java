package io.github.saltfront.app.cli;

import java.util.Timer;
import java.util.TimerTask;

/** Says on standard error that something takes longer than a second. */
final class Progress implements AutoCloseable {
    private static final long AFTER = 1000;

    private final String what;
    private final Timer timer = new Timer("progress", true);

    Progress(String what) {
        this.what = what;
    }

    void start() {
        long begin = System.nanoTime();
        timer.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        long seconds = (System.nanoTime() - begin) / 1_000_000_000L;
                        System.err.print("\rsaltfront: " + what + " ... " + seconds + " s");
                        System.err.flush();
                    }
                },
                AFTER,
                AFTER);
    }

    @Override
    public void close() {
        timer.cancel();
    }
}
