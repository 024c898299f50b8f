package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;
import java.util.Arrays;

/**
 * Diffusion of salt between the cells of a three-dimensional grid and with what lies on its faces, on salt per water as in
 * {@link SaltTerms}; the water of a cell does not change. A bath is one reservoir for its face; dry salt lies on each patch by
 * itself.
 */
final class SolidSalt {
    private static final double CELSIUS = SolidState.KELVIN;
    private static final int STAGES = RosenbrockW.STAGES;

    private final SolidState state;
    private final SolidLines lines;
    private final SaltSource[] sources;
    private final double[] mobility;
    private final double[] potential;
    private final double[][] conductance;
    private final double[] net;
    private final double[] sinks;
    private final double[] right;
    private final double[] change;
    private final double[] salt;
    private final double[] dose;
    private final double[] bath;

    /** Conductance between patch and point inside [kg/(m2.s)], its value at the base of the step, and flow into the meat. */
    private final double[] through;

    private final double[] baseThrough;
    private final double[] flow;

    /** Derivative of the equilibrium potential by the amount in the reservoir at the base of the step. */
    private final double[] doseSlope;

    private final double[] bathSlope;
    private final double[] bathThrough;
    private final double[][] border;

    final SolidSystem system;
    final double[][] stageSalt;
    final double[][] stageDose;
    final double[][] stageBath;

    SolidSalt(SolidState state) {
        this.state = state;
        lines = state.lines;
        int n = state.cells;
        sources = new SaltSource[state.faces];
        Arrays.fill(sources, SaltSource.NONE);
        mobility = new double[n];
        potential = new double[n];
        conductance = new double[3][n];
        net = new double[n];
        sinks = new double[n];
        right = new double[n];
        change = new double[n];
        salt = new double[n];
        dose = new double[lines.patches];
        bath = new double[state.faces];
        through = new double[lines.patches];
        baseThrough = new double[lines.patches];
        flow = new double[lines.patches];
        doseSlope = new double[lines.patches];
        bathSlope = new double[state.faces];
        bathThrough = new double[state.faces];
        border = new double[state.faces][lines.patches];
        system = new SolidSystem(lines);
        stageSalt = new double[STAGES][n];
        stageDose = new double[STAGES][lines.patches];
        stageBath = new double[STAGES][state.faces];
    }

    /** Sets the sources of a stage and fills the reservoirs; what an earlier stage left in them has gone with it. */
    void begin(StageInput input) {
        Arrays.fill(state.doseSalt, 0);
        for (int f = 0; f < state.faces; f++) {
            sources[f] = input.sources().get(f);
            state.bathSalt[f] = 0;
            state.bathWater[f] = 0;
        }
        for (int p = 0; p < lines.patches; p++) {
            int f = lines.patchFace[p];
            if (sources[f] instanceof SaltSource.Bath b) {
                state.bathSalt[f] += lines.patchArea[p] * b.saltPerArea();
                state.bathWater[f] += lines.patchArea[p] * b.waterPerArea();
            } else if (sources[f] instanceof SaltSource.Dose d) {
                state.doseSalt[p] = d.saltPerArea();
            }
        }
        for (double[] stage : stageSalt) {
            Arrays.fill(stage, 0);
        }
    }

    private static double thin(SaltSource.Dose source) {
        return source.film();
    }

    /** A straight line below zero: past the thin film the curve would turn round and give salt without end. */
    private static double held(double salt, SaltSource.Dose source) {
        return Math.max(0, salt) + thin(source);
    }

    /** Salt per water that a face meets [kg/kg]; for a dose that of the mean amount on its patches. */
    double strength(int face) {
        if (sources[face] instanceof SaltSource.Bath) {
            return state.bathSalt[face] / state.bathWater[face];
        }
        if (sources[face] instanceof SaltSource.Dose d) {
            double on = 0;
            for (int p = 0; p < lines.patches; p++) {
                on += lines.patchFace[p] == face ? lines.patchArea[p] * state.doseSalt[p] : 0;
            }
            double mean = on / state.faceArea[face];
            return d.saturation() * mean / held(mean, d);
        }
        return 0;
    }

