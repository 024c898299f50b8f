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

    /** Water that juice may not take from a cell, of what it holds [-]; keeps the state physical for any kinetics. */
    private static final double KEPT_WATER = 0.1;

    private final LaneBlock block;
    private final List<DoubleUnaryOperator> killRates;
    private final Denaturation denaturation;
    private final boolean killing;
    private final boolean changing;
    private final double[][] endKill;
    private final double[] extentsOfCell;

    Kinetics(LaneBlock block, SolverSettings settings) {
        this.block = block;
        killRates = settings.killRates();
        denaturation = settings.denaturation();
        killing = !killRates.isEmpty();
        changing = denaturation.reactions() > 0;
        endKill = new double[killRates.size()][block.temperature.length];
        extentsOfCell = new double[denaturation.reactions()];
    }

    boolean changesComposition() {
        return changing;
    }

    /** Temperature of a cell within the attempted step in degrees Celsius, exact at both ends. */
    static double denseTemperature(
            LaneBlock block, LayerStepper stepper, double[] endTemperature, int c, double theta) {
        double full = 0;
        double part = 0;
        for (int j = 0; j < RosenbrockW.STAGES; j++) {
            double u = stepper.stageHeat[j][c];
            full += RosenbrockW.solution(j) * u;
            part += RosenbrockW.dense(j, theta) * u;
        }
        double start = block.temperature[c];
        double scale = block.capacity[c];
        return start + part / scale + (endTemperature[c] - start - full / scale) * theta * theta;
    }

    /** Factor on the next step so that temperatures change by no more than a few kelvin where rates depend on them. */
    double stepFactor(int lane, double[] endTemperature) {
        if (!killing && !changing) {
            return 1;
        }
        double largest = 0;
        for (int c = lane; c < endTemperature.length; c += block.lanes) {
            if (endTemperature[c] > 40) {
                largest = Math.max(largest, Math.abs(endTemperature[c] - block.temperature[c]));
            }
        }
        return largest > LARGEST_CHANGE ? LARGEST_CHANGE / largest : 1;
    }

    /** Computes the kill at the end of the attempted step. */
    void computeEndKill(double[] step, LayerStepper stepper, double[] endTemperature, boolean[] active) {
        for (int c = 0; killing && c < endTemperature.length; c++) {
            int l = c % block.lanes;
            if (active[l]) {
                double start = block.temperature[c];
                double end = endTemperature[c];
                double middle = denseTemperature(block, stepper, endTemperature, c, 0.5);
                for (int k = 0; k < endKill.length; k++) {
                    endKill[k][c] =
                            block.kill[k][c] + between(k, start + CELSIUS, middle + CELSIUS, end + CELSIUS, step[l]);
                }
            }
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

    /** Takes over the kill and the protein changes of accepted steps. */
    void commit(double[] step, LayerStepper stepper, double[] endTemperature, boolean[] accepted) {
        for (int k = 0; k < endKill.length; k++) {
            for (int c = 0; c < endKill[k].length; c++) {
                block.kill[k][c] = accepted[c % block.lanes] ? endKill[k][c] : block.kill[k][c];
            }
        }
        for (int r = 0; changing && r < block.extents.length; r++) {
            double[] extent = block.extents[r];
            for (int c = 0; c < extent.length; c++) {
                int l = c % block.lanes;
                boolean warm = Math.max(block.temperature[c], endTemperature[c]) > NO_CHANGE_BELOW;
                if (accepted[l] && warm && extent[c] < 1) {
                    double middle = denseTemperature(block, stepper, endTemperature, c, 0.5);
                    double a = denaturation.rate(r, block.temperature[c] + CELSIUS);
                    double b = denaturation.rate(r, middle + CELSIUS);
                    double d = denaturation.rate(r, endTemperature[c] + CELSIUS);
                    double integral = 0.5 * step[l] * (exponentialMean(a, b) + exponentialMean(b, d));
                    extent[c] = 1 - (1 - extent[c]) * Math.exp(-integral);
                }
            }
        }
    }

    /**
     * Lets the juice go that the protein changes have expelled: to the film on the nearer face, and what it cannot hold drips.
     *
     * @return whether there was any
     */
    boolean expelJuice(int lane) {
        boolean any = false;
        if (block.waterFixed[lane]) {
            return false;
        }
        for (int i = 0; i < block.cells; i++) {
            int c = i * block.lanes + lane;
            int s = c + block.lanes;
            for (int r = 0; r < extentsOfCell.length; r++) {
                extentsOfCell[r] = block.extents[r][c];
            }
            double before = 1 + block.water[c] + block.expelled[c] + block.slotSalt[s];
            double wet = 1 + block.water[c] + block.slotSalt[s];
            double target =
                    block.juiceFactor[lane] * denaturation.expelled(extentsOfCell, block.slotSalt[s] / wet) * before;
            double juice = Math.min(target - block.expelled[c], block.water[c] - KEPT_WATER * before);
            if (juice > 0) {
                any = true;
                double salt = juice * block.slotSalt[s] / block.water[c];
                double celsius = block.temperature[c];
                double enthalpy = juice * block.waterEnthalpy(lane, celsius) + salt * block.saltEnthalpy(lane, celsius);
                block.water[c] -= juice;
                block.expelled[c] += juice;
                block.slotSalt[s] -= salt;
                block.enthalpy[c] -= enthalpy;
                block.dripEnthalpy[lane] += block.dryMass[c] * enthalpy;
                int face = block.faces == 2 && i < block.cells / 2 ? 1 : 0;
                block.filmWater[face * block.lanes + lane] += block.dryMass[c] * juice;
                block.filmSalt[face * block.lanes + lane] += block.dryMass[c] * salt;
            }
        }
        for (int f = 0; f < block.faces; f++) {
            int k = f * block.lanes + lane;
            double over = block.filmWater[k] - LaneBlock.FILM_CAPACITY;
            if (over > 0) {
                double salt = block.filmSalt[k] * over / block.filmWater[k];
                block.filmWater[k] -= over;
                block.filmSalt[k] -= salt;
                block.dripWater[lane] += over;
                block.dripSalt[lane] += salt;
            }
        }
        return any;
    }

    /** Least kill of a kind over all cells; zero if none is computed. */
    double worst(int kind, int lane, boolean atEnd) {
        if (!killing) {
            return 0;
        }
        double[] kill = atEnd ? endKill[kind] : block.kill[kind];
        double least = Double.POSITIVE_INFINITY;
        for (int c = lane; c < kill.length; c += block.lanes) {
            least = Math.min(least, kill[c]);
        }
        return least;
    }
}
