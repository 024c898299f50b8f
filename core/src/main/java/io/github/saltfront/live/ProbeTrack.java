package io.github.saltfront.live;

import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The readings of one probe in the meat, in order of time whatever the order they came in, and which of them count. Two readings
 * of one time count as the lower. A reading that jumps away opens a stretch that is left out until readings fit again, or until
 * they settle where meat can be: then the tip sits in another spot. Not thread-safe.
 */
final class ProbeTrack {
    private static final double HOTTEST = Temperature.fromCelsius(105);

    /** Difference from what was expected since the reading before that counts as a jump [K]; estimate. */
    private static final double JUMP = 2.5;

    /** Readings and time for which a probe must go on steadily before it is believed again. */
    private static final int SETTLED_READINGS = 3;

    private static final double SETTLED_TIME = 60;

    /** Difference between neighbors that is still steady [K]. */
    private static final double STEADY = 1.2;

    /** Longest time over which the expected slope is carried on [s]. */
    private static final double LONGEST_SLOPE = 1800;

    private final String probe;
    private final double bin;
    private final TreeMap<Double, Double> raw = new TreeMap<>();
    private final TreeMap<Double, ReadingState> states = new TreeMap<>();
    private final List<Accepted> accepted = new ArrayList<>();
    private final List<double[]> pending = new ArrayList<>();
    private final List<Integer> placeDimensions = new ArrayList<>();
    private final List<Double> told = new ArrayList<>();
    private int errorDimension = -1;
    private int spot;
    private int run;
    private int toldUsed;
    private boolean suspended;
    private boolean unitConfirmed;
    private boolean startDiffers;
    private long bandBin;
    private double[] bandStart = new double[2];
    private double[] bandEnd = new double[2];

    /** A reading that counts, with the number of its unbroken run and of the spot the tip sat in. */
    record Accepted(double time, double temperature, int run, int spot) {}

    ProbeTrack(String probe, double bin) {
        this.probe = probe;
        this.bin = bin;
    }

    String probe() {
        return probe;
    }

    /** Keeps a reading; false if it is known already and changes nothing. */
    boolean keep(double time, double temperature) {
        Double known = raw.get(time);
        if (known != null && known <= temperature) {
            return false;
        }
        raw.put(time, temperature);
        return true;
    }

    void confirmUnit() {
        unitConfirmed = true;
    }

    void move(double time) {
        told.add(time);
        told.sort(Double::compare);
    }

    TreeMap<Double, Double> raw() {
        return raw;
    }

    /** Makes a filter with nothing absorbed, in a swarm that may lack the dimensions of this probe. */
    ProbeFilter restart(Swarm swarm, double correlation, double doubt) {
        if (errorDimension < 0) {
            errorDimension = swarm.addDimension();
            placeDimensions.add(swarm.addDimension());
        }
        states.clear();
        accepted.clear();
        pending.clear();
        spot = 0;
        run = 0;
        toldUsed = 0;
        suspended = false;
        startDiffers = false;
        bandBin = Long.MIN_VALUE;
        return new ProbeFilter(swarm, errorDimension, placeDimensions.get(0), bin, correlation, doubt);
    }

    /** Judges the next reading in time and hands it to the filter if it counts. */
    ReadingState process(double time, double temperature, ProbeFilter filter, Swarm swarm, double[] weights) {
        ReadingState state = judge(time, temperature, filter, swarm, weights);
        states.put(time, state);
        if (state == ReadingState.ACCEPTED) {
            accepted.add(new Accepted(time, temperature, run, spot));
            pending.clear();
            suspended = false;
            filter.add(time, temperature, weights);
        } else {
            suspended |= !accepted.isEmpty();
        }
        return state;
    }

