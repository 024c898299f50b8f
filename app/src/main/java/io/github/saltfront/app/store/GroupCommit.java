package io.github.saltfront.app.store;

import java.sql.SQLException;
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
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/**
 * Writes of many in one transaction: whatever came while the last one was being forced to the disk goes with the next, so that
 * a thousand readings in a second cost a few waits for the disk. A future is done when its write is on the disk.
 */
final class GroupCommit implements AutoCloseable {
    private static final int MOST = 500;
    private static final int IDLE_MS = 100;
    private static final int MOST_WAITING = 20_000;

    private final Jdbi jdbi;
    private final Runnable afterBreak;
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

    /**
     * Starts writing.
     *
     * @param jdbi connections
     * @param afterBreak what to do when a connection broke, before the next is opened
     */
    GroupCommit(Jdbi jdbi, Runnable afterBreak) {
        this.jdbi = jdbi;
        this.afterBreak = afterBreak;
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
        try {
            while (!closed || !waiting.isEmpty()) {
                writeUntilBroken();
                afterBreak.run();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Ends when all is written after closing, or when the connection broke: a server may have been started anew. */
    private void writeUntilBroken() throws InterruptedException {
        @Nullable Write<?> waited = waiting.peek();
        try (Handle handle = jdbi.open()) {
            boolean whole = true;
            while (whole && (!closed || !waiting.isEmpty())) {
                Write<?> first = waiting.poll(IDLE_MS, TimeUnit.MILLISECONDS);
                if (first != null) {
                    List<Write<?>> batch = new ArrayList<>(List.of(first));
                    waiting.drainTo(batch, MOST - 1);
                    commit(handle, batch);
                    whole = batch.stream().noneMatch(write -> write.done.isCompletedExceptionally())
                            || isUsable(handle);
                }
            }
        } catch (JdbiException e) {
            // what came in the meantime is tried anew
            if (waited != null && waiting.remove(waited)) {
                waited.done.completeExceptionally(e);
            }
        }
    }

    private static boolean isUsable(Handle handle) {
        try {
            return handle.getConnection().isValid(1);
        } catch (SQLException e) {
            return false;
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
