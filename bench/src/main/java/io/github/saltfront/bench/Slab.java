package io.github.saltfront.bench;

import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * One invented slab, heated for an hour from both sides.
 *
 * @param extent half thickness [m]
 * @param start temperature at the start [K]
 * @param medium temperature of the medium [K]
 * @param coefficient heat transfer coefficient [W/(m2.K)]
 * @param wetShare share of the surface that evaporates, where evaporation is computed [-]
 * @param vaporPressure vapor pressure of the medium [Pa]
 */
record Slab(double extent, double start, double medium, double coefficient, double wetShare, double vaporPressure) {
    private static final long SEED = 2026L;
    private static final double ZERO_CELSIUS = Temperature.ZERO_CELSIUS;

    /** Thickness 20 to 60 mm, start 2 to 25, medium 50 to 150 degrees Celsius, coefficient 8 to 300 evenly in its logarithm. */
    static List<Slab> sample(int count) {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            slabs.add(new Slab(
                    between(random, 0.010, 0.030),
                    ZERO_CELSIUS + between(random, 2, 25),
                    ZERO_CELSIUS + between(random, 50, 150),
                    Math.exp(between(random, Math.log(8), Math.log(300))),
                    between(random, 0.1, 1),
                    between(random, 800, 6000)));
        }
        return slabs;
    }

    private static double between(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    static String header() {
        return "half_thickness_m,start_K,medium_K,coefficient_W_m2K,wet_share,vapor_pressure_Pa";
    }

    String row() {
        return String.format(
                Locale.ROOT,
                "%.17g,%.17g,%.17g,%.17g,%.17g,%.17g",
                extent,
                start,
                medium,
                coefficient,
                wetShare,
                vaporPressure);
    }
}
