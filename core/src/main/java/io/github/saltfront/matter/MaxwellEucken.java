package io.github.saltfront.matter;

/**
 * Conductivity of spheres dispersed in a continuous phase.
 *
 * <pre>k = kc [2 kc + kd - 2 v (kc - kd)] / [2 kc + kd + v (kc - kd)]</pre>
 *
 * <p>Meant for small volume fractions of the dispersed phase.
 *
 * @see "eucken1940, as given in ashrae2006, chapter 9"
 */
public final class MaxwellEucken implements ConductivityModel {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "eucken1940";

    @Override
    public double mix(double continuous, double dispersed, double dispersedVolume) {
        double sum = 2 * continuous + dispersed;
        double difference = dispersedVolume * (continuous - dispersed);
        return continuous * (sum - 2 * difference) / (sum + difference);
    }
}
