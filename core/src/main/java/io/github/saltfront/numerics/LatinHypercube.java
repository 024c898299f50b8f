package io.github.saltfront.numerics;

import io.github.saltfront.units.Checks;
import java.util.SplittableRandom;

/**
 * A stratified sample of the unit cube: in every dimension each of n equal slices holds exactly one point, at its middle. The
 * same seed gives the same sample.
 *
 * <p>Immutable.
 *
 * @see "mckay1979: McKay, Beckman, Conover 1979, Technometrics 21, 239-245"
 */
public final class LatinHypercube {
    private final double[][] points;

    /**
     * Draws a sample.
     *
     * @param count number of points, at least 1
     * @param dimensions number of dimensions, at least 1
     * @param seed seed of the generator
     */
    public LatinHypercube(int count, int dimensions, long seed) {
        Checks.require(
                count >= 1 && dimensions >= 1,
                "a sample needs points and dimensions, got " + count + " and " + dimensions + ".");
        SplittableRandom random = new SplittableRandom(seed);
        points = new double[count][dimensions];
        int[] order = new int[count];
        for (int d = 0; d < dimensions; d++) {
            for (int i = 0; i < count; i++) {
                order[i] = i;
            }
            for (int i = count - 1; i > 0; i--) {
                int j = random.nextInt(i + 1);
                int swapped = order[i];
                order[i] = order[j];
                order[j] = swapped;
            }
            for (int i = 0; i < count; i++) {
                points[i][d] = (order[i] + 0.5) / count;
            }
        }
    }

    /**
     * Returns a coordinate.
     *
     * @param point which point
     * @param dimension which dimension
     * @return value strictly between 0 and 1 [-]
     */
    public double get(int point, int dimension) {
        return points[point][dimension];
    }

    /** Returns the number of points. */
    public int count() {
        return points.length;
    }
}
