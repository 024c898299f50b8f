package io.github.saltfront.matter;

/**
 * Lower bound of the conductivity: layers across the heat flow.
 *
 * <pre>1/k = (1 - v)/kc + v/kd</pre>
 *
 * @see "ashrae2006, chapter 9, thermal conductivity (perpendicular model)"
 */
public final class Series implements ConductivityModel {
    @Override
    public double mix(double continuous, double dispersed, double dispersedVolume) {
        return 1 / ((1 - dispersedVolume) / continuous + dispersedVolume / dispersed);
    }

    @Override
    public double mixSolids(double first, double second, double secondVolume) {
        return mix(first, second, secondVolume);
    }
}
