package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.Locale;

/**
 * A check of a thermometer in ice water and, if possible, in boiling water at this altitude.
 *
 * <pre>e(r) = e_ice + (r - r_ice)/(r_boil - r_ice) (e_boil - e_ice),  e = reading - true
 * true = r - e(r) +- u(r),  u(r) = u_ice + (r - r_ice)/(r_boil - r_ice) (u_boil - u_ice) + step/2</pre>
 *
 * The bounds add up, they are not standard deviations. With the ice point alone the error found there is carried over and
 * the bound is the tolerance of the food code, 1 K, because nothing was seen near the cooking temperature.
 *
 * <p>Assumes a probe whose error runs straight from ice to boiling.
 *
 * @see "wac2022 (Food Code 4-203.11, tolerance); fsis2021 p. 20 (take the error off)"
 */
public final class InstrumentCheck implements ProbeError {
    private static final Phrases PHRASES = Phrases.of(InstrumentCheck.class);

    /** Bound on a well-made ice bath [K]; our estimate: impure water and poor stirring. */
    public static final double ICE_BATH_BOUND = 0.2;

    /**
     * Bound on the boiling point from altitude alone [K]; our estimate: weather moves the pressure by some 30 hPa around the
     * standard atmosphere, which is 0.83 K at 0.277 K per 10 hPa.
     */
    public static final double BOILING_BOUND_FROM_ALTITUDE = 0.9;

    /**
     * Bound on the boiling point from the pressure at the place [K]; our estimate: 5 hPa of a household barometer are 0.14 K, and as
     * much again for the depth of the tip and what is dissolved in the water.
     */
    public static final double BOILING_BOUND_FROM_PRESSURE = 0.3;

    /** Accuracy that the food code asks of a thermometer in Celsius [K]. */
    public static final double FOOD_CODE_TOLERANCE = 1.0;

    /** Largest error that is corrected [K]; our estimate: a worse probe is broken or was not in the bath. */
    private static final double LARGEST_ERROR = 5;

    private final double slope;
    private final double offset;
    private final double boundSlope;
    private final double boundOffset;
    private final double largestError;
    private final String description;

    private InstrumentCheck(Point ice, Point boiling, double boundAdded, String description) {
        double span = boiling.reading - ice.reading;
        double errorSlope = (boiling.error - ice.error) / span;
        this.slope = 1 - errorSlope;
        this.offset = -ice.error + errorSlope * ice.reading;
        this.boundSlope = (boiling.bound - ice.bound) / span;
        this.boundOffset = ice.bound + boundAdded - boundSlope * ice.reading;
        this.largestError = Math.max(Math.abs(ice.error), Math.abs(boiling.error));
        this.description = description;
    }

    /**
     * Takes a check at both points.
     *
     * @param iceReading what it showed in ice water [K]
     * @param boilingReading what it showed in boiling water [K]
     * @param boilingPoint true boiling point at this altitude or pressure [K], 340-380
     * @param boilingBound bound on that boiling point [K], 0-3; {@link #BOILING_BOUND_FROM_ALTITUDE} if only the altitude is known
     * @param step smallest step the display can show [K], 0-5
     * @return the check
     * @throws IllegalArgumentException if a value is out of range or the error at a point is above 5 K
     */
    public static InstrumentCheck twoPoint(
            double iceReading, double boilingReading, double boilingPoint, double boilingBound, double step) {
        Checks.requireInRange("boiling point", boilingPoint, 340, 380, "K");
        Checks.requireInRange("bound on the boiling point", boilingBound, 0, 3, "K");
        Checks.requireInRange("display step", step, 0, 5, "K");
        Point ice = point(PHRASES.say("ice-water"), iceReading, Temperature.ZERO_CELSIUS, ICE_BATH_BOUND);
        Point boiling = point(PHRASES.say("boiling-water"), boilingReading, boilingPoint, boilingBound);
        String text = PHRASES.say(
                "ice-water-read-c-boiling",
                Temperature.toCelsius(iceReading),
                ice.error,
                Temperature.toCelsius(boilingReading),
                boiling.error,
                Temperature.toCelsius(boilingPoint));
        return new InstrumentCheck(ice, boiling, step / 2, text);
    }

    /**
     * Takes a check in ice water only.
     *
     * @param iceReading what it showed in ice water [K]
     * @param step smallest step the display can show [K], 0-5
     * @return the check
     * @throws IllegalArgumentException if a value is out of range or the error is above 5 K
     */
    public static InstrumentCheck icePoint(double iceReading, double step) {
        Checks.requireInRange("display step", step, 0, 5, "K");
        Point ice = point(PHRASES.say("ice-water"), iceReading, Temperature.ZERO_CELSIUS, FOOD_CODE_TOLERANCE);
        Point carriedOver = new Point(iceReading + 100, ice.error, FOOD_CODE_TOLERANCE);
        String text = PHRASES.say("ice-water-read-c-no", Temperature.toCelsius(iceReading), ice.error);
        return new InstrumentCheck(ice, carriedOver, step / 2, text);
    }

    private static Point point(String where, double reading, double truth, double bound) {
        double error = reading - truth;
        if (!(Math.abs(error) <= LARGEST_ERROR)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "reading in %s must be within 5 °C of %.1f °C, got %.1f °C; repeat the check or replace the probe.",
                    where,
                    Temperature.toCelsius(truth),
                    Temperature.toCelsius(reading)));
        }
        return new Point(reading, error, bound);
    }

    /**
     * Returns the most likely temperature behind a reading.
     *
     * @param reading temperature shown [K]
     * @return corrected temperature [K]
     */
    public double corrected(double reading) {
        return slope * reading + offset;
    }

    /**
     * Returns the bound on the corrected temperature.
     *
     * @param reading temperature shown [K]
     * @return bound either way [K]
     */
    public double bound(double reading) {
        return boundSlope * reading + boundOffset;
    }

    @Override
    public double lower(double reading) {
        return corrected(reading) - bound(reading);
    }

    @Override
    public double upper(double reading) {
        return corrected(reading) + bound(reading);
    }

    @Override
    public boolean isKnown() {
        return true;
    }

    /** Returns whether the errors found are within what the food code asks of a thermometer, 1 K. */
    public boolean isWithinFoodCodeTolerance() {
        return largestError <= FOOD_CODE_TOLERANCE;
    }

    @Override
    public String describe() {
        return description;
    }

    /** One point of the check: reading, error and bound [K]. */
    private record Point(double reading, double error, double bound) {}
}
