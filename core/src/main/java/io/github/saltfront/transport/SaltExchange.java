package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/** What a stage offers the piece by way of salt; amounts are per mass of the piece. */
public sealed interface SaltExchange {
    /** Nothing. */
    SaltExchange NONE = new None();

    /** Nothing. */
    record None() implements SaltExchange {}

    /** What an earlier stage left undissolved on the surface. */
    SaltExchange KEEP = new Keep();

    /** What an earlier stage left undissolved on the surface; nothing if that was no dry salt. */
    record Keep() implements SaltExchange {
        /** Share of a dose below which nothing counts as left [-]. */
        private static final double NEXT_TO_NOTHING = 1e-4;

        /**
         * The salt that is left, from the strength of the film at the end of the stage, which falls with what is left of the
         * dose: {@code strength = saturation left / (left + thin film)}.
         */
        private static SaltSource left(SaltSource before, double strength) {
            if (!(before instanceof SaltSource.Dose dose)) {
                return SaltSource.NONE;
            }
            double left = Math.min(
                    dose.saltPerArea(), dose.film() * strength / Math.max(1e-12, dose.saturation() - strength));
            return left > NEXT_TO_NOTHING * dose.saltPerArea()
                    ? new SaltSource.Dose(left, dose.saturation(), dose.film())
                    : SaltSource.NONE;
        }
    }

    /**
     * A finite bath around the whole piece.
     *
     * @param saltPerMeat salt in the bath over mass of the piece at the start of the stage [kg/kg]
     * @param waterPerMeat water in the bath over mass of the piece at the start of the stage [kg/kg]
     * @param swelling excess water of meat at equilibrium with the bath
     */
    record Bath(double saltPerMeat, double waterPerMeat, SaltSource.Swelling swelling) implements SaltExchange {
        /** Checks the values. */
        public Bath {
            Checks.requireInRange("salt of the bath per mass of meat", saltPerMeat, 0, 1000, "kg/kg");
            Checks.requireInRange("water of the bath per mass of meat", waterPerMeat, 1e-3, 1e6, "kg/kg");
        }

        /**
         * Returns a bath of a given strength.
         *
         * @param strength salt per mass of solution [kg/kg]
         * @param solutionPerMeat mass of solution per mass of meat [kg/kg]
         * @param swelling excess water of meat at equilibrium with the bath
         * @return the bath
         */
        public static Bath of(double strength, double solutionPerMeat, SaltSource.Swelling swelling) {
            Checks.requireInRange("strength of the bath", strength, 0, 0.3, "kg/kg");
            return new Bath(strength * solutionPerMeat, (1 - strength) * solutionPerMeat, swelling);
        }
    }

    /**
     * Dry salt spread over the whole surface.
     *
     * @param saltPerMeat salt over mass of the piece at the start of the stage [kg/kg]
     * @param saturation salt per water of a saturated brine [kg/kg]
     */
    record Dose(double saltPerMeat, double saturation) implements SaltExchange {
        /** Checks the values. */
        public Dose {
            Checks.requireInRange("dose of salt per mass of meat", saltPerMeat, 1e-6, 1, "kg/kg");
        }
    }

    /**
     * Returns the source of one face, with what an earlier stage left on it.
     *
     * @param meatPerArea mass of the piece per area of that face [kg/m2]
     * @param before source of that face in the stage before
     * @param strength salt per water that source had at the end of its stage [kg/kg]
     * @return the source
     */
    default SaltSource perFace(double meatPerArea, SaltSource before, double strength) {
        return this instanceof Keep ? Keep.left(before, strength) : perFace(meatPerArea);
    }

    /**
     * Returns the source of one face.
     *
     * @param meatPerArea mass of the piece per area of that face [kg/m2]
     * @return the source; none for {@link Keep}, which needs to know the stage before
     */
    default SaltSource perFace(double meatPerArea) {
        if (this instanceof Bath bath) {
            return new SaltSource.Bath(
                    bath.saltPerMeat() * meatPerArea, bath.waterPerMeat() * meatPerArea, bath.swelling());
        }
        if (this instanceof Dose dose) {
            return new SaltSource.Dose(dose.saltPerMeat() * meatPerArea, dose.saturation());
        }
        return SaltSource.NONE;
    }
}
