package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.InstrumentChecks;
import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.safety.InstrumentCheck;
import io.github.saltfront.safety.InstrumentHistory;
import io.github.saltfront.safety.ProbeError;
import io.github.saltfront.units.Temperature;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The thermometer bench: checks by instrument, and the correction that counts on a day. */
public final class Thermometers {
    private final InstrumentChecks checks;

    /**
     * Opens the bench.
     *
     * @param checks the checks as they are kept
     */
    public Thermometers(InstrumentChecks checks) {
        this.checks = checks;
    }

    /** Returns the checks as they are kept. */
    public InstrumentChecks checks() {
        return checks;
    }

    /**
     * Returns a check as the core knows it.
     *
     * @param stored the check as it is kept
     * @return the check
     * @throws IllegalArgumentException if a reading is too far off
     */
    public static InstrumentCheck check(StoredCheck stored) {
        double ice = Temperature.fromCelsius(stored.iceC());
        return stored.boiling()
                .map(b -> InstrumentCheck.twoPoint(
                        ice,
                        Temperature.fromCelsius(b.readingC()),
                        Temperature.fromCelsius(b.pointC()),
                        b.boundK(),
                        stored.stepK()))
                .orElseGet(() -> InstrumentCheck.icePoint(ice, stored.stepK()));
    }

    /**
     * Returns the history of a thermometer.
     *
     * @param instrument its name
     * @return its checks, the first day first; empty if there are none
     */
    public InstrumentHistory history(String instrument) {
        List<InstrumentHistory.Visit> visits = checks.of(instrument).stream()
                .map(stored -> new InstrumentHistory.Visit(LocalDate.parse(stored.day()), check(stored)))
                .toList();
        return new InstrumentHistory(visits);
    }

    /**
     * Returns the error of a thermometer on a day, by the last check up to it.
     *
     * @param instrument its name
     * @param day the day
     * @return the error; empty if it was not checked until then
     */
    public Optional<ProbeError> errorOn(String instrument, LocalDate day) {
        return history(instrument).on(day).map(InstrumentHistory.Visit::check);
    }
}
