package io.github.saltfront.app.cli;

import io.github.saltfront.app.export.OutlookJson;
import io.github.saltfront.app.export.OutlookText;
import io.github.saltfront.live.CookEvent;
import io.github.saltfront.live.LiveCook;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.live.Reading;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Executor;

/** Follows a log while it grows and writes an outlook whenever something came. */
final class FollowWatch {
    private static final long LOOK_MS = 500;

    private final LiveSetup setup;
    private final LiveCook cook;
    private final Executor executor;
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean json;

    FollowWatch(LiveSetup setup, long seed, Executor executor, PrintWriter out, PrintWriter err, boolean json) {
        this.setup = setup;
        this.executor = executor;
        this.out = out;
        this.err = err;
        this.json = json;
        cook = LiveCook.start(setup, seed, executor);
    }

    /** Goes on until nothing came for so long [s]. */
    void run(GrowingLog log, List<CookEvent> events, double silence) throws IOException, InterruptedException {
        long last = System.nanoTime();
        int told = 0;
        String problem = "";
        while ((System.nanoTime() - last) / 1e9 <= silence) {
            List<Reading> fresh = log.poll();
            if (!log.problem().isEmpty() && !log.problem().equals(problem)) {
                err.println("Waiting: " + log.problem());
                err.flush();
            }
            problem = log.problem();
            if (!fresh.isEmpty()) {
                last = System.nanoTime();
                double newest = fresh.get(fresh.size() - 1).time();
                int due = told;
                while (due < events.size() && events.get(due).time() <= newest) {
                    due++;
                }
                fresh.forEach(cook::add);
                if (due > told) {
                    cook.tell(events.subList(told, due), executor);
                    told = due;
                }
                if (cook.wantsRefresh()) {
                    cook.refresh(executor);
                }
                write(cook.outlook(Math.max(0, cook.newest())));
            }
            Thread.sleep(LOOK_MS);
        }
    }

    private void write(Outlook outlook) {
        out.print(
                json
                        ? Json.text(OutlookJson.of(setup, List.of(outlook), Version.text()))
                        : OutlookText.of(setup, List.of(outlook)));
        out.println();
        out.flush();
    }
}
