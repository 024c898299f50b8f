package io.github.saltfront.live;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** What a probe in the air of the oven says: how hot it really is, and when the door was opened. Not thread-safe. */
final class AirTrack {
    /** Standard deviation of one spot in the oven from the air that the meat feels [K]; estimate. */
    static final double SPOT_ERROR = 5;

    /** Time an oven takes to come back after the start or a change [s]; estimate. */
    private static final double SETTLING = 600;

    /** Time over which the present level is taken [s]. */
    private static final double WINDOW = 2400;

    /** Fall below the level that counts as an open door [K]; estimate: thermostats swing by less. */
    private static final double DOOR = 25;

    private static final int FEWEST = 5;

    private final TreeMap<Double, Double> readings = new TreeMap<>();

    boolean keep(double time, double temperature) {
        Double known = readings.put(time, temperature);
        return known == null || known != temperature;
    }

    /** Middle of the readings since the last change [K]; half of them lie below, so that a door does not move it. */
    OptionalDouble level(double lastChange) {
        if (readings.isEmpty()) {
            return OptionalDouble.empty();
        }
        double newest = readings.lastKey();
        double from = Math.max(lastChange + SETTLING, newest - WINDOW);
        Map<Double, Double> part = readings.tailMap(from, true);
        if (part.size() < FEWEST) {
            return OptionalDouble.empty();
        }
        double[] sorted =
                part.values().stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return OptionalDouble.of(sorted[sorted.length / 2]);
    }

    /** Whether the air has just fallen as it does when a door opens. */
    boolean doorSeen(double lastChange) {
        OptionalDouble level = level(lastChange);
        return level.isPresent() && readings.lastEntry().getValue() < level.getAsDouble() - DOOR;
    }
}
