package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Kill, protein changes and juice along the temperature history of each cell. Within a step the rate is taken as exponential
 * in time between start, middle and end, which is exact for an exponential rate and a straight history; where the rate is
 * zero at one end of a half step, nothing is credited for it, which is the safe side for a rate with a lower limit.
 */
final class Kinetics {
    private static final double CELSIUS = LaneBlock.KELVIN;

    /** Change of a cell's temperature in one step above which the next one is made shorter [K]. */
    private static final double LARGEST_CHANGE = 4;

    /** Juice of a step that may come unexpectedly, by the error of its temperatures that is tolerated [kg/(m2.K)]. */
    private static final double MISS_PER_KELVIN = 0.005;

    /** Least factor on a step for that reason [-]. */
    private static final double LEAST_FACTOR = 0.3;

    /** Water that juice may not take from a cell, of what it holds [-]; keeps the state physical for any kinetics. */
    private static final double KEPT_WATER = 0.1;

    private final LaneBlock block;
    private final List<DoubleUnaryOperator> killRates;
    private final double largestMiss;
    private final Denaturation denaturation;
    private final boolean killing;
    private final boolean changing;
    private final double[][][] endKill;

    /** Temperature of each cell in the middle of the attempted step in degrees Celsius. */
    private final double[][] middleTemperature;

    private final double[] extentsOfCell;

    /** Juice that a step has brought to each face [kg/m2]. */
    private final double[] arrived;

    Kinetics(LaneBlock block, SolverSettings settings) {
        this.block = block;
        killRates = settings.killRates();
        largestMiss = MISS_PER_KELVIN * settings.temperatureTolerance();
        denaturation = settings.denaturation();
        killing = !killRates.isEmpty();
        changing = denaturation.reactions() > 0;
        endKill = new double[killRates.size()][block.cells][block.lanes];
        middleTemperature = Rows.of(block.cells, block.lanes);
        extentsOfCell = new double[denaturation.reactions()];
        arrived = new double[block.faces];
    }

    boolean changesComposition() {
        return changing;
    }

    /** Temperature of a cell within the attempted step in degrees Celsius, exact at both ends. */
    static double denseTemperature(
            LaneBlock block, LayerStepper stepper, double[][] endTemperature, int cell, int lane, double theta) {
        double slope = 0;
        for (int j = 0; j < RosenbrockW.STAGES; j++) {
            slope += RosenbrockW.denseSlope(j) * stepper.stageHeat[j][cell][lane];
        }
        slope /= block.capacity[cell][lane];
        double start = block.temperature[cell][lane];
        double square = theta * theta;
        return start + (endTemperature[cell][lane] - start) * square + slope * (theta - square);
    }

    /** Factor on the next step so that temperatures change by no more than a few kelvin where rates depend on them. */
    double stepFactor(int lane, double[][] endTemperature) {
        if (!killing && !changing) {
            return 1;
        }
        double largest = 0;
        for (int i = 0; i < block.cells; i++) {
            double end = endTemperature[i][lane];
            if (end > 40) {
                largest = Math.max(largest, Math.abs(end - block.temperature[i][lane]));
            }
        }
        return largest > LARGEST_CHANGE ? LARGEST_CHANGE / largest : 1;
    }

    /** Computes the temperatures in the middle of the attempted step and the kill at its end. */
    void computeEndKill(double[] step, LayerStepper stepper, double[][] endTemperature, boolean[] active) {
        for (int i = 0; (killing || changing) && i < block.cells; i++) {
            middleRow(block.temperature[i], endTemperature[i], middleTemperature[i]);
            Rows.addSlope(0.25, stepper.stageHeat, i, block.capacity[i], middleTemperature[i]);
        }
        for (int i = 0; killing && i < block.cells; i++) {
            for (int l = 0; l < block.lanes; l++) {
                if (active[l]) {
                    double start = block.temperature[i][l] + CELSIUS;
                    double end = endTemperature[i][l] + CELSIUS;
                    double middle = middleTemperature[i][l] + CELSIUS;
                    for (int k = 0; k < endKill.length; k++) {
                        endKill[k][i][l] = block.kill[k][i][l] + between(k, start, middle, end, step[l]);
                    }
                }
            }
        }
    }

    /** Mean of start and end with the weights of {@link #denseTemperature} in the middle; the slope is added to it. */
    private static void middleRow(double[] start, double[] end, double[] middle) {
        for (int l = 0; l < middle.length; l++) {
            middle[l] = 0.75 * start[l] + 0.25 * end[l];
        }
    }

    /** Kill of a kind while the temperature [K] goes from start over middle to end in a time [s]. */
    double between(int kind, double start, double middle, double end, double time) {
        DoubleUnaryOperator rate = killRates.get(kind);
        double rateMiddle = rate.applyAsDouble(middle);
        return 0.5
                * time
                * (exponentialMean(rate.applyAsDouble(start), rateMiddle)
                        + exponentialMean(rateMiddle, rate.applyAsDouble(end)));
    }

    /** Mean over time of a rate that changes exponentially from a to b; zero if either is zero. */
    static double exponentialMean(double a, double b) {
        if (!(a > 0 && b > 0)) {
            return 0;
        }
        double ratio = b / a;
        if (Math.abs(ratio - 1) < 1e-4) {
            return 0.5 * (a + b);
        }
        return (b - a) / Math.log(ratio);
    }

    /**
     * Temperature below which proteins are taken not to change, in degrees Celsius: at 20 degrees the half-life of myosin is
     * weeks in the default kinetics, and a soak in the refrigerator need not ask for rates.
     */
    private static final double NO_CHANGE_BELOW = 20;

