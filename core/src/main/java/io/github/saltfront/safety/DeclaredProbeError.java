package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import java.util.Locale;

/**
 * An error bound that the user vouches for, for example from a calibration certificate.
 *
 * @param bound largest difference between reading and truth [K], 0-5
 */
public record DeclaredProbeError(double bound) implements ProbeError {
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
        return String.format(Locale.ROOT, "declared, up to %.1f °C either way", bound);
    }
}
