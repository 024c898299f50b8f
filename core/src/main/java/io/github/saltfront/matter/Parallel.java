package io.github.saltfront.matter;

/**
 * Upper bound of the conductivity: layers along the heat flow.
 *
 * <pre>k = (1 - v) kc + v kd</pre>
 *
 * @see "ashrae2006, chapter 9, thermal conductivity"
 */
public final class Parallel implements ConductivityModel {
    @Override
    public double mix(double continuous, double dispersed, double dispersedVolume) {
        return (1 - dispersedVolume) * continuous + dispersedVolume * dispersed;
    }
}
