package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.OptionalDouble;

/**
 * Where the tip sat, told as how much colder the coldest spot may have been.
 *
 * @param deduction difference taken off every reading [K], 0-30; empty if nobody vouches for the place
 */
public record Placement(OptionalDouble deduction) {
    private static final Phrases PHRASES = Phrases.of(Placement.class);

    /** Checks the deduction. */
    public Placement {
        deduction.ifPresent(d -> Checks.requireInRange("distance from the coldest spot", d, 0, 30, "K"));
    }

    /**
     * The tip was at the coldest spot, or at one no warmer than the given difference.
     *
     * @param kelvin how much colder the coldest spot may have been [K]; 0 if the tip was in it
     * @return the placement
     */
    public static Placement colderBy(double kelvin) {
        return new Placement(OptionalDouble.of(kelvin));
    }

    /** Nobody vouches for the place of the tip. */
    public static Placement unknown() {
        return new Placement(OptionalDouble.empty());
    }

    /** Returns whether somebody vouches for the place. */
    public boolean isKnown() {
        return deduction.isPresent();
    }

    /** Returns the placement for people. */
    public String describe() {
        return deduction.isEmpty()
                ? PHRASES.say("not-stated")
                : PHRASES.say("coldest-spot-at-most-c", deduction.getAsDouble());
    }
}
