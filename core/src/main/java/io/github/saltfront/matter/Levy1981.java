package io.github.saltfront.matter;

/**
 * Levy's modification of the Maxwell-Eucken equation, which does not depend on which phase is called continuous.
 *
 * <pre>
 * k = k2 [(2 + L) + 2 (L - 1) F] / [(2 + L) - (L - 1) F],  L = k1/k2,  s = (L - 1)^2 / [(L + 1)^2 + L/2],
 * F = { 2/s - 1 + 2 R - sqrt[(2/s - 1 + 2 R)^2 - 8 R/s] } / 2
 * </pre>
 *
 * <p>with R the volume fraction of phase 1. F is computed as {@code 4 R / (b + sqrt(b^2 - 8 R s)), b = 2 - s + 2 R s},
 * the same number without the division by s, which is zero for equal conductivities.
 *
 * <p>Measured lamb from -40 to 30 degrees Celsius is met within 10 % (pham1989).
 *
 * @see "levy1981"
 */
public final class Levy1981 implements ConductivityModel {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "levy1981";

    @Override
    public double mix(double continuous, double dispersed, double dispersedVolume) {
        double ratio = continuous / dispersed;
        double volume = 1 - dispersedVolume;
        double sigma = (ratio - 1) * (ratio - 1) / ((ratio + 1) * (ratio + 1) + ratio / 2);
        double b = 2 - sigma + 2 * volume * sigma;
        double f = 4 * volume / (b + Math.sqrt(b * b - 8 * volume * sigma));
        return dispersed * (2 + ratio + 2 * (ratio - 1) * f) / (2 + ratio - (ratio - 1) * f);
    }
}
