package io.github.saltfront.transport;

/**
 * Meat in the cold, where ice may form: enthalpy, temperature and conductivity. It takes over from the polynomials of {@link
 * HeatProperties} below a limit at or above the freezing point, and must join them there. Temperatures are in degrees Celsius;
 * w and s are water and salt per kg of dry solids [kg/kg].
 */
public interface FrozenState {
    /** No ice at any temperature. */
    FrozenState NONE = new FrozenState() {
        @Override
        public double upperLimit(double water, double salt) {
            return Double.NEGATIVE_INFINITY;
        }

        @Override
        public double enthalpy(double celsius, double water, double salt) {
            throw new IllegalStateException("there is no ice in this material.");
        }

        @Override
        public double temperature(double enthalpy, double water, double salt) {
            throw new IllegalStateException("there is no ice in this material.");
        }

        @Override
        public double heatCapacity(double celsius, double water, double salt) {
            throw new IllegalStateException("there is no ice in this material.");
        }

        @Override
        public double conductivity(double celsius, double water, double salt) {
            throw new IllegalStateException("there is no ice in this material.");
        }
    };

    /**
     * Returns the temperature below which this state is in charge.
     *
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return limit in degrees Celsius; negative infinity if there is never ice
     */
    double upperLimit(double water, double salt);

    /**
     * Returns the enthalpy below the limit per kg of dry solids, on the same zero as the liquid state.
     *
     * @param celsius temperature below the limit in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return enthalpy [J/kg]
     */
    double enthalpy(double celsius, double water, double salt);

    /**
     * Returns the temperature that belongs to an enthalpy below that at the limit.
     *
     * @param enthalpy enthalpy per kg of dry solids [J/kg]
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return temperature in degrees Celsius; NaN if no state has this enthalpy, which makes a solver shorten its step
     */
    double temperature(double enthalpy, double water, double salt);

    /**
     * Returns the apparent heat capacity, the derivative of the enthalpy.
     *
     * @param celsius temperature below the limit in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return apparent heat capacity per kg of dry solids [J/(kg.K)]
     */
    double heatCapacity(double celsius, double water, double salt);

    /**
     * Returns the conductivity with ice.
     *
     * @param celsius temperature below the limit in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return conductivity [W/(m.K)]
     */
    double conductivity(double celsius, double water, double salt);

    /**
     * Returns whether this state is in charge.
     *
     * @param celsius temperature in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return true below the limit
     */
    default boolean isFrozen(double celsius, double water, double salt) {
        return celsius < upperLimit(water, salt);
    }
}
