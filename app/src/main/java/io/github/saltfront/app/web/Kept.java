package io.github.saltfront.app.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** The last results that were asked for, by request; each is computed once, however many ask for it at the same time. */
final class Kept<T> {
    private static final int MOST = 40;

    private final Map<String, CompletableFuture<T>> results = new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, CompletableFuture<T>> eldest) {
            return size() > MOST;
        }
    };

    /**
     * Returns a result.
     *
     * @param key what it answers
     * @param compute how to compute it, if nobody has and nobody does; what it throws, all who wait for it get, and it is not kept
     * @return the result
     */
    T get(String key, Supplier<T> compute) {
        CompletableFuture<T> own = new CompletableFuture<>();
        CompletableFuture<T> known = claim(key, own);
        if (known != own) {
            return joined(known);
        }
        try {
            own.complete(compute.get());
        } catch (RuntimeException | Error e) {
            forget(key, own);
            own.completeExceptionally(e);
            throw e;
        }
        return own.join();
    }

    private static <T> T joined(CompletableFuture<T> known) {
        try {
            return known.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }

    private synchronized CompletableFuture<T> claim(String key, CompletableFuture<T> own) {
        CompletableFuture<T> known = results.get(key);
        if (known != null) {
            return known;
        }
        results.put(key, own);
        return own;
    }

    private synchronized void forget(String key, CompletableFuture<T> own) {
        results.remove(key, own);
    }
}
