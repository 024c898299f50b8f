package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;
import java.util.Arrays;

/**
 * Advances a three-dimensional piece by one attempted step of ROS34PW2. The approximate Jacobian keeps conduction between
 * cells, with a patch acting on its own cell only; the W method allows that the flows themselves use the interpolated
 * temperature under the patch.
 */
final class SolidStepper {
    private static final int STAGES = RosenbrockW.STAGES;

    /** Error left by the linear solver relative to the tolerance of a step [-]; far below, so that steps do not feel it. */
    private static final double LINEAR_SHARE = 0.02;

    final SolidState state;
    final SolidHeat heat;
    final SolidSystem system;
    final SolidSalt salt;
    final SurfaceBalance surface = new SurfaceBalance();
    final double[][] stageHeat;
    final double[][] stageHeatIn;
    final double[][] stageEvaporated;

    private final SolidLines lines;
    private final int cells;
    private final int faces;
    private final double[] enthalpy;
    private final double[] right;
    private final double[] sinks;
    private final double[] change;
    private final double[] baseCapacity;
    private final double[] flux;
    private final double[] slope;
    private final double[] baseSlope;
    private final double[] evaporation;

    /** Surface temperature of each patch at the start of the attempted step in degrees Celsius. */
    final double[] startSurface;

    private final double[] patchSurface;

    /** Temperature within at which that of each patch was found; NaN before the first evaluation of a stage. */
    private final double[] patchInner;

    private FaceCondition[] conditions = new FaceCondition[0];
    private double[] stageSalt;
    private boolean moving;
    private double lastStep;

    /** Error of the attempted step relative to the tolerance [-]. */
    double error;

    SolidStepper(SolidState state) {
        this.state = state;
        lines = state.lines;
        cells = state.cells;
        faces = state.faces;
        heat = new SolidHeat(state);
        system = new SolidSystem(lines);
        salt = new SolidSalt(state);
        stageHeat = new double[STAGES][cells];
        stageHeatIn = new double[STAGES][faces];
        stageEvaporated = new double[STAGES][faces];
        enthalpy = new double[cells];
        stageSalt = state.saltContent;
        right = new double[cells];
        sinks = new double[cells];
        change = new double[cells];
        baseCapacity = new double[cells];
        flux = new double[lines.patches];
        slope = new double[lines.patches];
        baseSlope = new double[lines.patches];
        evaporation = new double[lines.patches];
        startSurface = new double[lines.patches];
        patchSurface = new double[lines.patches];
        patchInner = new double[lines.patches];
    }

    void begin(StageInput input) {
        conditions = input.faces().toArray(new FaceCondition[0]);
        lastStep = 0;
        Arrays.fill(patchInner, SurfaceBalance.NO_GUESS);
        salt.begin(input);
        moving = !state.isUniform();
        for (SaltSource source : input.sources()) {
            moving |= !(source instanceof SaltSource.None);
        }
    }

    /** Whether salt is advanced in this stage. */
    boolean isMoving() {
        return moving;
    }

    FaceCondition condition(int face) {
        return conditions[face];
    }

    /** Attempts one step; stage vectors and error are left in this object, the state is not changed. */
    void attempt(double step, SolverSettings settings) {
        double rate = 1 / (step * RosenbrockW.GAMMA);
        for (int stage = 0; stage < STAGES; stage++) {
            combine(stage, state.enthalpy, stageHeat, enthalpy);
            stageSalt = moving ? salt.combine(stage) : state.saltContent;
            if (stage == 0) {
                heat.takeTemperatures();
            } else {
                heat.computeTemperatures(enthalpy, state.water, stageSalt);
            }
            evaluate(state.stageTime + RosenbrockW.stageTime(stage) * step);
            if (stage == 0) {
                System.arraycopy(patchSurface, 0, startSurface, 0, startSurface.length);
                factorHeat(rate);
                if (moving) {
                    salt.factor(rate);
                }
            }
            solveHeat(stage, step, rate, LINEAR_SHARE * settings.temperatureTolerance());
            if (moving) {
                salt.solve(stage, step, rate, LINEAR_SHARE * settings.saltTolerance() / state.heat.rawWater());
            }
        }
        lastStep = step;
        estimateError(settings);
    }

    static void combine(int stage, double[] base, double[][] stages, double[] result) {
        System.arraycopy(base, 0, result, 0, result.length);
        for (int j = 0; j < stage; j++) {
            double a = RosenbrockW.stageState(stage, j);
            double[] u = stages[j];
            if (a != 0) {
                for (int c = 0; c < result.length; c++) {
                    result[c] += a * u[c];
                }
            }
        }
    }

    private void evaluate(double time) {
        heat.computeConductances(state.water, stageSalt);
        heat.computeNet();
        if (moving) {
            salt.evaluate(heat.temperature, heat.net);
        }
        for (int p = 0; p < lines.patches; p++) {
            evaluatePatch(p, time);
        }
    }

    private void evaluatePatch(int p, double time) {
        FaceCondition condition = conditions[lines.patchFace[p]];
        int c = lines.patchCell[p];
        double activity = 0;
        if (condition.isDrying()) {
            activity = SurfaceBalance.waterActivity(state.water[c], stageSalt[c]);
        }
        double inner = lines.atPatch(heat.temperature, p);
        double byInner = 1 + slope[p] * lines.patchDistance[p] / heat.conductivity[c];
        solveSurface(p, condition, time, inner, activity, patchSurface[p] + byInner * (inner - patchInner[p]));
        patchInner[p] = inner;
        patchSurface[p] = surface.surface;
        flux[p] = surface.flux;
        slope[p] = surface.slope;
        evaporation[p] = surface.evaporation;
        heat.net[c] += lines.patchArea[p] * surface.flux;
    }

