package io.github.saltfront.live;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A cook whose truth is one piece of the program's own model, drawn as the ensemble is but by another seed, with a probe of unknown
 * error at an unknown distance from the middle, noise, a drifting error of the model and a display of a tenth of a degree.
 */
final class TwinCook {
    private static final double NOISE = 0.25;
    private static final double DRIFT_STEP = 60;
    private static final int DRIFT_POINTS = 1000;

    private final LiveSetup setup;
    private final Swarm truth;
    private final double error;
    private final double place;
    private final double every;
    private final SplittableRandom random;
    private final double[] drift;

    private TwinCook(LiveSetup setup, Swarm truth, double error, double place, double every, SplittableRandom random) {
        this.setup = setup;
        this.truth = truth;
        this.error = error;
        this.place = place;
        this.every = every;
        this.random = random;
        drift = drift(random, truth.curves().discrepancy(), Math.max(300, Math.min(2400, setup.longest() / 4)));
    }

    static TwinCook of(LiveSetup setup, long seed) {
        return of(setup, seed, List.of());
    }

    static TwinCook of(LiveSetup setup, long seed, List<CookEvent> events) {
        SplittableRandom random = new SplittableRandom(7_000_003L * seed + 11);
        List<double[]> variates = new ArrayList<>();
        for (int d = 0; d < LuckSpace.OWN; d++) {
            // a truth within the bands of the inputs; nothing is claimed beyond them
            variates.add(new double[] {Math.max(-2.5, Math.min(2.5, random.nextGaussian()))});
        }
        Course course = Course.of(setup, events);
        double until = 2.5 * setup.longest() + 3600;
        Swarm truth = new Swarm.Scene(setup, course, SolidLag.of(setup, Course.of(setup, List.of())), until, 1, 1)
                .simulate(variates, new double[1], random.split(), Runnable::run);
        return new TwinCook(
                setup,
                truth,
                LuckSpace.probeError(random.nextGaussian()),
                LuckSpace.place(Math.max(-2, Math.min(2, random.nextGaussian()))),
                Math.max(15, setup.longest() / 150),
                random);
    }

    /** True time at which it should come out [s]. */
    double pullTime() {
        return timeAtCore(truth.levels(0).pull());
    }

    double timeAtCore(double level) {
        double t = 0;
        while (core(t) < level && t < 1e6) {
            t += 1;
        }
        return t;
    }

    double core(double time) {
        return truth.core(0, time) + drift(time);
    }

    /** Error of the model, an Ornstein-Uhlenbeck process: no real piece is one of the ensemble. */
    private double drift(double time) {
        double position = time / DRIFT_STEP;
        int k = Math.min(drift.length - 2, (int) position);
        return drift[k] + (position - k) * (drift[k + 1] - drift[k]);
    }

    private static double[] drift(SplittableRandom random, double spread, double correlation) {
        double[] drift = new double[DRIFT_POINTS];
        double keep = Math.exp(-DRIFT_STEP / correlation);
        drift[0] = spread * random.nextGaussian();
        for (int k = 1; k < drift.length; k++) {
            drift[k] = keep * drift[k - 1] + spread * Math.sqrt(1 - keep * keep) * random.nextGaussian();
        }
        return drift;
    }

    double above(double time) {
        return truth.temperature(0, time, place) - truth.core(0, time);
    }

    double every() {
        return every;
    }

    double pace() {
        return truth.pace(0);
    }

    Reading reading(double time) {
        double shown = truth.temperature(0, time, place) + drift(time) + error + NOISE * random.nextGaussian();
        double celsius = Math.rint((shown - zero()) * 10) / 10;
        return new Reading("core", Reading.Role.CORE, time, celsius + zero());
    }

    private static double zero() {
        return io.github.saltfront.units.Temperature.ZERO_CELSIUS;
    }

    List<Reading> readings(double until) {
        List<Reading> list = new ArrayList<>();
        for (double t = 0; t <= until; t += every) {
            list.add(reading(t));
        }
        return list;
    }

    LiveSetup setup() {
        return setup;
    }
}
