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
    static final int MEMBERS = 100;

    /** Share of the ensemble that may be too salty [-]; salt reference, over-salting rule. */
    static final double TOO_SALTY_SHARE = 0.20;

    /** Share of the way to its end at which a weak bath counts as done [-]: well within what can be tasted. */
    private static final double NEARLY = 0.95;

    private static final double GRID = 300;

    /** Weakest and strongest bath that is tried for a time the cook gave [kg/kg of water]. */
    private static final double WEAKEST = 0.001;

    private static final double STRONGEST = 0.12;

    /** Relative change of the strength that is no longer worth a run [-]. */
    private static final double SETTLED = 0.01;

    private static final int MOST_TRIES = 12;

    private final Request request;
    private final Executor executor;
    private final long seed;
    private final Band taste;
    private final Fineness fineness;

    /** Searches as finely as is asked for. */
    SoakSearch(Request request, Executor executor, long seed, Band taste, Fineness fineness) {
        this.fineness = fineness;
        this.request = request;
        this.executor = executor;
        this.seed = seed;
        this.taste = taste;
    }

    /**
     * A window and the ensemble it was read off.
     *
     * @param window the window
     * @param curves the ensemble
     */
    record Found(Plan.Window window, List<SaltCurve> curves) {
        Interval after(double time) {
            return SoakSearch.at(curves, time);
        }

        /** Whether the best time lies before the bath must be thrown away. */
        boolean isDoneInTime() {
            return window.best() < LONGEST;
        }
    }

    /** Window of a bath of a strength: it goes on past the target. */
    Found strong(Bath bath) {
        List<SaltCurve> curves = run(bath);
        double best = timeOfQuantile(curves, 0.5, taste.typical());
        double latest = timeOfQuantile(curves, 1 - TOO_SALTY_SHARE, taste.high());
        return new Found(
                new Plan.Window(
                        timeOfQuantile(curves, 0.5, taste.low()), best, latest, tooSalty(curves, best), isSure(curves)),
                curves);
    }

    /** Window of a bath that is matched to the target: done when the median is nearly there. */
    Found matched(Bath bath) {
        return matched(run(bath));
    }

    /** The same on few members, for a bath that is only told of. */
    Found matchedRoughly(Bath bath) {
        return matched(ensemble(few(), seed).saltCurves(List.of(SaltStages.soak(request, bath, LONGEST)), executor));
    }

    private Found matched(List<SaltCurve> curves) {
        double start = request.food().meat().nativeSalt();
        double best = timeOfQuantile(curves, 0.5, start + NEARLY * (taste.typical() - start));
        return new Found(
                new Plan.Window(
                        timeOfQuantile(curves, 0.5, taste.low()),
                        best,
                        LONGEST,
                        tooSalty(curves, LONGEST),
                        isSure(curves)),
                curves);
    }

    private List<SaltCurve> run(Bath bath) {
        return ensemble(fineness.saltMembers(), seed)
                .saltCurves(List.of(SaltStages.soak(request, bath, LONGEST)), executor);
    }

    private boolean isSure(List<SaltCurve> curves) {
        return timeOfQuantile(curves, 0.05, taste.low()) <= timeOfQuantile(curves, 0.95, taste.high());
    }

    private double tooSalty(List<SaltCurve> curves, double time) {
        long count =
                curves.stream().filter(curve -> curve.at(time) > taste.high()).count();
        return (double) count / curves.size();
    }

    /**
     * Strength whose median mean salt at a given time is the target, on few members [kg/kg of water]. The uptake is nearly
     * proportional to the strength, so that strengths scaled by what is missing settle in a few runs.
     */
    double strengthFor(double time, BathMixer mixer) {
        DayEnsemble few = ensemble(few(), seed + 2);
        double start = request.food().meat().nativeSalt();
        double strength = SaltChooser.USUAL_STRENGTH;
        for (int i = 0; i < MOST_TRIES; i++) {
            List<DayEnsemble.StageFor> soak = List.of(SaltStages.soak(request, mixer.strong(strength), time));
            double gained = at(few.saltCurves(soak, executor), time).median() - start;
            double factor = gained > 0 ? (taste.typical() - start) / gained : Double.POSITIVE_INFINITY;
            double next = Math.min(STRONGEST, Math.max(WEAKEST, strength * factor));
            boolean isSettled = Math.abs(next - strength) < SETTLED * strength;
            strength = next;
            if (isSettled) {
                break;
            }
        }
        return Math.round(strength * 1000) / 1000.0;
    }

    /** Mean salt after lying with dry salt for a time. */
    Interval dry(double salt, double time) {
        DayEnsemble few = ensemble(few(), seed + 2);
        return at(few.saltCurves(List.of(SaltStages.drySalt(request, salt, time)), executor), time);
    }

    private static Interval at(List<SaltCurve> curves, double time) {
        return Interval.of(curves.stream().mapToDouble(curve -> curve.at(time)).toArray());
    }

    private DayEnsemble ensemble(int members, long memberSeed) {
        return new DayEnsemble(
                request.food().meat(),
                request.food().shape(),
                request.food().startTemperature(),
                Draw.ensemble(members, memberSeed),
                SolverSettings.DEFAULT.withTolerances(0.2, 1e-4),
                fineness.layers());
    }

    private int few() {
        return Math.min(Fineness.WHOLE.searchMembers(), fineness.saltMembers());
    }

    /** First time on a grid at which a quantile of the ensemble's mean salt reaches a level [s]. */
    private static double timeOfQuantile(List<SaltCurve> curves, double share, double level) {
        double[] salt = new double[curves.size()];
        for (double time = GRID; time < LONGEST; time += GRID) {
            for (int i = 0; i < salt.length; i++) {
                salt[i] = curves.get(i).at(time);
            }
            Arrays.sort(salt);
            if (Interval.quantile(salt, share) >= level) {
                return time;
            }
        }
        return LONGEST;
    }
}
