package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Kill and protein changes along the temperature history of each cell, by the rules of {@link Kinetics}. Kill is followed at the
 * node of each cell and on each patch of the surface. The least is taken over the surface and those nodes that lie inside the
 * body: the node of a strongly cut cell is no place of the piece.
 */
final class SolidKinetics {
    private static final double CELSIUS = SolidState.KELVIN;

    /** Change of a cell's temperature in one step above which the next one is made shorter [K]. */
    private static final double LARGEST_CHANGE = 4;

    /** Water that juice may not take from a cell, of what it holds [-], as in {@link Kinetics}. */
    private static final double KEPT_WATER = 0.1;

    /** Place in a step just before its end, where a medium that jumps at the end has not jumped yet [-]. */
    private static final double BEFORE_END = 1 - 1e-9;

    private final SolidState state;
    private final List<DoubleUnaryOperator> killRates;
    private final Denaturation denaturation;
    private final boolean killing;
    private final boolean changing;
    private final boolean[] inside;
    private final double[][] endKill;
    private final double[][] endSurfaceKill;
    private final double[][] withinKill;
    private final double[][] withinSurfaceKill;
    private final double[] middle;
    private final double[] late;
    private final double[] surfaceMiddle;
    private final double[] surfaceLate;
    private final double[] extentsOfCell;
    private final double[] nodeZ;

    SolidKinetics(SolidState state, SolverSettings settings) {
        this.state = state;
        killRates = settings.killRates();
        killing = !killRates.isEmpty();
        denaturation = settings.denaturation();
        changing = denaturation.reactions() > 0;
        inside = state.lines.grid.nodesInside();
        endKill = new double[killRates.size()][state.cells];
        endSurfaceKill = new double[killRates.size()][state.lines.patches];
        withinKill = new double[killRates.size()][state.cells];
        withinSurfaceKill = new double[killRates.size()][state.lines.patches];
        middle = new double[state.cells];
        late = new double[state.cells];
        surfaceMiddle = new double[state.lines.patches];
        surfaceLate = new double[state.lines.patches];
        extentsOfCell = new double[denaturation.reactions()];
        nodeZ = state.lines.grid.nodes(2);
    }

    /** Temperature of a cell within the attempted step in degrees Celsius, exact at both ends. */
    static double denseTemperature(
            SolidState state, SolidStepper stepper, double[] endTemperature, int c, double theta) {
        double full = 0;
        double part = 0;
        for (int j = 0; j < RosenbrockW.STAGES; j++) {
            double u = stepper.stageHeat[j][c];
            full += RosenbrockW.solution(j) * u;
            part += RosenbrockW.dense(j, theta) * u;
        }
        double start = state.temperature[c];
        double scale = state.capacity[c];
        return start + part / scale + (endTemperature[c] - start - full / scale) * theta * theta;
    }

    /**
     * Factor on the next step so that temperatures change by no more than a few kelvin where rates depend on them. Nodes outside
     * the body do not count: a sliver of a cell there may follow its medium within microseconds.
     */
    double stepFactor(double[] endTemperature) {
        double largest = 0;
        for (int c = 0; (killing || changing) && c < endTemperature.length; c++) {
            if (inside[c] && endTemperature[c] > 40) {
                largest = Math.max(largest, Math.abs(endTemperature[c] - state.temperature[c]));
            }
        }
        return largest > LARGEST_CHANGE ? LARGEST_CHANGE / largest : 1;
    }

    /** Computes the kill at the end of the attempted step. */
    void computeEndKill(double step, SolidStepper stepper, double[] endTemperature) {
        if (killing) {
            addKill(step, 1, stepper, endTemperature, endKill, endSurfaceKill);
        }
    }

    /** Computes the kill within the attempted step, for {@link #leastWithin} and {@link #within}. */
    void computeWithin(double theta, double step, SolidStepper stepper, double[] endTemperature) {
        if (killing) {
            addKill(step, theta, stepper, endTemperature, withinKill, withinSurfaceKill);
        }
    }

    private void addKill(
            double step,
            double theta,
            SolidStepper stepper,
            double[] endTemperature,
            double[][] cells,
            double[][] surfaces) {
        for (int c = 0; c < middle.length; c++) {
            middle[c] = denseTemperature(state, stepper, endTemperature, c, 0.5 * theta);
            late[c] = denseTemperature(state, stepper, endTemperature, c, theta);
        }
        stepper.computeSurface(middle, state.stageTime + 0.5 * theta * step, surfaceMiddle);
        stepper.computeSurface(late, state.stageTime + Math.min(theta, BEFORE_END) * step, surfaceLate);
        for (int k = 0; k < cells.length; k++) {
            DoubleUnaryOperator rate = killRates.get(k);
            addKill(rate, theta * step, state.kill[k], state.temperature, middle, late, cells[k]);
            double[] start = stepper.startSurface;
            addKill(rate, theta * step, state.surfaceKill[k], start, surfaceMiddle, surfaceLate, surfaces[k]);
        }
    }

