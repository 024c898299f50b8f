package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.matter.IapwsIf97Saturation;
import io.github.saltfront.matter.StandardAtmosphere;
import io.github.saltfront.safety.InstrumentCheck;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityParser;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.UUID;

/**
 * A check of a thermometer as a cook writes it; a bare number is in °C and m.
 *
 * @param instrument name of the thermometer
 * @param ice reading in ice water
 * @param boiling reading in boiling water
 * @param altitude height above the sea
 * @param pressure pressure of the air at the place
 * @param step smallest step of the display
 * @param day the day; today if it is empty
 * @param note anything worth keeping
 */
public record CheckInput(
        String instrument,
        String ice,
        Optional<String> boiling,
        Optional<String> altitude,
        Optional<String> pressure,
        String step,
        Optional<String> day,
        String note) {
    private static final Phrases PHRASES = Phrases.of(CheckInput.class);

    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_NOTE = 500;
    private static final double HIGHEST = 6000;

    /**
     * Reads the check.
     *
     * @param today the day it is
     * @param now present time [ms since 1970]
     * @return the check, which the bench takes
     * @throws IllegalArgumentException if anything is wrong with it
     */
    public StoredCheck check(LocalDate today, long now) {
        if (instrument.isBlank() || instrument.length() > LONGEST_NAME || note.length() > LONGEST_NOTE) {
            throw new IllegalArgumentException(PHRASES.say("got-a-name-of-characters", instrument.length()));
        }
        StoredCheck check = new StoredCheck(
                UUID.randomUUID().toString(),
                instrument.strip(),
                dayOf(today).toString(),
                celsius("ice", ice),
                point(),
                quantity("step", step, "K", Dimension.TEMPERATURE_DIFFERENCE),
                note,
                now);
        Thermometers.check(check); // a reading that is too far off is refused before it is kept
        return check;
    }

    private LocalDate dayOf(LocalDate today) {
        try {
            return day.map(LocalDate::parse).orElse(today);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(PHRASES.say("day-got-expected-one-such", day.orElse("")), e);
        }
    }

    private Optional<StoredCheck.Boiling> point() {
        if (boiling.isEmpty()) {
            return Optional.empty();
        }
        if (altitude.isPresent() == pressure.isPresent()) {
            throw new IllegalArgumentException(PHRASES.say("a-reading-in-boiling-water"));
        }
        double air = pressure.isPresent()
                ? within(
                        "pressure",
                        quantity("pressure", pressure.get(), "hPa", Dimension.PRESSURE),
                        5e4,
                        1.1e5,
                        "500 to 1100 hPa")
                : StandardAtmosphere.pressure(within(
                        "altitude",
                        quantity("altitude", altitude.get(), "m", Dimension.LENGTH),
                        -500,
                        HIGHEST,
                        "-500 to 6000 m"));
        double bound = pressure.isPresent()
                ? InstrumentCheck.BOILING_BOUND_FROM_PRESSURE
                : InstrumentCheck.BOILING_BOUND_FROM_ALTITUDE;
        return Optional.of(new StoredCheck.Boiling(
                celsius("boiling", boiling.get()), Temperature.toCelsius(IapwsIf97Saturation.temperature(air)), bound));
    }

    private static double within(String name, double value, double low, double high, String range) {
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(PHRASES.say("expected-give-that-of-your", name, range));
        }
        return value;
    }

    /** To a millikelvin, so that what was typed is what is kept. */
    private static double celsius(String name, String text) {
        double temperature = quantity(name, text, "°C", Dimension.TEMPERATURE);
        return Math.rint(1000 * Temperature.toCelsius(temperature)) / 1000;
    }

    private static double quantity(String name, String text, String unit, Dimension dimension) {
        boolean bare = text.strip().matches("[-+]?[0-9]*\\.?[0-9]+");
        try {
            return QuantityParser.parse(bare ? text.strip() + " " + unit : text, dimension);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(name + ": " + e.getMessage(), e);
        }
    }
}