    /** Combines the state of a stage and returns its salt [kg/kg]. */
    double[] combine(int stage) {
        SolidStepper.combine(stage, state.saltContent, stageSalt, salt);
        SolidStepper.combine(stage, state.doseSalt, stageDose, dose);
        SolidStepper.combine(stage, state.bathSalt, stageBath, bath);
        return salt;
    }

    /** Evaluates all flows of the combined state and adds the enthalpy they carry to the net flow of heat. */
    void evaluate(double[] temperature, double[] netHeat) {
        double density = state.heat.dryDensity();
        for (int c = 0; c < state.cells; c++) {
            mobility[c] = density * state.water[c] * state.salt.diffusivityAt(temperature[c] + CELSIUS);
            potential[c] = salt[c] / state.water[c];
        }
        lines.computeConductances(mobility, conductance);
        lines.computeNet(potential, conductance, net);
        boolean carries = state.carriesSaltEnthalpy();
        if (carries) {
            carry(temperature, netHeat);
        }
        for (int p = 0; p < lines.patches; p++) {
            int c = lines.patchCell[p];
            SaltSource source = sources[lines.patchFace[p]];
            double strength = 0;
            if (source instanceof SaltSource.Bath) {
                strength = bath[lines.patchFace[p]] / state.bathWater[lines.patchFace[p]];
            } else if (source instanceof SaltSource.Dose d) {
                strength = d.saturation() * dose[p] / held(dose[p], d);
            }
            double inner = mobility[c] / lines.patchDistance[p];
            boolean open = !(source instanceof SaltSource.None);
            through[p] = open ? inner / (1 + inner * state.salt.skinResistance()) : 0;
            flow[p] = open ? through[p] * (state.salt.partition() * strength - lines.atPatch(potential, p)) : 0;
            net[c] += lines.patchArea[p] * flow[p];
            if (carries) {
                netHeat[c] += lines.patchArea[p] * flow[p] * state.saltEnthalpy(temperature[c]);
            }
        }
    }

    /** Enthalpy that came in with the salt of a face, of the last evaluation [W]. */
    double carried(int face, double[] temperature) {
        double sum = 0;
        for (int p = 0; state.carriesSaltEnthalpy() && p < lines.patches; p++) {
            if (lines.patchFace[p] == face) {
                sum += lines.patchArea[p] * flow[p] * state.saltEnthalpy(temperature[lines.patchCell[p]]);
            }
        }
        return sum;
    }

    private void carry(double[] temperature, double[] netHeat) {
        for (int m = 0; m < lines.lines; m++) {
            int s = lines.start[m];
            carry(conductance[0], temperature, netHeat, s, s + 1, Math.max(0, lines.start[m + 1] - s - 1));
            carry(conductance[1], temperature, netHeat, s, lines.startY[m], lines.lengthY[m]);
            carry(conductance[2], temperature, netHeat, s, lines.startZ[m], lines.lengthZ[m]);
        }
    }

    private void carry(double[] g, double[] temperature, double[] netHeat, int first, int other, int count) {
        for (int i = 0; i < count; i++) {
            double salted = g[first + i] * (potential[other + i] - potential[first + i]);
            double between = 0.5 * (temperature[first + i] + temperature[other + i]);
            double enthalpy = salted * state.saltEnthalpy(between);
            netHeat[first + i] += enthalpy;
            netHeat[other + i] -= enthalpy;
        }
    }

    /** Factors the systems of this step; the dry salt of a patch is eliminated, a bath borders the matrix. */
    void factor(double rate) {
        System.arraycopy(through, 0, baseThrough, 0, through.length);
        double sum = 0;
        for (int c = 0; c < state.cells; c++) {
            sinks[c] = state.dryMass[c] * state.water[c] * rate;
            sum += sinks[c];
        }
        Arrays.fill(bathThrough, 0);
        for (int p = 0; p < lines.patches; p++) {
            int f = lines.patchFace[p];
            double g = lines.patchArea[p] * through[p];
            border[f][p] = 0;
            if (sources[f] instanceof SaltSource.Dose d) {
                double over = held(dose[p], d);
                doseSlope[p] = state.salt.partition() * d.saturation() * thin(d) / (over * over);
                sinks[lines.patchCell[p]] += g * rate / (rate + through[p] * doseSlope[p]);
            } else if (sources[f] instanceof SaltSource.Bath) {
                sinks[lines.patchCell[p]] += g;
                border[f][p] = g;
                bathThrough[f] += g;
            }
        }
        double[] pivots = new double[state.faces];
        for (int f = 0; f < state.faces; f++) {
            bathSlope[f] = bathThrough[f] > 0 ? state.salt.partition() / state.bathWater[f] : 0;
            pivots[f] = bathThrough[f] > 0 ? rate / bathSlope[f] + bathThrough[f] : 0;
        }
        system.factor(conductance, sinks, sum, border, pivots);
    }

