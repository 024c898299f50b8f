package io.github.saltfront.safety;

/**
 * What is known about the error of a thermometer. Both bounds are straight lines in the reading, so that a curve which is
 * linear between readings stays linear.
 */
public sealed interface ProbeError permits InstrumentCheck, DeclaredProbeError, UnknownProbeError {
    /**
     * Returns the lowest temperature that a reading can mean.
     *
     * @param reading temperature shown [K]
     * @return lower bound of the temperature at the tip [K]
     */
    double lower(double reading);

    /**
     * Returns the highest temperature that a reading can mean.
     *
     * @param reading temperature shown [K]
     * @return upper bound of the temperature at the tip [K]
     */
    double upper(double reading);

    /** Returns whether the error is known, so that the bounds mean something. */
    boolean isKnown();

    /** Returns how the error was found, for people. */
    String describe();
}
