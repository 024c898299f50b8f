package io.github.saltfront.app.store;

/**
 * A reading as it came in.
 *
 * @param cook id of the cook
 * @param probe name of the probe
 * @param role where the probe is
 * @param time time since the meat went into the heat [ms]
 * @param value what it showed, in its unit
 * @param unit C or F, as it was sent
 * @param source how it came: typed, http, file, mqtt or replay
 * @param received when it came [ms since 1970]
 */
public record StoredReading(
        String cook, String probe, String role, long time, double value, String unit, String source, long received) {}
