package io.github.saltfront.matter;

/**
 * Thermal conductivity of a body of two phases. Every model returns the conductivity of the only phase at a volume fraction
 * of 0 or 1, lies between {@link Series} and {@link Parallel}, and is continuous.
 */
public sealed interface ConductivityModel permits Levy1981, MaxwellEucken, Parallel, Series {
    /**
     * Returns the conductivity of the mixture [W/(m.K)].
     *
     * @param continuous conductivity of the continuous phase [W/(m.K)], above 0
     * @param dispersed conductivity of the dispersed phase [W/(m.K)], above 0
     * @param dispersedVolume volume fraction of the dispersed phase [m3/m3], 0 to 1
     * @return conductivity [W/(m.K)]
     */
    double mix(double continuous, double dispersed, double dispersedVolume);

    /**
     * Returns the conductivity of two dry components side by side [W/(m.K)]; in parallel unless the model says otherwise.
     *
     * @param first conductivity of the first [W/(m.K)]
     * @param second conductivity of the second [W/(m.K)]
     * @param secondVolume volume fraction of the second [m3/m3]
     * @return conductivity [W/(m.K)]
     */
    default double mixSolids(double first, double second, double secondVolume) {
        return (1 - secondVolume) * first + secondVolume * second;
    }
}
