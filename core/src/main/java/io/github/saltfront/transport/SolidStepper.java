package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;

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
    private FaceCondition[] conditions = new FaceCondition[0];
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
        stageHeat = new double[STAGES][cells];
        stageHeatIn = new double[STAGES][faces];
        stageEvaporated = new double[STAGES][faces];
        enthalpy = new double[cells];
        right = new double[cells];
        sinks = new double[cells];
        change = new double[cells];
        baseCapacity = new double[cells];
        flux = new double[lines.patches];
        slope = new double[lines.patches];
        baseSlope = new double[lines.patches];
        evaporation = new double[lines.patches];
    }

    void begin(StageInput input) {
        conditions = input.faces().toArray(new FaceCondition[0]);
        lastStep = 0;
    }

    FaceCondition condition(int face) {
        return conditions[face];
    }

    /** Attempts one step; stage vectors and error are left in this object, the state is not changed. */
    void attempt(double step, SolverSettings settings) {
        double rate = 1 / (step * RosenbrockW.GAMMA);
        for (int stage = 0; stage < STAGES; stage++) {
            combine(stage, state.enthalpy, stageHeat, enthalpy);
            if (stage == 0) {
                heat.takeTemperatures();
            } else {
                heat.computeTemperatures(enthalpy, state.water, state.saltContent);
            }
            evaluate(state.stageTime + RosenbrockW.stageTime(stage) * step);
            if (stage == 0) {
                factorHeat(rate);
            }
            solveHeat(stage, step, rate, LINEAR_SHARE * settings.temperatureTolerance());
        }
        lastStep = step;
        estimateError(settings.temperatureTolerance());
    }

    private static void combine(int stage, double[] base, double[][] stages, double[] result) {
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
        heat.computeConductances(state.water, state.saltContent);
        heat.computeNet();
        for (int p = 0; p < lines.patches; p++) {
            evaluatePatch(p, time);
        }
    }

    private void evaluatePatch(int p, double time) {
        FaceCondition condition = conditions[lines.patchFace[p]];
        int c = lines.patchCell[p];
        double activity = 0;
        if (condition.wetShare() > 0) {
            activity = SurfaceBalance.waterActivity(state.water[c], state.saltContent[c]);
        }
        solveSurface(p, condition, time, heat.temperature, activity);
        flux[p] = surface.flux;
        slope[p] = surface.slope;
        evaporation[p] = surface.evaporation;
        heat.net[c] += lines.patchArea[p] * surface.flux;
    }

    /** Solves the surface balance over a patch; the result is in {@link #surface}. */
    void solveSurface(int p, FaceCondition condition, double time, double[] temperature, double activity) {
        double inner = lines.atPatch(temperature, p);
        double conductance = heat.conductivity[lines.patchCell[p]] / lines.patchDistance[p];
        surface.solve(condition, time, inner, conductance, activity);
    }

    private void factorHeat(double rate) {
        System.arraycopy(heat.capacity, 0, baseCapacity, 0, cells);
        System.arraycopy(slope, 0, baseSlope, 0, slope.length);
        for (int c = 0; c < cells; c++) {
            sinks[c] = state.dryMass[c] * baseCapacity[c] * rate;
        }
        for (int p = 0; p < lines.patches; p++) {
            sinks[lines.patchCell[p]] -= lines.patchArea[p] * slope[p];
        }
        system.factor(heat.conductance, sinks);
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
            double heatFlow = 0;
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
        double[] sum = change;
        java.util.Arrays.fill(sum, 0);
        for (int j = 0; j < stage; j++) {
            double own = j == stage - 1 ? 1 : -RosenbrockW.GAMMA * RosenbrockW.stageCoupling(stage - 1, j);
            double a = own + RosenbrockW.GAMMA * RosenbrockW.stageCoupling(stage, j);
            double[] u = stageHeat[j];
            for (int c = 0; c < cells; c++) {
                sum[c] += a * u[c];
            }
        }
        for (int c = 0; c < cells; c++) {
            sum[c] /= baseCapacity[c];
        }
    }

    private static double coupled(int stage, double[][] stages, int index) {
        double sum = 0;
        for (int j = 0; j < stage; j++) {
            sum += RosenbrockW.stageCoupling(stage, j) * stages[j][index];
        }
        return sum;
    }

    private void estimateError(double tolerance) {
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
        error = Math.sqrt(sum / volume);
    }
}
