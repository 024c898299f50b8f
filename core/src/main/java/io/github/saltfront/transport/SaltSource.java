package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/** What a face can take salt and water from, or give them to. Amounts are per area of that face. */
public sealed interface SaltSource {
    /** No exchange of salt and water but evaporation. */
    SaltSource NONE = new None();

    /**
     * Returns a multiple of the source, where its salt and water lie on less or more area.
     *
     * @param factor amount per area over the present one [-]
     * @return the source
     */
    SaltSource times(double factor);

    /** No exchange. */
    record None() implements SaltSource {
        @Override
        public SaltSource times(double factor) {
            return this;
        }
    }

    /**
     * A finite, well mixed bath.
     *
     * @param saltPerArea salt in the bath at the start [kg/m2]
     * @param waterPerArea water in the bath at the start [kg/m2]
     * @param swelling excess water of meat at equilibrium with the bath
     */
    record Bath(double saltPerArea, double waterPerArea, Swelling swelling) implements SaltSource {
        /** Checks the values. */
        public Bath {
            Checks.requireInRange("salt of the bath per area", saltPerArea, 0, 1e6, "kg/m2");
            Checks.requireInRange("water of the bath per area", waterPerArea, 1e-6, 1e9, "kg/m2");
        }

        @Override
        public SaltSource times(double factor) {
            return new Bath(factor * saltPerArea, factor * waterPerArea, swelling);
        }
    }

    /**
     * Dry salt on the face, which forms a saturated film until it is used up. The last hundredth of the dose is treated as
     * a film that thins out, so that the supply ends smoothly.
     *
     * @param saltPerArea salt on the face [kg/m2]
     * @param saturation salt per water of a saturated brine [kg/kg]
     * @param film salt at which the film has half the strength of a saturated brine [kg/m2]; what a stage leaves keeps the film of
     *     the whole dose, so that its strength goes on where it was
     */
    record Dose(double saltPerArea, double saturation, double film) implements SaltSource {
        /** Share of the dose at which the film has thinned to half its strength [-]; small against the error of any spoon. */
        private static final double THIN_FILM_SHARE = 0.01;

        /** Checks the values. */
        public Dose {
            Checks.requireInRange("dose of salt per area", saltPerArea, 1e-9, 1e3, "kg/m2");
            Checks.requireInRange("saturation", saturation, 1e-3, 1e6, "kg/kg");
            Checks.requireInRange("salt of the thin film per area", film, 1e-12, 1e3, "kg/m2");
        }

        /**
         * Lays a dose on.
         *
         * @param saltPerArea salt on the face [kg/m2]
         * @param saturation salt per water of a saturated brine [kg/kg]
         */
        public Dose(double saltPerArea, double saturation) {
            this(saltPerArea, saturation, THIN_FILM_SHARE * saltPerArea);
        }

        @Override
        public SaltSource times(double factor) {
            return new Dose(factor * saltPerArea, saturation, factor * film);
        }
    }

    /** Excess water of meat that is at equilibrium with a brine. */
    @FunctionalInterface
    interface Swelling {
        /** No swelling. */
        Swelling NONE = saltPerWater -> 0;

        /**
         * Returns the excess water.
         *
         * @param saltPerWater salt per water of the brine [kg/kg]
         * @return water gained per dry solids [kg/kg], negative if the meat loses water
         */
        double excessWater(double saltPerWater);
    }
}