    /** Solves the surface balance over a patch; the result is in {@link #surface}. */
    void solveSurface(int p, FaceCondition condition, double time, double[] temperature, double activity) {
        solveSurface(p, condition, time, lines.atPatch(temperature, p), activity, SurfaceBalance.NO_GUESS);
    }

    private void solveSurface(
            int p, FaceCondition condition, double time, double inner, double activity, double guess) {
        double conductance = heat.conductivity[lines.patchCell[p]] / lines.patchDistance[p];
        surface.solve(condition, time, inner, conductance, activity, guess);
    }

    /** Sets the surface temperature of each patch in degrees Celsius from the temperatures of the cells at a time. */
    void computeSurface(double[] temperature, double time, double[] result) {
        for (int p = 0; p < lines.patches; p++) {
            FaceCondition condition = conditions[lines.patchFace[p]];
            int c = lines.patchCell[p];
            double activity = 0;
            if (condition.isDrying()) {
                activity = SurfaceBalance.waterActivity(state.water[c], state.saltContent[c]);
            }
            solveSurface(p, condition, time, temperature, activity);
            result[p] = surface.surface;
        }
    }

    private void factorHeat(double rate) {
        System.arraycopy(heat.capacity, 0, baseCapacity, 0, cells);
        System.arraycopy(slope, 0, baseSlope, 0, slope.length);
        double weight = 0;
        for (int c = 0; c < cells; c++) {
            sinks[c] = state.dryMass[c] * baseCapacity[c] * rate;
            weight += sinks[c];
        }
        for (int p = 0; p < lines.patches; p++) {
            sinks[lines.patchCell[p]] -= lines.patchArea[p] * slope[p];
        }
        system.factor(heat.conductance, sinks, weight);
    }

    private void solveHeat(int stage, double step, double rate, double accuracy) {
        System.arraycopy(heat.net, 0, right, 0, cells);
        for (int j = 0; j < stage; j++) {
            double scale = RosenbrockW.stageCoupling(stage, j) / step;
            double[] u = stageHeat[j];
            for (int c = 0; c < cells; c++) {
                right[c] += scale * state.dryMass[c] * u[c];
            }
        }
        double[] result = stageHeat[stage];
        guess(stage, step);
        system.solve(right, change, accuracy);
        for (int c = 0; c < cells; c++) {
            result[c] = change[c] * baseCapacity[c];
        }
        for (int f = 0; f < faces; f++) {
            double heatFlow = moving ? salt.carried(f, heat.temperature) : 0;
            double vapor = 0;
            for (int p = 0; p < lines.patches; p++) {
                if (lines.patchFace[p] == f) {
                    heatFlow += lines.patchArea[p] * (flux[p] + baseSlope[p] * change[lines.patchCell[p]]);
                    vapor += lines.patchArea[p] * evaporation[p];
                }
            }
            stageHeatIn[stage][f] = (heatFlow + coupled(stage, stageHeatIn, f) / step) / rate;
            stageEvaporated[stage][f] = (vapor + coupled(stage, stageEvaporated, f) / step) / rate;
        }
    }

    /** First guess for a stage: that of a slowly changing rate, from the last step or from the stages before. */
    private void guess(int stage, double step) {
        if (stage == 0) {
            double scale = lastStep > 0 ? step / lastStep : 0;
            for (int c = 0; c < cells; c++) {
                change[c] = scale * stageHeat[0][c] / baseCapacity[c];
            }
            return;
        }
        for (int c = 0; c < cells; c++) {
            change[c] = guess(stage, stageHeat, c) / baseCapacity[c];
        }
    }

    /** Stage vector at an index if the rate of the stage before still holds. */
    static double guess(int stage, double[][] stages, int index) {
        double sum = stages[stage - 1][index];
        for (int j = 0; j < stage; j++) {
            double before = j == stage - 1 ? 0 : RosenbrockW.stageCoupling(stage - 1, j);
            sum += RosenbrockW.GAMMA * (RosenbrockW.stageCoupling(stage, j) - before) * stages[j][index];
        }
        return sum;
    }

    /** Sets result = base + sum of m_i U_i; base and result may be the same. */
    static void addSolution(double[] base, double[][] stages, double[] result) {
        double m0 = RosenbrockW.solution(0);
        double m1 = RosenbrockW.solution(1);
        double m2 = RosenbrockW.solution(2);
        double m3 = RosenbrockW.solution(3);
        double[] u0 = stages[0];
        double[] u1 = stages[1];
        double[] u2 = stages[2];
        double[] u3 = stages[3];
        for (int i = 0; i < result.length; i++) {
            result[i] = base[i] + m0 * u0[i] + m1 * u1[i] + m2 * u2[i] + m3 * u3[i];
        }
    }

    static double coupled(int stage, double[][] stages, int index) {
        double sum = 0;
        for (int j = 0; j < stage; j++) {
            sum += RosenbrockW.stageCoupling(stage, j) * stages[j][index];
        }
        return sum;
    }

    private void estimateError(SolverSettings settings) {
        double tolerance = settings.temperatureTolerance();
        double sum = 0;
        double volume = 0;
        for (int c = 0; c < cells; c++) {
            double difference = 0;
            for (int j = 0; j < STAGES; j++) {
                difference += RosenbrockW.error(j) * stageHeat[j][c];
            }
            double scaled = difference / (baseCapacity[c] * tolerance);
            sum += lines.volume[c] * scaled * scaled;
            volume += lines.volume[c];
        }
        sum += moving ? salt.error(settings.saltTolerance()) : 0;
        error = Math.sqrt(sum / volume);
    }
}