    private ReadingState judge(double time, double temperature, ProbeFilter filter, Swarm swarm, double[] weights) {
        if (time < 0) {
            return ReadingState.BEFORE_START;
        }
        double[] band = band(time, filter, weights);
        if (accepted.isEmpty() && !unitConfirmed && looksFahrenheit(temperature, band)) {
            return ReadingState.UNIT_IN_DOUBT;
        }
        if (temperature > HOTTEST) {
            pending.clear();
            return ReadingState.TOO_HOT_FOR_MEAT;
        }
        if (toldUsed < told.size() && time >= told.get(toldUsed)) {
            toldUsed++;
            newSpot(filter, swarm);
            return ReadingState.ACCEPTED;
        }
        if (accepted.isEmpty()) {
            return first(time, temperature, band);
        }
        Accepted last = accepted.get(accepted.size() - 1);
        double slope = (bandEnd[0] - bandStart[0]) / bin;
        double change = slope * Math.min(LONGEST_SLOPE, time - last.time);
        boolean goesOn = Math.abs(temperature - last.temperature - change) <= JUMP + 0.5 * Math.abs(change);
        boolean expected = Math.abs(temperature - band[0]) <= 2 * band[1] + 1;
        if (goesOn || expected) {
            run += suspended ? 1 : 0;
            return ReadingState.ACCEPTED;
        }
        pending.add(new double[] {time, temperature});
        if (settled(slope) && canBeInMeat(time, temperature, swarm, weights)) {
            run++;
            newSpot(filter, swarm);
            return ReadingState.ACCEPTED;
        }
        return suspended ? ReadingState.DOES_NOT_FIT : ReadingState.JUMPED;
    }

    private ReadingState first(double time, double temperature, double[] band) {
        if (Math.abs(temperature - band[0]) <= 4 * band[1] + 1) {
            return ReadingState.ACCEPTED;
        }
        pending.add(new double[] {time, temperature});
        if (settled((bandEnd[0] - bandStart[0]) / bin)) {
            startDiffers = true;
            return ReadingState.ACCEPTED;
        }
        return ReadingState.DOES_NOT_FIT;
    }

    /** The number is far off as it stands, and near what is expected if it were degrees Fahrenheit. */
    private static boolean looksFahrenheit(double temperature, double[] band) {
        double converted = Temperature.fromFahrenheit(Temperature.toCelsius(temperature));
        return Math.abs(temperature - band[0]) > 4 * band[1] + 6 && Math.abs(converted - band[0]) <= 3 * band[1] + 3;
    }

    private boolean settled(double slope) {
        int from = pending.size() - 1;
        while (from > 0) {
            double[] a = pending.get(from - 1);
            double[] b = pending.get(from);
            double change = slope * (b[0] - a[0]);
            if (Math.abs(b[1] - a[1] - change) > STEADY + 0.5 * Math.abs(change)) {
                break;
            }
            from--;
        }
        int count = pending.size() - from;
        return count >= SETTLED_READINGS && pending.get(pending.size() - 1)[0] - pending.get(from)[0] >= SETTLED_TIME;
    }

    /** Between the middle and a face of what the swarm expects, with some room. */
    private static boolean canBeInMeat(double time, double temperature, Swarm swarm, double[] weights) {
        double coldest = 0;
        double hottest = 0;
        for (int p = 0; p < weights.length; p++) {
            if (weights[p] > 0) {
                coldest += weights[p] * swarm.core(p, time);
                hottest += weights[p] * swarm.temperature(p, time, 0.9);
            }
        }
        double low = Math.min(coldest, hottest) - 5;
        double high = Math.max(coldest, hottest) + 5;
        return low <= temperature && temperature <= high;
    }

    private void newSpot(ProbeFilter filter, Swarm swarm) {
        spot++;
        if (placeDimensions.size() <= spot) {
            placeDimensions.add(swarm.addDimension());
        }
        filter.setPlace(placeDimensions.get(spot));
        bandBin = Long.MIN_VALUE;
    }

    private double[] band(double time, ProbeFilter filter, double[] weights) {
        long number = (long) Math.floor(time / bin);
        if (number != bandBin) {
            bandBin = number;
            bandStart = filter.band(number * bin, weights);
            bandEnd = filter.band((number + 1) * bin, weights);
        }
        double share = time / bin - number;
        return new double[] {bandStart[0] + share * (bandEnd[0] - bandStart[0]), Math.max(bandStart[1], bandEnd[1])};
    }

    List<Accepted> accepted() {
        return accepted;
    }

    Map<Double, ReadingState> states() {
        return states;
    }

    /** Whether readings are being left out at present. */
    boolean isSuspended() {
        return suspended || accepted.isEmpty() && !states.isEmpty();
    }

    ReadingState lastState() {
        return states.isEmpty() ? ReadingState.ACCEPTED : states.lastEntry().getValue();
    }

    boolean startDiffers() {
        return startDiffers;
    }

    /** Number of the spot the tip sits in, from 0. */
    int spot() {
        return spot;
    }

    int count(ReadingState state) {
        return (int) states.values().stream().filter(s -> s == state).count();
    }
}
