package io.github.saltfront.app.cli;

import io.github.saltfront.app.follow.CookRegistry;
import io.github.saltfront.live.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;

/** Feeds the readings of a log to a cook, at the pace at which they were taken or as they are written. */
final class LogFeed {
    private static final Logger LOG = Logger.getLogger(LogFeed.class.getName());
    private static final long LOOK_MS = 1000;

    private LogFeed() {}

    /** What a feed does until the log is at its end, or for good. */
    @FunctionalInterface
    private interface Work {
        void run() throws IOException, InterruptedException;
    }

    /** Plays a log in the background. */
    static void replay(CookRegistry cooks, String id, List<Reading> log, double speed) {
        cooks.endClock(id, log.get(log.size() - 1).time());
        long start = System.nanoTime();
        background(() -> {
            int from = 0;
            while (from < log.size()) {
                double present = (System.nanoTime() - start) / 1e9 * speed;
                int to = from;
                while (to < log.size() && log.get(to).time() <= present) {
                    to++;
                }
                if (to > from) {
                    cooks.feed(id, log.subList(from, to), "replay");
                    from = to;
                } else {
                    Thread.sleep(Math.max(1, Math.round(1000 * (log.get(from).time() - present) / speed)));
                }
            }
        });
    }

    /** Takes what a log holds already, then what is added to it, in the background. */
    static void watch(CookRegistry cooks, String id, List<Reading> first, GrowingLog log) {
        background(() -> {
            List<Reading> fresh = first;
            String told = "";
            while (true) {
                if (!fresh.isEmpty()) {
                    cooks.feed(id, fresh, "file");
                }
                if (!log.problem().isEmpty() && !log.problem().equals(told)) {
                    LOG.warning("the watched log cannot be read: " + log.problem());
                }
                told = log.problem();
                Thread.sleep(LOOK_MS);
                fresh = log.poll();
            }
        });
    }

    private static void background(Work work) {
        Thread thread = new Thread(
                () -> {
                    try {
                        work.run();
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    } catch (IOException | RuntimeException e) {
                        LOG.log(Level.WARNING, "the log is no longer followed", e);
                    }
                },
                "log feed");
        thread.setDaemon(true);
        thread.start();
    }

    /** Removes the file of a cook that nobody keeps. */
    static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            return; // the system clears its folder for such files
        }
    }
}
