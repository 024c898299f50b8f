package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/** A quantity of a medium, such as its temperature, as a function of the time since the stage began. */
public sealed interface TimeProfile {
    /**
     * Returns the value at a time.
     *
     * @param time time since the start of the stage [s], not negative
     * @return the value, in the unit of the quantity
     */
    double at(double time);

    /**
     * Returns the next time at which the profile has a kink or a jump; a solver must not step across it.
     *
     * @param time time since the start of the stage [s]
     * @return the first such time after the given one [s], or positive infinity
     */
    double nextBreak(double time);

    /**
     * Returns whether the value jumps at the breaks, so that what follows starts anew.
     *
     * @return true if it does
     */
    default boolean jumps() {
        return false;
    }

    /**
     * Returns a profile that does not change.
     *
     * @param value the value
     * @return the profile
     * @throws IllegalArgumentException if the value is not finite
     */
    static TimeProfile constant(double value) {
        return new Constant(value);
    }

    /**
     * A value that does not change.
     *
     * @param value the value
     */
    record Constant(double value) implements TimeProfile {
        /** Checks the value. */
        public Constant {
            Checks.requireFinite("value of a medium", value);
        }

        @Override
        public double at(double time) {
            return value;
        }

        @Override
        public double nextBreak(double time) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * A first-order approach: start + (end - start) (1 - exp(-time / timeConstant)).
     *
     * @param start value at the start of the stage
     * @param end value approached
     * @param timeConstant time constant [s]
     */
    record Approach(double start, double end, double timeConstant) implements TimeProfile {
        /** Checks the values. */
        public Approach {
            Checks.requireFinite("start value of a medium", start);
            Checks.requireFinite("end value of a medium", end);
            Checks.requirePositive("time constant of a medium", timeConstant, "s");
        }

        @Override
        public double at(double time) {
            return end + (start - end) * Math.exp(-time / timeConstant);
        }

        @Override
        public double nextBreak(double time) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * A straight ramp from start to end, constant afterwards.
     *
     * @param start value at the start of the stage
     * @param end value at the end of the ramp
     * @param duration how long the ramp takes [s]
     */
    record Ramp(double start, double end, double duration) implements TimeProfile {
        /** Checks the values. */
        public Ramp {
            Checks.requireFinite("start value of a medium", start);
            Checks.requireFinite("end value of a medium", end);
            Checks.requirePositive("duration of a ramp", duration, "s");
        }

        @Override
        public double at(double time) {
            return time >= duration ? end : start + (end - start) * time / duration;
        }

        @Override
        public double nextBreak(double time) {
            return time < duration ? duration : Double.POSITIVE_INFINITY;
        }
    }

    /**
     * A thermostat that swings in a triangle around its setting, as the heater goes on and off.
     *
     * @param mean mean value
     * @param amplitude half the swing
     * @param period time from one peak to the next [s]
     */
    record Cycling(double mean, double amplitude, double period) implements TimeProfile {
        /** Checks the values. */
        public Cycling {
            Checks.requireFinite("mean value of a medium", mean);
            Checks.requireInRange("amplitude of a cycling medium", amplitude, 0, 1000, "K");
            Checks.requirePositive("period of a cycling medium", period, "s");
        }

        @Override
        public double at(double time) {
            double phase = time / period - Math.floor(time / period);
            double triangle = phase < 0.25 ? 4 * phase : phase < 0.75 ? 2 - 4 * phase : 4 * phase - 4;
            return mean + amplitude * triangle;
        }

        @Override
        public double nextBreak(double time) {
            double quarter = Math.floor(time / period * 4 + 1e-9) + 1;
            double odd = quarter % 2 == 1 ? quarter : quarter + 1;
            return odd * period / 4;
        }
    }

    /**
     * Alternates between two values, such as a face that lies on a pan and is turned up again.
     *
     * @param first value in the first interval
     * @param second value in the second interval
     * @param interval length of each interval [s]
     */
    record Alternating(double first, double second, double interval) implements TimeProfile {
        /** Checks the values. */
        public Alternating {
            Checks.requireFinite("first value of a medium", first);
            Checks.requireFinite("second value of a medium", second);
            Checks.requirePositive("interval between turns", interval, "s");
        }

        @Override
        public double at(double time) {
            return Math.floor(time / interval + 1e-12) % 2 == 0 ? first : second;
        }

        @Override
        public double nextBreak(double time) {
            return (Math.floor(time / interval + 1e-9) + 1) * interval;
        }

        @Override
        public boolean jumps() {
            return true;
        }
    }
}
