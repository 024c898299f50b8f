package io.github.saltfront.transport;

/**
 * Meat below its freezing point: enthalpy, temperature and conductivity with ice. Temperatures are in degrees Celsius, as in
 * {@link HeatProperties}; w and s are water and salt per kg of dry solids [kg/kg].
 */
public interface IceModel {
    /** No ice at any temperature. */
    IceModel NONE = new IceModel() {
        @Override
        public double freezingPoint(double water, double salt) {
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
     * Returns the temperature at which the first ice forms.
     *
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return initial freezing point in degrees Celsius; negative infinity if there is never ice
     */
    double freezingPoint(double water, double salt);

    /**
     * Returns the enthalpy below the freezing point per kg of dry solids, on the same zero as the liquid state.
     *
     * @param celsius temperature below the freezing point in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return enthalpy [J/kg]
     */
    double enthalpy(double celsius, double water, double salt);

    /**
     * Returns the temperature that belongs to an enthalpy below that at the freezing point.
     *
     * @param enthalpy enthalpy per kg of dry solids [J/kg]
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return temperature in degrees Celsius
     */
    double temperature(double enthalpy, double water, double salt);

    /**
     * Returns the apparent heat capacity, the derivative of the enthalpy.
     *
     * @param celsius temperature below the freezing point in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return apparent heat capacity per kg of dry solids [J/(kg.K)]
     */
    double heatCapacity(double celsius, double water, double salt);

    /**
     * Returns the conductivity with ice.
     *
     * @param celsius temperature below the freezing point in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return conductivity [W/(m.K)]
     */
    double conductivity(double celsius, double water, double salt);

    /**
     * Returns whether there is ice.
     *
     * @param celsius temperature in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return true below the freezing point
     */
    default boolean isFrozen(double celsius, double water, double salt) {
        return celsius < freezingPoint(water, salt);
    }
}
