package io.github.saltfront.app.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The last results that were asked for, by request. */
final class Kept<T> {
    private static final int MOST = 40;

    private final Map<String, T> results = new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, T> eldest) {
            return size() > MOST;
        }
    };

    synchronized Optional<T> find(String key) {
        return Optional.ofNullable(results.get(key));
    }

    synchronized void put(String key, T result) {
        results.put(key, result);
    }
}
