package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;
import java.util.function.DoubleUnaryOperator;

/** Kill and protein changes along the temperature history of each cell, by the rules of {@link Kinetics}. */
final class SolidKinetics {
    private static final double CELSIUS = SolidState.KELVIN;

    /** Change of a cell's temperature in one step above which the next one is made shorter [K]. */
    private static final double LARGEST_CHANGE = 4;

    /** Water that juice may not take from a cell, of what it holds [-], as in {@link Kinetics}. */
    private static final double KEPT_WATER = 0.1;

    private final SolidState state;
    private final DoubleUnaryOperator killRate;
    private final Denaturation denaturation;
    private final boolean killing;
    private final boolean changing;
    private final double[] endKill;
    private final double[] extentsOfCell;
    private final double[] nodeZ;

    SolidKinetics(SolidState state, SolverSettings settings) {
        this.state = state;
        killing = !settings.killRates().isEmpty();
        killRate = killing ? settings.killRates().get(0) : kelvin -> 0;
        denaturation = settings.denaturation();
        changing = denaturation.reactions() > 0;
        endKill = new double[state.cells];
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

    /** Factor on the next step so that temperatures change by no more than a few kelvin where rates depend on them. */
    double stepFactor(double[] endTemperature) {
        double largest = 0;
        for (int c = 0; (killing || changing) && c < endTemperature.length; c++) {
            if (endTemperature[c] > 40) {
                largest = Math.max(largest, Math.abs(endTemperature[c] - state.temperature[c]));
            }
        }
        return largest > LARGEST_CHANGE ? LARGEST_CHANGE / largest : 1;
    }

    /** Computes the kill at the end of the attempted step. */
    void computeEndKill(double step, SolidStepper stepper, double[] endTemperature) {
        for (int c = 0; killing && c < endKill.length; c++) {
            double middle = denseTemperature(state, stepper, endTemperature, c, 0.5);
            double a = killRate.applyAsDouble(state.temperature[c] + CELSIUS);
            double b = killRate.applyAsDouble(middle + CELSIUS);
            double d = killRate.applyAsDouble(endTemperature[c] + CELSIUS);
            double mean = Kinetics.exponentialMean(a, b) + Kinetics.exponentialMean(b, d);
            endKill[c] = state.kill[c] + 0.5 * step * mean;
        }
    }

    /** Takes over the kill and the protein changes of an accepted step. */
    void commit(double step, SolidStepper stepper, double[] endTemperature) {
        if (killing) {
            System.arraycopy(endKill, 0, state.kill, 0, endKill.length);
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

    /** Lets the juice go that the protein changes have expelled: to the film on the nearer face, and what it cannot hold drips. */
    void expelJuice() {
        for (int c = 0; c < state.cells; c++) {
            for (int r = 0; r < extentsOfCell.length; r++) {
                extentsOfCell[r] = state.extents[r][c];
            }
            double water = state.water[c];
            double salted = state.saltContent[c];
            double before = 1 + water + state.expelled[c] + salted;
            double target = denaturation.expelled(extentsOfCell, salted / (1 + water + salted)) * before;
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

    /** Least kill over all cells. */
    double least(boolean atEnd) {
        double least = Double.POSITIVE_INFINITY;
        for (double kill : atEnd && killing ? endKill : state.kill) {
            least = Math.min(least, kill);
        }
        return least;
    }
}
