package io.github.saltfront.app.store;

import java.util.Optional;

/**
 * A check of a thermometer as it is kept.
 *
 * @param id its id
 * @param instrument name of the thermometer
 * @param day the day, such as {@code 2026-11-28}
 * @param iceC reading in ice water [°C]
 * @param boiling the second point, if there was one
 * @param stepK smallest step the display can show [K]
 * @param note anything worth keeping
 * @param created when it was noted [ms since 1970]
 */
public record StoredCheck(
        String id,
        String instrument,
        String day,
        double iceC,
        Optional<Boiling> boiling,
        double stepK,
        String note,
        long created) {
    /**
     * The point in boiling water.
     *
     * @param readingC reading [°C]
     * @param pointC true boiling point there and then [°C]
     * @param boundK bound on that boiling point [K]
     */
    public record Boiling(double readingC, double pointC, double boundK) {}
}