    /** Solves one stage of cells and reservoirs. */
    void solve(int stage, double step, double rate, double accuracy) {
        System.arraycopy(net, 0, right, 0, right.length);
        for (int j = 0; j < stage; j++) {
            double scale = RosenbrockW.stageCoupling(stage, j) / step;
            double[] u = stageSalt[j];
            for (int c = 0; c < right.length; c++) {
                right[c] += scale * state.dryMass[c] * u[c];
            }
        }
        double[] bathRight = new double[state.faces];
        for (int f = 0; f < state.faces; f++) {
            bathRight[f] = SolidStepper.coupled(stage, stageBath, f) / step;
        }
        for (int p = 0; p < lines.patches; p++) {
            double g = lines.patchArea[p] * baseThrough[p];
            if (sources[lines.patchFace[p]] instanceof SaltSource.Dose) {
                double own = doseRight(stage, step, p) / (rate + baseThrough[p] * doseSlope[p]);
                right[lines.patchCell[p]] += g * doseSlope[p] * own;
            }
            bathRight[lines.patchFace[p]] -= lines.patchArea[p] * flow[p];
        }
        for (int p = 0; p < lines.patches; p++) {
            int f = lines.patchFace[p];
            if (border[f][p] > 0) {
                right[lines.patchCell[p]] +=
                        border[f][p] * bathSlope[f] * bathRight[f] / (rate + bathSlope[f] * bathThrough[f]);
            }
        }
        for (int c = 0; c < change.length; c++) {
            change[c] = stage == 0 ? 0 : SolidStepper.guess(stage, stageSalt, c) / state.water[c];
        }
        system.solve(right, change, accuracy);
        for (int c = 0; c < change.length; c++) {
            stageSalt[stage][c] = change[c] * state.water[c];
        }
        for (int p = 0; p < lines.patches; p++) {
            int f = lines.patchFace[p];
            double x = change[lines.patchCell[p]];
            bathRight[f] += border[f][p] * x;
            boolean dosed = sources[f] instanceof SaltSource.Dose;
            stageDose[stage][p] = dosed
                    ? (doseRight(stage, step, p) + baseThrough[p] * x) / (rate + baseThrough[p] * doseSlope[p])
                    : 0;
        }
        for (int f = 0; f < state.faces; f++) {
            boolean bathed = sources[f] instanceof SaltSource.Bath;
            stageBath[stage][f] = bathed ? bathRight[f] / (rate + bathSlope[f] * bathThrough[f]) : 0;
        }
    }

    private double doseRight(int stage, double step, int p) {
        return SolidStepper.coupled(stage, stageDose, p) / step - flow[p];
    }

    /** Sum of squares of the error of a step over the tolerance, weighted by volume; times the whole volume [m3]. */
    double error(double tolerance) {
        double sum = 0;
        for (int c = 0; c < state.cells; c++) {
            double difference = 0;
            for (int j = 0; j < STAGES; j++) {
                difference += RosenbrockW.error(j) * stageSalt[j][c];
            }
            sum += lines.volume[c] * difference * difference;
        }
        return sum / (tolerance * tolerance);
    }

    void addSolution(double[] endSalt) {
        SolidStepper.addSolution(state.saltContent, stageSalt, endSalt);
    }

    void commit(double[] endSalt) {
        System.arraycopy(endSalt, 0, state.saltContent, 0, endSalt.length);
        SolidStepper.addSolution(state.doseSalt, stageDose, state.doseSalt);
        SolidStepper.addSolution(state.bathSalt, stageBath, state.bathSalt);
    }
}
