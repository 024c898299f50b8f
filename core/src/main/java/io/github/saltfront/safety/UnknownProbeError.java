package io.github.saltfront.safety;

import io.github.saltfront.words.Phrases;

/** Nothing is known about the thermometer. Readings are taken as they stand and can prove nothing. */
public record UnknownProbeError() implements ProbeError {
    private static final Phrases PHRASES = Phrases.of(UnknownProbeError.class);

    @Override
    public double lower(double reading) {
        return reading;
    }

    @Override
    public double upper(double reading) {
        return reading;
    }

    @Override
    public boolean isKnown() {
        return false;
    }

    @Override
    public String describe() {
        return PHRASES.say("not-checked");
    }
}
