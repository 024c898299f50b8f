package io.github.saltfront.app.follow;

import io.github.saltfront.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArraySet;
import java.util.concurrent.Executor;
import java.util.concurrent.Semaphore;
import java.util.function.Function;

/** What all cooks share: the planner, the processors, and who listens. */
final class Kitchen {
    /** Probes of one cook. */
    static final int MOST_PROBES = 16;

    /** Ensembles that are simulated at once; each uses all processors that are free. */
    private static final int HEAVY = 2;

    /** Cooks that look ahead at once: one processor stays free for those who bring readings. */
    private static final int LOOKS = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);

    private final Function<byte[], Plan> planner;
    private final Executor executor;
    private final FollowSettings settings;
    private final Semaphore heavy = new Semaphore(HEAVY, true);
    private final Semaphore looks = new Semaphore(LOOKS, true);
    private final Set<CookListener> listeners = new CopyOnWriteArraySet<>();

    Kitchen(Function<byte[], Plan> planner, Executor executor, FollowSettings settings) {
        this.planner = planner;
        this.executor = executor;
        this.settings = settings;
    }

    Plan plan(String request) {
        return planner.apply(request.getBytes(StandardCharsets.UTF_8));
    }

    Executor executor() {
        return executor;
    }

    int members() {
        return settings.members();
    }

    long tickMs() {
        return settings.tickMs();
    }

    long alarmAgainMs() {
        return settings.alarmAgainMs();
    }

    long now() {
        return System.currentTimeMillis();
    }

    boolean tryHeavy() {
        return heavy.tryAcquire();
    }

    void beginHeavy() throws InterruptedException {
        heavy.acquire();
    }

    void endHeavy() {
        heavy.release();
    }

    /** Absorbs and looks ahead, in turn with the other cooks. */
    void inTurn(Runnable look) throws InterruptedException {
        looks.acquire();
        try {
            look.run();
        } finally {
            looks.release();
        }
    }

    void add(CookListener listener) {
        listeners.add(listener);
    }

    void remove(CookListener listener) {
        listeners.remove(listener);
    }

    void tell(String cook, String event, String json) {
        listeners.forEach(listener -> listener.changed(cook, event, json));
    }
}
