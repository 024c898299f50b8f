package io.github.saltfront.app.follow;

import io.github.saltfront.app.store.StoredReading;
import java.util.ArrayList;
import java.util.List;

/** What waits to be computed for one cook. All of it is kept already; nothing is lost if this is. */
final class Inbox {
    private List<StoredReading> readings = new ArrayList<>();
    private List<ToldEvent> events = new ArrayList<>();
    private boolean anew;
    private boolean closed;

    /** What came since the last time. */
    record Batch(List<StoredReading> readings, List<ToldEvent> events, boolean anew, boolean closed) {}

    synchronized void add(List<StoredReading> fresh) {
        readings.addAll(fresh);
        notifyAll();
    }

    synchronized void add(ToldEvent event) {
        events.add(event);
        notifyAll();
    }

    /** Asks for the whole cook to be taken up again from the record. */
    synchronized void anew() {
        anew = true;
        notifyAll();
    }

    synchronized void close() {
        closed = true;
        notifyAll();
    }

    /** Waits for something, at most so long [ms]. */
    synchronized Batch take(long longest) throws InterruptedException {
        long end = System.nanoTime() + longest * 1_000_000;
        while (!closed && readings.isEmpty() && events.isEmpty() && !anew) {
            long left = (end - System.nanoTime()) / 1_000_000;
            if (left <= 0) {
                break;
            }
            wait(left);
        }
        Batch batch = new Batch(readings, events, anew, closed);
        readings = new ArrayList<>();
        events = new ArrayList<>();
        anew = false;
        return batch;
    }
}
