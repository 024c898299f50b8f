package io.github.saltfront.app.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Writes of many in one transaction: whatever came while the last one was being forced to the disk goes with the next, so that
 * a thousand readings in a second cost a few waits for the disk. A future is done when its write is on the disk.
 */
final class GroupCommit implements AutoCloseable {
    private static final int MOST = 500;
    private static final int IDLE_MS = 100;
    private static final int MOST_WAITING = 20_000;

    private final Jdbi jdbi;
    private final BlockingQueue<Write<?>> waiting = new LinkedBlockingQueue<>(MOST_WAITING);
    private final Thread thread;
    private volatile boolean closed;

    /** A write and who waits for it. */
    private static final class Write<T> {
        private final Function<Handle, T> work;
        private final CompletableFuture<T> done = new CompletableFuture<>();
        private Optional<T> result = Optional.empty();

        private Write(Function<Handle, T> work) {
            this.work = work;
        }

        private void apply(Handle handle) {
            result = Optional.of(work.apply(handle));
        }

        private void acknowledge() {
            result.ifPresent(done::complete);
        }
    }

    GroupCommit(Jdbi jdbi) {
        this.jdbi = jdbi;
        thread = new Thread(this::loop, "cook journal");
        thread.setDaemon(true);
        thread.start();
    }

    <T> CompletableFuture<T> run(Function<Handle, T> work) {
        Write<T> write = new Write<>(work);
        if (closed || !waiting.offer(write)) {
            write.done.completeExceptionally(new IllegalStateException(
                    "the journal takes no more writes; it is closed or the disk is too slow."));
        }
        return write.done;
    }

    private void loop() {
        try (Handle handle = jdbi.open()) {
            while (!closed || !waiting.isEmpty()) {
                Write<?> first = waiting.poll(IDLE_MS, TimeUnit.MILLISECONDS);
                if (first != null) {
                    List<Write<?>> batch = new ArrayList<>(List.of(first));
                    waiting.drainTo(batch, MOST - 1);
                    commit(handle, batch);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void commit(Handle handle, List<Write<?>> batch) {
        try {
            handle.useTransaction(inside -> batch.forEach(write -> write.apply(inside)));
        } catch (RuntimeException e) {
            if (batch.size() == 1) {
                batch.get(0).done.completeExceptionally(e);
            } else {
                // one bad write must not take the others with it
                batch.forEach(write -> commit(handle, List.of(write)));
            }
            return;
        }
        batch.forEach(Write::acknowledge);
    }

    @Override
    public void close() {
        CompletableFuture<Integer> last = run(handle -> 0);
        closed = true;
        try {
            last.handle((value, failure) -> 0).join();
            thread.join(5000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
