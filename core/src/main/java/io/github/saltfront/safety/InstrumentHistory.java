package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The checks of one thermometer over time: which one counts, how far it has drifted, and when the next is due. The caller says what
 * day it is.
 *
 * @param visits checks, by day
 */
public record InstrumentHistory(List<Visit> visits) {
    /** Days between checks that we suggest; common practice, no source. Check at once after a fall or a new battery. */
    public static final int USUAL_DAYS = 30;

    /**
     * Change of the correction that calls for an earlier check [K]: half of what the food code allows in all.
     *
     * @see InstrumentCheck#FOOD_CODE_TOLERANCE
     */
    public static final double LARGEST_DRIFT = InstrumentCheck.FOOD_CODE_TOLERANCE / 2;

    /** Sorts the checks by day. */
    public InstrumentHistory {
        visits = visits.stream().sorted(Comparator.comparing(Visit::day)).toList();
    }

    /**
     * One check.
     *
     * @param day day of the check
     * @param check what it found
     */
    public record Visit(LocalDate day, InstrumentCheck check) {}

    /**
     * Returns the check that counts on a day.
     *
     * @param day the day
     * @return the last check up to that day; empty if there was none yet
     */
    public Optional<Visit> on(LocalDate day) {
        return visits.stream().filter(v -> !v.day().isAfter(day)).reduce((earlier, later) -> later);
    }

    /**
     * Returns how much the correction of a reading has changed from the last check but one to the last.
     *
     * @param reading temperature shown [K]
     * @return change [K]; empty with fewer than two checks
     */
    public OptionalDouble drift(double reading) {
        Checks.requireFinite("reading", reading);
        if (visits.size() < 2) {
            return OptionalDouble.empty();
        }
        InstrumentCheck before = visits.get(visits.size() - 2).check();
        InstrumentCheck last = visits.get(visits.size() - 1).check();
        return OptionalDouble.of(last.corrected(reading) - before.corrected(reading));
    }

    /**
     * Returns the day on which the next check is due: so many days after the last one, half as many if it had drifted by more than
     * {@link #LARGEST_DRIFT} at this reading.
     *
     * @param days days between checks [-], 1 to 3650
     * @param reading temperature that matters, such as that of the hold [K]
     * @return the day; empty if it was never checked, which means now
     */
    public Optional<LocalDate> dueOn(int days, double reading) {
        Checks.require(days >= 1 && days <= 3650, "days between checks must be 1 to 3650, got " + days + ".");
        if (visits.isEmpty()) {
            return Optional.empty();
        }
        boolean drifted = Math.abs(drift(reading).orElse(0)) > LARGEST_DRIFT;
        return Optional.of(visits.get(visits.size() - 1).day().plusDays(drifted ? Math.max(1, days / 2) : days));
    }

    /**
     * Returns how many days are left until the next check.
     *
     * @param today the day it is
     * @param days days between checks [-], 1 to 3650
     * @param reading temperature that matters [K]
     * @return days [-]; zero or below if it is due, zero if it was never checked
     */
    public long daysLeft(LocalDate today, int days, double reading) {
        return dueOn(days, reading)
                .map(due -> ChronoUnit.DAYS.between(today, due))
                .orElse(0L);
    }
}
