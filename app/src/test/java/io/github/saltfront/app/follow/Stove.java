package io.github.saltfront.app.follow;

import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.app.store.Database;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;

/** Cooks of small ensembles, whose plan is made once for all tests. */
public final class Stove {
    /** A chicken breast in a fan oven. */
    public static final String BREAST = """
            {"cut": "chicken-breast-skinless", "mass": "220 g", "thickness": "28 mm", "appliance": "oven-fan",
             "salting": {"treatment": "none"}}
            """;

    /** Members that are enough to see that something is computed. */
    public static final FollowSettings SMALL = new FollowSettings(50, 500, 2000, "test");

    private static final Map<String, Plan> PLANS = new ConcurrentHashMap<>();

    private Stove() {}

    /** A registry whose data are in a file. */
    static CookRegistry open(Path data) {
        CookRegistry cooks = new CookRegistry(
                Database.open(data).cooks(),
                body -> plan(new String(body, StandardCharsets.UTF_8)),
                Runnable::run,
                SMALL);
        cooks.takeUp().run();
        return cooks;
    }

    static Plan plan(String request) {
        // the time it was asked at makes no difference to what these tests look at
        return PLANS.computeIfAbsent(
                request.replaceAll("\"now\":\"[^\"]*\"", ""),
                key -> Planner.plan(
                        PlanFile.read(
                                DocumentReader.read(
                                        "request", request.getBytes(StandardCharsets.UTF_8), DocumentFormat.JSON),
                                Catalog.load(),
                                ZonedDateTime.now()),
                        Runnable::run,
                        1));
    }

    static String begin(CookRegistry cooks) {
        return cooks.begin(BREAST.getBytes(StandardCharsets.UTF_8), CookOptions.USUAL);
    }

    /** Waits until something is so. */
    public static void await(String what, BooleanSupplier so) {
        long end = System.nanoTime() + 60_000_000_000L;
        while (!so.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("after 60 s it is still not so: " + what);
            }
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