    private static void addKill(
            DoubleUnaryOperator rate,
            double time,
            double[] before,
            double[] first,
            double[] second,
            double[] third,
            double[] result) {
        for (int i = 0; i < result.length; i++) {
            double a = rate.applyAsDouble(first[i] + CELSIUS);
            double b = rate.applyAsDouble(second[i] + CELSIUS);
            double d = rate.applyAsDouble(third[i] + CELSIUS);
            double mean = Kinetics.exponentialMean(a, b) + Kinetics.exponentialMean(b, d);
            result[i] = before[i] + 0.5 * time * mean;
        }
    }

    /** Takes over the kill and the protein changes of an accepted step. */
    void commit(double step, SolidStepper stepper, double[] endTemperature) {
        for (int k = 0; k < endKill.length; k++) {
            System.arraycopy(endKill[k], 0, state.kill[k], 0, endKill[k].length);
            System.arraycopy(endSurfaceKill[k], 0, state.surfaceKill[k], 0, endSurfaceKill[k].length);
        }
        for (int r = 0; changing && r < state.extents.length; r++) {
            double[] extent = state.extents[r];
            for (int c = 0; c < extent.length; c++) {
                if (extent[c] < 1) {
                    double middle = denseTemperature(state, stepper, endTemperature, c, 0.5);
                    double a = denaturation.rate(r, state.temperature[c] + CELSIUS);
                    double b = denaturation.rate(r, middle + CELSIUS);
                    double d = denaturation.rate(r, endTemperature[c] + CELSIUS);
                    double mean = Kinetics.exponentialMean(a, b) + Kinetics.exponentialMean(b, d);
                    extent[c] = 1 - (1 - extent[c]) * Math.exp(-0.5 * step * mean);
                }
            }
        }
    }

    /** Whether the last step may have changed water, salt and enthalpy of the cells. */
    boolean changesComposition() {
        return changing && !state.piece.waterFixed();
    }

    /** Lets the juice go that the protein changes have expelled, to the film on the nearer face. */
    void expelJuice() {
        for (int c = 0; c < state.cells; c++) {
            for (int r = 0; r < extentsOfCell.length; r++) {
                extentsOfCell[r] = state.extents[r][c];
            }
            double water = state.water[c];
            double salted = state.saltContent[c];
            double before = 1 + water + state.expelled[c] + salted;
            double share = denaturation.expelled(extentsOfCell, Math.max(0, salted / (1 + water + salted)));
            double target = state.piece.juiceFactor() * share * before;
            double juice = Math.min(target - state.expelled[c], water - KEPT_WATER * before);
            if (juice > 0) {
                double salt = juice * salted / water;
                double celsius = state.temperature[c];
                double enthalpy = juice * state.waterEnthalpy(celsius) + salt * state.saltEnthalpy(celsius);
                state.water[c] -= juice;
                state.expelled[c] += juice;
                state.saltContent[c] -= salt;
                state.enthalpy[c] -= enthalpy;
                state.dripEnthalpy += state.dryMass[c] * enthalpy;
                int face = nodeZ[c] < 0 ? state.faces - 1 : 0;
                state.filmWater[face] += state.dryMass[c] * juice;
                state.filmSalt[face] += state.dryMass[c] * salt;
            }
        }
    }

    /** Lets drip what the faces cannot hold. */
    void drip() {
        for (int f = 0; f < state.faces; f++) {
            double over = state.filmWater[f] - LaneBlock.FILM_CAPACITY * state.faceArea[f];
            if (over > 0) {
                double salt = state.filmSalt[f] * over / state.filmWater[f];
                state.filmWater[f] -= over;
                state.filmSalt[f] -= salt;
                state.dripWater += over;
                state.dripSalt += salt;
            }
        }
    }

    /** Least kill of a kind over the surface and the nodes inside the body; zero if none is computed. */
    double least(int kind, boolean atEnd) {
        if (kind >= killRates.size()) {
            return 0;
        }
        return atEnd ? least(endKill[kind], endSurfaceKill[kind]) : least(state.kill[kind], state.surfaceKill[kind]);
    }

    /** Least kill of a kind at the place in the step that was computed last. */
    double leastWithin(int kind) {
        return kind < killRates.size() ? least(withinKill[kind], withinSurfaceKill[kind]) : 0;
    }

    /** Kill of a kind at a node at the place in the step that was computed last. */
    double within(int kind, int cell) {
        return kind < killRates.size() ? withinKill[kind][cell] : 0;
    }

    private double least(double[] atNodes, double[] onSurface) {
        double least = Arrays.stream(onSurface).min().orElseThrow();
        for (int c = 0; c < atNodes.length; c++) {
            least = inside[c] ? Math.min(least, atNodes[c]) : least;
        }
        return least;
    }
}
