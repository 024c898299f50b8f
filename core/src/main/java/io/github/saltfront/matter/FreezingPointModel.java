package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/** Initial freezing point of meat without added salt. */
public sealed interface FreezingPointModel {
    /**
     * Returns the initial freezing point [K].
     *
     * @param waterFraction water per mass of meat without added salt [kg/kg]
     * @return initial freezing point [K], below 0 degrees Celsius
     */
    double freezingPoint(double waterFraction);

    /**
     * Correlation for meat: {@code tf = 271.18 K + 1.47 K xw}. It gives -0.92 degrees Celsius for lean meat (xw 0.717), where
     * measured lean meat lies between -0.9 and -1.5; the food tables of ashrae2006 (-1.7 to -2.8) lie lower.
     *
     * @see "chang1981, correlation for meats"
     */
    record ChangTao1981() implements FreezingPointModel {
        /** Key of the source in the bibliography. */
        public static final String SOURCE = "chang1981";

        private static final double DRY = 271.18;
        private static final double SLOPE = 1.47;

        @Override
        public double freezingPoint(double waterFraction) {
            return DRY + SLOPE * waterFraction;
        }
    }

    /**
     * A freezing point that was measured or printed for this meat.
     *
     * @param value initial freezing point [K]
     */
    record Fixed(double value) implements FreezingPointModel {
        /**
         * Checks the value.
         *
         * @throws IllegalArgumentException if it is not within 30 K below 0 degrees Celsius
         */
        public Fixed {
            Checks.requireInRange(
                    "initial freezing point", value, Temperature.fromCelsius(-30), Temperature.fromCelsius(-1e-6), "K");
        }

        @Override
        public double freezingPoint(double waterFraction) {
            return value;
        }
    }
}
