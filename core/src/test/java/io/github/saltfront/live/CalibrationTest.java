package io.github.saltfront.live;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.validation.PageSection;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * 300 cooks whose truth is a piece in three dimensions ({@link SolidCook}), followed as in a kitchen: what the 90 % interval holds, how
 * far the middle is off, and whether it was ever told to come out before the rule was met. Takes about half an hour of two processors.
 */
@Tag("slow")
class CalibrationTest {
    /** Fewer members than the program has, for time; intervals of a small ensemble are no narrower. */
    private static final int MEMBERS = 120;

    private static final int COOKS = 300;
    private static final double[] SHARES = {0.25, 0.5, 0.75};
    private static final double LATEST = 1.6;

    private record Plan(String words, LiveSetup setup) {}

    /** One followed cook: what was seen at each share of the way, and whether it was safe when it was told to come out. */
    private record Followed(List<Double> errors, List<Boolean> held, List<Double> widths, double told, boolean safe) {}

    private static List<Plan> plans() {
        return List.of(
                new Plan("pork loin 1.2 kg, still oven", Cooks.loin()),
                new Plan(
                        "pork chop 250 g, fan oven",
                        Cooks.setup("pork-loin-chop", "oven-fan", 0.25, OptionalDouble.empty())),
                new Plan("beef steak 500 g, low oven", Cooks.steak()));
    }

    @Test
    void intervalsHoldTheTruthOfThreeDimensionsAndNothingIsCalledSafeTooEarly()
            throws IOException, InterruptedException, ExecutionException {
        List<Plan> plans = plans();
        List<List<Followed>> byPlan = new ArrayList<>();
        List<Future<Followed>> running = new ArrayList<>();
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            List<LiveCook> starts = new ArrayList<>();
            for (Plan plan : plans) {
                starts.add(LiveCook.start(plan.setup, MEMBERS, 1, Runnable::run));
                byPlan.add(new ArrayList<>());
            }
            for (int i = 0; i < COOKS; i++) {
                int seed = i;
                int plan = i % plans.size();
                running.add(threads.submit(() -> follow(
                        SolidCook.of(plans.get(plan).setup, seed),
                        starts.get(plan).another())));
            }
            for (int i = 0; i < COOKS; i++) {
                byPlan.get(i % plans.size()).add(running.get(i).get());
            }
        } finally {
            threads.shutdownNow();
        }
        List<Followed> all = byPlan.stream().flatMap(List::stream).toList();
        StringBuilder table = new StringBuilder("| cook | cooks | 90 % interval held at 25, 50, 75 % |"
                + " median error at 25, 50, 75 % | width at 25, 50, 75 % | told to come out after | before it was safe |\n"
                + "|---|---:|---|---|---|---:|---:|\n");
        for (int p = 0; p < plans.size(); p++) {
            table.append(row(plans.get(p).words, byPlan.get(p)));
        }
        table.append(row("all", all)).append('\n').append(figures(all));
        PageSection.hold("live-calibration", table.toString());
        assertThat(unsafe(all)).isZero();
        assertThat(median(all, f -> Math.abs(f.errors.get(1)))).isLessThan(0.04);
        for (int k = 0; k < SHARES.length; k++) {
            assertThat(held(all, k)).isGreaterThanOrEqualTo(0.85);
        }
    }

    private static Followed follow(SolidCook truth, LiveCook cook) {
        double pull = truth.pullTime();
        List<Double> errors = new ArrayList<>();
        List<Boolean> held = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        double t = 0;
        for (double share : SHARES) {
            double now = share * pull;
            for (; t <= now; t += truth.every()) {
                cook.add(truth.reading(t));
            }
            refresh(cook);
            Spread left = cook.outlook(now).pull().timeLeft();
            errors.add((now + left.p50() - pull) / pull);
            held.add(left.holds90(pull - now));
            widths.add(left.width90() / pull);
        }
        boolean late = false;
        while (t < LATEST * pull && cook.outlook(t).pull().advice() != Outlook.Advice.NOW) {
            t += truth.every();
            cook.add(truth.reading(t));
            if (!late && t > 0.9 * pull) {
                late = true;
                refresh(cook);
            }
        }
        boolean told = cook.outlook(t).pull().advice() == Outlook.Advice.NOW;
        Followed followed = new Followed(errors, held, widths, t / pull, !told || truth.isSafeAt(t));
        System.out.println(followed);
        return followed;
    }

    private static void refresh(LiveCook cook) {
        if (cook.wantsRefresh()) {
            cook.refresh(Runnable::run);
        }
    }

    private static double held(List<Followed> list, int k) {
        return (double) list.stream().filter(f -> f.held.get(k)).count() / list.size();
    }

    private static long unsafe(List<Followed> list) {
        return list.stream().filter(f -> !f.safe).count();
    }

    private static double median(List<Followed> list, ToDoubleFunction<Followed> value) {
        double[] sorted = list.stream().mapToDouble(value).sorted().toArray();
        return 0.5 * (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]);
    }

    private static String row(String words, List<Followed> list) {
        StringBuilder held = new StringBuilder();
        StringBuilder error = new StringBuilder();
        StringBuilder width = new StringBuilder();
        for (int k = 0; k < SHARES.length; k++) {
            int at = k;
            String comma = k == 0 ? "" : ", ";
            held.append(comma).append(percent(held(list, k)));
            error.append(comma).append(tenths(median(list, f -> Math.abs(f.errors.get(at)))));
            width.append(comma).append(percent(median(list, f -> f.widths.get(at))));
        }
        return String.format(
                Locale.ROOT,
                "| %s | %d | %s %% | %s %% | %s %% | %s %% | %d |%n",
                words,
                list.size(),
                held,
                error,
                width,
                percent(median(list, Followed::told)),
                unsafe(list));
    }

    private static String figures(List<Followed> all) {
        StringBuilder text = new StringBuilder("| figure | value | target | met |\n|---|---:|---:|---|\n");
        for (int k = 0; k < SHARES.length; k++) {
            double held = held(all, k);
            text.append(String.format(
                    Locale.ROOT,
                    "| held at %s %% of the way | %s %% | 85 to 95 %% | %s |%n",
                    percent(SHARES[k]),
                    percent(held),
                    met(held >= 0.85 && held <= 0.95)));
        }
        double error = median(all, f -> Math.abs(f.errors.get(1)));
        return text.append(String.format(
                        Locale.ROOT,
                        "| median error of the pull time half way | %s %% | under 4 %% | %s |%n",
                        tenths(error),
                        met(error < 0.04)))
                .append(String.format(
                        Locale.ROOT,
                        "| told to come out before the rule was met | %d of %d | none | %s |%n",
                        unsafe(all),
                        all.size(),
                        met(unsafe(all) == 0)))
                .toString();
    }

    private static String met(boolean met) {
        return met ? "yes" : "**no**";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    private static String tenths(double share) {
        return String.format(Locale.ROOT, "%.1f", 100 * share);
    }
}
