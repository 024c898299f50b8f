package io.github.saltfront.matter;

/**
 * How much of the water of meat is ice at a temperature. At and above the initial freezing point every model returns
 * zero, and it is continuous there.
 */
public sealed interface IceModel permits Miles1974, Tchigeov1979 {
    /**
     * Returns the ice per mass of dry solids [kg/kg].
     *
     * @param temperature temperature [K]
     * @param freezingPoint initial freezing point [K], below 0 degrees Celsius
     * @param waterPerSolids all water per dry solids, ice included [kg/kg]
     * @param boundPerSolids water that never freezes, per dry solids [kg/kg]
     * @return ice per dry solids [kg/kg], not negative
     */
    double ice(double temperature, double freezingPoint, double waterPerSolids, double boundPerSolids);

    /**
     * Returns the derivative of {@link #ice} by temperature [kg/(kg.K)], the one from below at the freezing point.
     *
     * @param temperature temperature [K]
     * @param freezingPoint initial freezing point [K], below 0 degrees Celsius
     * @param waterPerSolids all water per dry solids, ice included [kg/kg]
     * @param boundPerSolids water that never freezes, per dry solids [kg/kg]
     * @return derivative [kg/(kg.K)], not positive
     */
    double derivative(double temperature, double freezingPoint, double waterPerSolids, double boundPerSolids);
}
