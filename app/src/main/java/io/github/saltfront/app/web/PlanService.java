package io.github.saltfront.app.web;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.learn.KitchenKnowledge;
import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.Nearest;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.TimedDays;
import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;

/** Plans for many at once: as many side by side as there are processors, the others wait; a plan asked for again is at hand. */
final class PlanService implements AutoCloseable {
    private static final Phrases PHRASES = Phrases.of(PlanService.class);

    /** Seed of all plans, as on the command line. */
    private static final long SEED = 1;

    private static final int MOST_WAITING = 400;
    private static final int LONGEST_WAIT_S = 60;
    private static final String NAME = "request";

    private final Function<PlanFile.NotebookUse, KitchenKnowledge> knowledge;
    private final ExecutorService threads;
    private final Executor carrying;
    private final Semaphore running;
    private final Kept<Plan> plans = new Kept<>();
    private final Kept<PlanSearch.Found> founds = new Kept<>();
    private final Kept<TimedDays> days = new Kept<>();
    private final Kept<List<Nearest>> offers = new Kept<>();

    PlanService() {
        this(use -> KitchenKnowledge.NONE);
    }

    /**
     * Creates a service that knows kitchens.
     *
     * @param knowledge what a kitchen has learned
     */
    PlanService(Function<PlanFile.NotebookUse, KitchenKnowledge> knowledge) {
        this.knowledge = knowledge;
        int processors = Runtime.getRuntime().availableProcessors();
        threads = Executors.newFixedThreadPool(processors, task -> {
            Thread thread = new Thread(task, "ensemble");
            thread.setDaemon(true);
            return thread;
        });
        carrying = Language.carrying(threads);
        running = new Semaphore(processors, true);
    }

    /** Returns the catalog in the language that is spoken. */
    Catalog catalog() {
        return Catalog.load();
    }

    /** Returns where parts of simulations run, in the language of whoever hands them over. */
    Executor executor() {
        return carrying;
    }

    /**
     * Reads a request without planning.
     *
     * @param body JSON of the request
     * @return the request
     * @throws io.github.saltfront.app.document.DocumentException with all problems
     */
    Request read(byte[] body) {
        Document document = DocumentReader.read(NAME, body, DocumentFormat.JSON);
        Request request = PlanFile.read(document, catalog(), ZonedDateTime.now());
        return PlanFile.notebook(document)
                .map(use -> knowledge.apply(use).applied(request))
                .orElse(request);
    }

    /**
     * Plans, without looking for other ways unless the wishes of the request decide between them.
     *
     * @param body JSON of the request
     * @return the plan
     * @throws io.github.saltfront.app.document.DocumentException with all problems of the request
     * @throws io.github.saltfront.plan.PlanningException if it cannot be met
     * @throws Refused if too many wait already
     */
    Plan plan(byte[] body) {
        Request request = read(body);
        if (!request.taste().wishes().isEmpty()) {
            return find(body).plan();
        }
        return once(plans, key(request, body), () -> Planner.plan(request, carrying, SEED));
    }

    /**
     * Plans, and looks for other ways.
     *
     * @param body JSON of the request
     * @return the plan and its alternatives; fails as {@link #plan}
     */
    PlanSearch.Found find(byte[] body) {
        Request request = read(body);
        return once(founds, key(request, body), () -> PlanSearch.find(request, carrying, SEED));
    }

    /**
     * Looks roughly at a changed request; a request that ranks its wishes is planned anew, since it may be done in another way then.
     *
     * @param body JSON of the changed request
     * @param before JSON of the request before the change
     * @return a plan of few members; fails as {@link #plan}
     */
    Plan glance(byte[] body, byte[] before) {
        Plan old = plan(before);
        Request request = read(body);
        if (!request.taste().wishes().isEmpty()) {
            return plan(body);
        }
        return running(executor -> Planner.glance(request, old, executor, SEED));
    }

    private static String key(Request request, byte[] body) {
        // what was learned is told among the assumptions
        return Language.spoken().tag() + "\n" + request.timing().now() + "\n" + request.assumptions() + "\n"
                + new String(body, StandardCharsets.UTF_8);
    }

    /** Who asks for what is just being computed waits for that, and takes no place in the line. */
    private <T> T once(Kept<T> kept, String key, Supplier<T> compute) {
        return kept.get(key, () -> {
            await();
            try {
                return compute.get();
            } finally {
                running.release();
            }
        });
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

    /**
     * Looks for what can be done instead of a request that cannot be met.
     *
     * @param body JSON of the request
     * @return the offers, the nearest first
     */
    List<Nearest> offers(byte[] body) {
        Request request = read(body);
        return once(offers, key(request, body), () -> Nearest.of(request, carrying, SEED));
    }

    /**
     * Plans and prepares its day for stages of other lengths.
     *
     * @param body JSON of the request
     * @return the days of the plan; fails as {@link #plan}
     */
    TimedDays days(byte[] body) {
        Plan plan = plan(body);
        return once(days, key(plan.request(), body), () -> TimedDays.of(plan, carrying));
    }

    /**
     * Does something else that takes a while, in turn with the plans.
     *
     * @param work what to do; it may use the threads
     * @return what it returns
     */
    <T> T running(Function<Executor, T> work) {
        await();
        try {
            return work.apply(carrying);
        } finally {
            running.release();
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
        throw new Refused(503, "", PHRASES.say("too-many-plans-are-asked"));
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
