package io.github.saltfront.app.web;

import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Plans for many at once: as many side by side as there are processors, the others wait; a plan asked for again is at hand. */
final class PlanService implements AutoCloseable {
    /** Seed of all plans, as on the command line. */
    private static final long SEED = 1;

    private static final int KEPT = 40;
    private static final int MOST_WAITING = 400;
    private static final int LONGEST_WAIT_S = 60;
    private static final String NAME = "request";

    private final Catalog catalog;
    private final ExecutorService threads;
    private final Semaphore running;
    private final Map<String, Plan> kept = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Plan> eldest) {
            return size() > KEPT;
        }
    };

    PlanService(Catalog catalog) {
        this.catalog = catalog;
        int processors = Runtime.getRuntime().availableProcessors();
        threads = Executors.newFixedThreadPool(processors, task -> {
            Thread thread = new Thread(task, "ensemble");
            thread.setDaemon(true);
            return thread;
        });
        running = new Semaphore(processors, true);
    }

    Catalog catalog() {
        return catalog;
    }

    /**
     * Reads a request without planning.
     *
     * @param body JSON of the request
     * @return the request
     * @throws io.github.saltfront.app.document.DocumentException with all problems
     */
    Request read(byte[] body) {
        return PlanFile.read(DocumentReader.read(NAME, body, DocumentFormat.JSON), catalog, ZonedDateTime.now());
    }

    /**
     * Plans.
     *
     * @param body JSON of the request
     * @return the plan
     * @throws io.github.saltfront.app.document.DocumentException with all problems of the request
     * @throws io.github.saltfront.plan.PlanningException if it cannot be met
     * @throws Refused if too many wait already
     */
    Plan plan(byte[] body) {
        Request request = read(body);
        String key = request.timing().now() + "\n" + new String(body, StandardCharsets.UTF_8);
        Plan known = find(key);
        if (known != null) {
            return known;
        }
        await();
        try {
            Plan meanwhile = find(key);
            if (meanwhile != null) {
                return meanwhile;
            }
            Plan plan = Planner.plan(request, threads, SEED);
            synchronized (kept) {
                kept.put(key, plan);
            }
            return plan;
        } finally {
            running.release();
        }
    }

    /**
     * Plans and draws the fronts.
     *
     * @param body JSON of the request
     * @return the fronts of the plan
     */
    Fronts fronts(byte[] body) {
        Plan plan = plan(body);
        await();
        try {
            return Fronts.of(plan);
        } finally {
            running.release();
        }
    }

    private @Nullable Plan find(String key) {
        synchronized (kept) {
            return kept.get(key);
        }
    }

    private void await() {
        try {
            if (running.getQueueLength() < MOST_WAITING && running.tryAcquire(LONGEST_WAIT_S, TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        throw new Refused(503, "", "Too many plans are asked for at once; try again in a minute.");
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
