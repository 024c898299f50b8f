package io.github.saltfront.plan;

import io.github.saltfront.quality.Band;
import io.github.saltfront.transport.SolverSettings;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executor;

/** Mean salt against time on an ensemble: windows of soaks, and the strength that suits a time. */
final class SoakSearch {
    /** Longest time a bath may stand [s]: two days (fsishotline). */
    static final double LONGEST = BrineSheet.LONGEST;

    /** Members that a window is read off. */
    private static final int MEMBERS = 100;

    /** Share of the ensemble that may be too salty [-]; salt reference, over-salting rule. */
    static final double TOO_SALTY_SHARE = 0.20;

    /** Share of the way to its end at which a weak bath counts as done [-]: well within what can be tasted. */
    private static final double NEARLY = 0.95;

    private static final double GRID = 300;

    private final Request request;
    private final Executor executor;
    private final long seed;
    private final Band taste;

    SoakSearch(Request request, Executor executor, long seed, Band taste) {
        this.request = request;
        this.executor = executor;
        this.seed = seed;
        this.taste = taste;
    }

    /**
     * A window and the ensemble it was read off.
     *
     * @param window the window
     * @param days the ensemble
     */
    record Found(Plan.Window window, List<MemberDay> days) {
        Interval after(double time) {
            return Interval.of(
                    days.stream().mapToDouble(day -> day.meanSaltAt(time)).toArray());
        }
    }

    /** Window of a bath of a strength: it goes on past the target. */
    Found strong(Bath bath) {
        List<MemberDay> days = run(bath);
        double best = timeOfQuantile(days, 0.5, taste.typical());
        double latest = timeOfQuantile(days, 1 - TOO_SALTY_SHARE, taste.high());
        return new Found(
                new Plan.Window(
                        timeOfQuantile(days, 0.5, taste.low()), best, latest, tooSalty(days, best), isSure(days)),
                days);
    }

    /** Window of a bath that is matched to the target: done when the median is nearly there. */
    Found matched(Bath bath) {
        List<MemberDay> days = run(bath);
        double start = request.food().meat().nativeSalt();
        double best = timeOfQuantile(days, 0.5, start + NEARLY * (taste.typical() - start));
        return new Found(
                new Plan.Window(
                        timeOfQuantile(days, 0.5, taste.low()), best, LONGEST, tooSalty(days, LONGEST), isSure(days)),
                days);
    }

    private List<MemberDay> run(Bath bath) {
        return ensemble(MEMBERS, seed).run(List.of(SaltStages.soak(request, bath, LONGEST)), executor);
    }

    private boolean isSure(List<MemberDay> days) {
        return timeOfQuantile(days, 0.05, taste.low()) <= timeOfQuantile(days, 0.95, taste.high());
    }

    private double tooSalty(List<MemberDay> days, double time) {
        long count =
                days.stream().filter(day -> day.meanSaltAt(time) > taste.high()).count();
        return (double) count / days.size();
    }

    /** Strength whose median mean salt at a given time is the target, by bisection [kg/kg of water]. */
    double strengthFor(double time, BathMixer mixer) {
        DayEnsemble few = ensemble(Planner.SEARCH_MEMBERS, seed + 2);
        double low = 0.001;
        double high = 0.12;
        for (int i = 0; i < 12; i++) {
            double middle = 0.5 * (low + high);
            List<MemberDay> days = few.run(List.of(SaltStages.soak(request, mixer.strong(middle), time)), executor);
            if (after(days).median() > taste.typical()) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.round(0.5 * (low + high) * 1000) / 1000.0;
    }

    /** Mean salt after lying with dry salt for a time. */
    Interval dry(double salt, double time) {
        return after(ensemble(Planner.SEARCH_MEMBERS, seed + 2)
                .run(List.of(SaltStages.drySalt(request, salt, time)), executor));
    }

    private static Interval after(List<MemberDay> days) {
        return Interval.of(days.stream()
                .mapToDouble(day -> day.ends().get(day.ends().size() - 1).meanSalt())
                .toArray());
    }

    private DayEnsemble ensemble(int members, long memberSeed) {
        return new DayEnsemble(
                request.food().meat(),
                request.food().shape(),
                request.food().startTemperature(),
                Draw.ensemble(members, memberSeed),
                SolverSettings.DEFAULT.withTolerances(0.2, 1e-4));
    }

    /** First time on a grid at which a quantile of the ensemble's mean salt reaches a level [s]. */
    private static double timeOfQuantile(List<MemberDay> days, double share, double level) {
        double[] salt = new double[days.size()];
        for (double time = GRID; time < LONGEST; time += GRID) {
            for (int i = 0; i < salt.length; i++) {
                salt[i] = days.get(i).meanSaltAt(time);
            }
            Arrays.sort(salt);
            if (Interval.quantile(salt, share) >= level) {
                return time;
            }
        }
        return LONGEST;
    }
}
