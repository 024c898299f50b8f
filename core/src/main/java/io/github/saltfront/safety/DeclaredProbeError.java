package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;

/**
 * An error bound that the user vouches for, for example from a calibration certificate.
 *
 * @param bound largest difference between reading and truth [K], 0-5
 */
public record DeclaredProbeError(double bound) implements ProbeError {
    private static final Phrases PHRASES = Phrases.of(DeclaredProbeError.class);

    /** Checks the bound. */
    public DeclaredProbeError {
        Checks.requireInRange("probe error", bound, 0, 5, "K");
    }

    @Override
    public double lower(double reading) {
        return reading - bound;
    }

    @Override
    public double upper(double reading) {
        return reading + bound;
    }

    @Override
    public boolean isKnown() {
        return true;
    }

    @Override
    public String describe() {
        return PHRASES.say("declared-up-to-c-either", bound);
    }
}