    /** Share of a protein that may be left as it is in a step [-]. */
    private static final double NEGLIGIBLE_CHANGE = 1e-10;

    /** Takes over the kill and the protein changes of accepted steps. */
    void commit(double[] step, double[][] endTemperature, boolean[] accepted) {
        for (int k = 0; k < endKill.length; k++) {
            for (int l = 0; l < block.lanes; l++) {
                if (accepted[l]) {
                    Rows.copyLane(endKill[k], block.kill[k], l);
                }
            }
        }
        for (int r = 0; changing && r < block.extents.length; r++) {
            for (int i = 0; i < block.cells; i++) {
                for (int l = 0; l < block.lanes; l++) {
                    if (accepted[l]) {
                        changeProtein(r, i, l, step[l], endTemperature);
                    }
                }
            }
        }
    }

    private void changeProtein(int reaction, int cell, int lane, double step, double[][] endTemperature) {
        double start = block.temperature[cell][lane];
        double end = endTemperature[cell][lane];
        double extent = block.extents[reaction][cell][lane];
        if (Math.max(start, end) > NO_CHANGE_BELOW && 1 - extent > NEGLIGIBLE_CHANGE) {
            double middle = denaturation.rate(reaction, middleTemperature[cell][lane] + CELSIUS);
            double last = denaturation.rate(reaction, end + CELSIUS);
            if (start <= end && step * Math.max(middle, last) < NEGLIGIBLE_CHANGE) {
                return;
            }
            double first = denaturation.rate(reaction, start + CELSIUS);
            double integral = 0.5 * step * (exponentialMean(first, middle) + exponentialMean(middle, last));
            block.extents[reaction][cell][lane] = 1 - (1 - extent) * Math.exp(-integral);
        }
    }

    /**
     * Lets the juice go that the protein changes of a step have expelled: to the nearer face, whose film is fed with it, and what
     * the film cannot hold drips.
     *
     * @param lane which lane
     * @param step the step [s]
     * @return whether there was any
     */
    boolean expelJuice(int lane, double step) {
        boolean any = false;
        if (block.waterFixed[lane]) {
            return false;
        }
        for (int f = 0; f < block.faces; f++) {
            arrived[f] = 0;
        }
        for (int i = 0; i < block.cells; i++) {
            any |= expelFrom(i, lane);
        }
        for (int f = 0; f < block.faces; f++) {
            block.takeJuice(f, lane, arrived[f], step);
            drip(f, lane);
        }
        return any;
    }

    /** Factor on the next step so that the juice of one is about what those before let expect. */
    double juiceFactor(int lane) {
        double miss = 0;
        for (double[] face : block.juiceMiss) {
            miss = Math.max(miss, face[lane]);
        }
        return miss > largestMiss ? Math.max(LEAST_FACTOR, Math.sqrt(largestMiss / miss)) : 1;
    }

    private boolean expelFrom(int cell, int lane) {
        double[] water = block.water[cell];
        double[] salt = block.slotSalt[cell + 1];
        double[] expelled = block.expelled[cell];
        double most = 0;
        for (int r = 0; r < extentsOfCell.length; r++) {
            extentsOfCell[r] = block.extents[r][cell][lane];
            most = Math.max(most, extentsOfCell[r]);
        }
        if (most == 0) {
            return false;
        }
        double before = 1 + water[lane] + expelled[lane] + salt[lane];
        double wet = 1 + water[lane] + salt[lane];
        // a dry layer may hold less than no salt by the error of a step
        double share = denaturation.expelled(extentsOfCell, Math.max(0, salt[lane] / wet));
        double target = block.juiceFactor[lane] * share * before;
        double juice = Math.min(target - expelled[lane], water[lane] - KEPT_WATER * before);
        if (!(juice > 0)) {
            return false;
        }
        double dissolved = juice * salt[lane] / water[lane];
        double celsius = block.temperature[cell][lane];
        double enthalpy = juice * block.waterEnthalpy(lane, celsius) + dissolved * block.saltEnthalpy(lane, celsius);
        water[lane] -= juice;
        expelled[lane] += juice;
        salt[lane] -= dissolved;
        block.enthalpy[cell][lane] -= enthalpy;
        double mass = block.dryMass[cell][lane];
        block.dripEnthalpy[lane] += mass * enthalpy;
        int face = block.faces == 2 && cell < block.cells / 2 ? 1 : 0;
        arrived[face] += mass * juice;
        block.filmSalt[face][lane] += mass * dissolved;
        return true;
    }

    private void drip(int face, int lane) {
        double film = block.filmWater[face][lane];
        // what was fed beyond what came is not there to drip
        double over = film + Math.min(0, block.unfed[face][lane]) - LaneBlock.FILM_CAPACITY;
        if (over > 0) {
            double salt = block.filmSalt[face][lane] * over / film;
            block.filmWater[face][lane] -= over;
            block.filmSalt[face][lane] -= salt;
            block.dripWater[lane] += over;
            block.dripSalt[lane] += salt;
        }
    }

    /** Least kill of a kind over all cells; zero if none is computed. */
    double worst(int kind, int lane, boolean atEnd) {
        if (!killing) {
            return 0;
        }
        double[][] kill = atEnd ? endKill[kind] : block.kill[kind];
        double least = Double.POSITIVE_INFINITY;
        for (double[] row : kill) {
            least = Math.min(least, row[lane]);
        }
        return least;
    }
}
