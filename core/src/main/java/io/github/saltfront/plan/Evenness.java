package io.github.saltfront.plan;

import io.github.saltfront.numerics.Roots;
import io.github.saltfront.units.Checks;

/**
 * How salt that was put on the faces of a slab all at once evens out, in closed form.
 *
 * <pre>
 * center / mean  = 1 + 2 sum (-1)^n exp(-n^2 pi^2 Fo),  Fo = D t / L^2
 * surface / mean = 1 + 2 sum exp(-n^2 pi^2 Fo)
 * </pre>
 *
 * <p>L is half the thickness if both faces are salted, the whole thickness if one is. For short times the sums are written as
 * images, {@code center / mean = 2 / sqrt(pi Fo) sum exp(-(2 n - 1)^2 / (4 Fo))}, which is the same function.
 *
 * <p>Salt under the skin or on the wall of a cavity counts as a face. Edges and swelling are left out; the time to dissolve comes
 * first.
 *
 * @see "crank1975, The mathematics of diffusion, chapter 2 (instantaneous plane source between walls)"
 */
public final class Evenness {
    private static final int TERMS = 12;
    private static final double SHORT = 0.1;
    private static final double LEAST_FOURIER = 1e-4;
    private static final double MOST_FOURIER = 10;

    private Evenness() {}

    /**
     * Returns the salt in the middle over the mean [-].
     *
     * @param fourier Fo = D t / L^2 [-], not negative
     * @return 0 at first, 1 at last
     */
    public static double centerOverMean(double fourier) {
        requireFourier(fourier);
        if (fourier == 0) {
            return 0;
        }
        double sum = 0;
        if (fourier < SHORT) {
            for (int n = 1; n <= TERMS; n++) {
                double odd = 2 * n - 1;
                sum += Math.exp(-odd * odd / (4 * fourier));
            }
            return 2 / Math.sqrt(Math.PI * fourier) * sum;
        }
        for (int n = 1; n <= TERMS; n++) {
            sum += (n % 2 == 0 ? 1 : -1) * Math.exp(-n * n * Math.PI * Math.PI * fourier);
        }
        return 1 + 2 * sum;
    }

    /**
     * Returns the salt at the salted surface over the mean [-].
     *
     * @param fourier Fo = D t / L^2 [-], above 0
     * @return very large at first, 1 at last
     */
    public static double surfaceOverMean(double fourier) {
        Checks.requirePositive("Fourier number", fourier, "-");
        double sum = 0;
        if (fourier < SHORT) {
            for (int n = 1; n <= TERMS; n++) {
                sum += Math.exp(-n * n / fourier);
            }
            return (1 + 2 * sum) / Math.sqrt(Math.PI * fourier);
        }
        for (int n = 1; n <= TERMS; n++) {
            sum += Math.exp(-n * n * Math.PI * Math.PI * fourier);
        }
        return 1 + 2 * sum;
    }

    /**
     * Returns the Fourier number at which the middle has reached a share of the mean [-].
     *
     * @param share center over mean [-], 0.001 to 0.999
     * @return Fo
     */
    public static double fourierAt(double share) {
        Checks.requireInRange("share of the mean", share, 0.001, 0.999, "-");
        return Roots.find(fourier -> centerOverMean(fourier) - share, LEAST_FOURIER, MOST_FOURIER, 1e-12);
    }

    /**
     * Returns the time at which the middle has reached a share of the mean [s].
     *
     * @param share center over mean [-], 0.001 to 0.999
     * @param path half the thickness if both faces are salted, the whole if one is, L [m]
     * @param diffusivity diffusion coefficient of salt in the meat, D [m2/s]
     * @return time [s]
     */
    public static double timeTo(double share, double path, double diffusivity) {
        Checks.requirePositive("path of the salt", path, "m");
        Checks.requirePositive("diffusion coefficient", diffusivity, "m2/s");
        return fourierAt(share) * path * path / diffusivity;
    }

    /**
     * Returns the salt in the middle over the mean after a time [-].
     *
     * @param time time since salting [s], not negative
     * @param path L [m]
     * @param diffusivity D [m2/s]
     * @return center over mean
     */
    public static double centerOverMeanAfter(double time, double path, double diffusivity) {
        Checks.requirePositive("path of the salt", path, "m");
        Checks.requirePositive("diffusion coefficient", diffusivity, "m2/s");
        return centerOverMean(diffusivity * time / (path * path));
    }

    /**
     * Returns how deep surface salt has reached, {@code 2 sqrt(D t)} [m]: the depth at which it is down to 1/e of the surface.
     *
     * @param time time since salting [s], not negative
     * @param diffusivity D [m2/s]
     * @return depth [m]
     */
    public static double reach(double time, double diffusivity) {
        Checks.requireInRange("time", time, 0, Double.MAX_VALUE, "s");
        Checks.requirePositive("diffusion coefficient", diffusivity, "m2/s");
        return 2 * Math.sqrt(diffusivity * time);
    }

    private static void requireFourier(double fourier) {
        Checks.requireInRange("Fourier number", fourier, 0, Double.MAX_VALUE, "-");
    }
}
