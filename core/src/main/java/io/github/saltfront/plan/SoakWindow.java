package io.github.saltfront.plan;

import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.quality.Band;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.Simulation;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * When to take a piece out of its bath: the mean salt against time from the layer solver, once for the median diffusion
 * coefficient and once for each end of its 90 % band. All else is at its typical value, so the true band is wider.
 */
public final class SoakWindow {
    /** Standard deviations from the median to the 5 and the 95 % point of a normal distribution [-]. */
    private static final double NINETY_PERCENT = 1.6448536269514722;

    private static final int LAYERS = 40;
    private static final int SAMPLES_PER_STEP = 4;
    private static final SolverSettings SETTINGS = SolverSettings.DEFAULT.withTolerances(0.05, 5e-6);

    private final Band levels;
    private final List<Curve> curves;

    private SoakWindow(Band levels, List<Curve> curves) {
        this.levels = levels;
        this.curves = List.copyOf(curves);
    }

    /** How fast salt moves. */
    public enum Speed {
        /** 5 % point of the diffusion coefficient. */
        SLOW,
        /** Median. */
        MEDIAN,
        /** 95 % point, capped at what free water allows. */
        FAST
    }

    /**
     * Runs the solver.
     *
     * @param soak piece and bath
     * @param diffusivity diffusion coefficient with its spread
     * @param levels lowest, wanted and highest mean salt per mass of salted meat [kg/kg]
     * @param longest longest time to look at [s]
     * @return the window
     */
    public static SoakWindow of(Soak soak, SaltDiffusivity diffusivity, Band levels, double longest) {
        Checks.requireInRange("longest soak", longest, 60, 30 * 86400, "s");
        double energy = diffusivity.activationEnergy().typical();
        List<Member> members = new ArrayList<>();
        for (double z : new double[] {-NINETY_PERCENT, 0, NINETY_PERCENT}) {
            members.add(soak.member(diffusivity.at(soak.temperature(), z, energy)));
        }
        LayerGrid grid = Simulation.grid(soak.piece(diffusivity.medianAt5C()), false, LAYERS);
        LayerSolver solver = new LayerSolver(grid, members, SETTINGS);
        List<StageInput> inputs = new ArrayList<>();
        List<Recorder> recorders = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            inputs.add(new StageInput(
                    List.of(soak.face()), List.of(soak.source(solver.massPerArea(i))), longest, StopRule.NEVER));
            recorders.add(new Recorder(solver.meanSalt(i)));
        }
        solver.run(inputs, (s, member, start, end) -> {
            for (int k = 1; k <= SAMPLES_PER_STEP; k++) {
                double theta = (double) k / SAMPLES_PER_STEP;
                recorders.get(member).add(start + theta * (end - start), s.meanSalt(member, theta));
            }
        });
        return new SoakWindow(levels, recorders.stream().map(Recorder::curve).toList());
    }

    /**
     * Returns the mean salt after a time, per mass of salted meat [kg/kg].
     *
     * @param speed how fast salt moves
     * @param time time in the bath [s], up to the longest that was looked at
     * @return mean salt
     */
    public double meanSalt(Speed speed, double time) {
        return curves.get(speed.ordinal()).at(time);
    }

    /**
     * Returns the time at which the mean salt first passes a level, from below or, when meat is soaked out, from above.
     *
     * @param speed how fast salt moves
     * @param level mean salt per mass of salted meat [kg/kg]
     * @return time [s]; empty if the level is not reached in the time looked at
     */
    public OptionalDouble timeTo(Speed speed, double level) {
        Checks.requireInRange("level of salt", level, 0, 0.3, "kg/kg");
        return curves.get(speed.ordinal()).timeTo(level);
    }

    /** Returns the levels the window was made for [kg/kg]. */
    public Band levels() {
        return levels;
    }

    /** Returns when the lowest level is reached. */
    public Crossing first() {
        return crossing(levels.low());
    }

    /** Returns when the wanted level is reached. */
    public Crossing best() {
        return crossing(levels.typical());
    }

    /** Returns when the highest level is reached; empty times if never. */
    public Crossing latest() {
        return crossing(levels.high());
    }

    /**
     * Tells whether one time is right whatever the diffusion coefficient: the slowest meat is seasoned before the fastest is too
     * salty. If not, a weaker bath or the equilibrium dose is the better choice.
     *
     * @return true if there is such a time
     */
    public boolean isWiderThanItsUncertainty() {
        OptionalDouble slowest = timeTo(Speed.SLOW, levels.low());
        OptionalDouble fastest = timeTo(Speed.FAST, levels.high());
        return slowest.isPresent() && (fastest.isEmpty() || slowest.getAsDouble() <= fastest.getAsDouble());
    }

    private Crossing crossing(double level) {
        return new Crossing(timeTo(Speed.FAST, level), timeTo(Speed.MEDIAN, level), timeTo(Speed.SLOW, level));
    }

    /**
     * When a level is reached.
     *
     * @param earliest time if salt is fast [s]; empty if not reached
     * @param median time at the median [s]; empty if not reached
     * @param latest time if salt is slow [s]; empty if not reached
     */
    public record Crossing(OptionalDouble earliest, OptionalDouble median, OptionalDouble latest) {}

    private static final class Recorder {
        private final List<Double> times = new ArrayList<>();
        private final List<Double> salts = new ArrayList<>();

        Recorder(double start) {
            add(0, start);
        }

        void add(double time, double salt) {
            times.add(time);
            salts.add(salt);
        }

        Curve curve() {
            return new Curve(
                    times.stream().mapToDouble(t -> t).toArray(),
                    salts.stream().mapToDouble(s -> s).toArray());
        }
    }

    private static final class Curve {
        private final double[] times;
        private final double[] salts;

        Curve(double[] times, double[] salts) {
            this.times = times;
            this.salts = salts;
        }

        double at(double time) {
            Checks.requireInRange("time in the bath", time, 0, times[times.length - 1], "s");
            int i = 1;
            while (i < times.length - 1 && time > times[i]) {
                i++;
            }
            double share = (time - times[i - 1]) / (times[i] - times[i - 1]);
            return salts[i - 1] + share * (salts[i] - salts[i - 1]);
        }

        OptionalDouble timeTo(double level) {
            boolean rising = salts[0] < level;
            for (int i = 0; i < times.length; i++) {
                if (rising ? salts[i] >= level : salts[i] <= level) {
                    if (i == 0) {
                        return OptionalDouble.of(0);
                    }
                    double share = (level - salts[i - 1]) / (salts[i] - salts[i - 1]);
                    return OptionalDouble.of(times[i - 1] + share * (times[i] - times[i - 1]));
                }
            }
            return OptionalDouble.empty();
        }
    }
}
