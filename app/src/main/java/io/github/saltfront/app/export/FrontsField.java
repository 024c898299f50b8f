package io.github.saltfront.app.export;

import io.github.saltfront.plan.Fronts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** One of the two images: a quantity on an even grid of pixels, and its lines of equal value. Rows run from the surface inward. */
final class FrontsField {
    private final double[][] rows;

    private FrontsField(double[][] rows) {
        this.rows = rows;
    }

    /**
     * Lays a quantity on a grid.
     *
     * @param fronts the fronts
     * @param of values of all depths at a sample
     * @param part stretch of time
     * @param columns number of columns
     * @param height number of rows
     * @return the field
     */
    static FrontsField of(Fronts fronts, IntFunction<double[]> of, FrontsScale.Part part, int columns, int height) {
        double[] depths = fronts.depths();
        double[][] rows = new double[height][columns];
        int next = 1;
        for (int x = 0; x < columns; x++) {
            double time = part.start() + (part.end() - part.start()) * (x + 0.5) / columns;
            while (next < fronts.size() - 1 && fronts.time(next) < time) {
                next++;
            }
            double before = fronts.time(next - 1);
            double after = fronts.time(next);
            double share = after > before ? Math.min(1, Math.max(0, (time - before) / (after - before))) : 1;
            double[] a = of.apply(next - 1);
            double[] b = of.apply(next);
            for (int y = 0; y < height; y++) {
                double depth = fronts.depth() * (y + 0.5) / height;
                rows[y][x] = (1 - share) * at(depths, a, depth) + share * at(depths, b, depth);
            }
        }
        return new FrontsField(rows);
    }

    private static double at(double[] depths, double[] values, double depth) {
        int last = depths.length - 1;
        if (depth <= depths[0]) {
            return values[0];
        }
        if (depth >= depths[last]) {
            return values[last];
        }
        int i = 1;
        while (depths[i] < depth) {
            i++;
        }
        double share = (depth - depths[i - 1]) / (depths[i] - depths[i - 1]);
        return values[i - 1] + share * (values[i] - values[i - 1]);
    }

    /** Returns the values as shares of a scale. */
    double[][] shares(double low, double high) {
        double[][] shares = new double[rows.length][rows[0].length];
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < rows[y].length; x++) {
                shares[y][x] = (rows[y][x] - low) / (high - low);
            }
        }
        return shares;
    }

    /** A point in pixels from the top left corner. */
    record Point(double x, double y) {}

    /** Returns the lines on which the quantity has a value, by marching squares on every fourth pixel. */
    List<List<Point>> lines(double value) {
        int stride = 4;
        Map<Long, List<long[]>> ends = new HashMap<>();
        for (int y = 0; y + stride < rows.length; y += stride) {
            for (int x = 0; x + stride < rows[0].length; x += stride) {
                square(x, y, stride, value, ends);
            }
        }
        List<List<Point>> lines = new ArrayList<>();
        while (!ends.isEmpty()) {
            long start = ends.entrySet().stream()
                    .filter(e -> e.getValue().size() == 1)
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElseGet(() -> ends.keySet().iterator().next());
            lines.add(follow(start, ends));
        }
        return lines;
    }

    private static List<Point> follow(long start, Map<Long, List<long[]>> ends) {
        List<Point> line = new ArrayList<>();
        long at = start;
        line.add(point(at));
        List<long[]> segments = ends.get(at);
        while (segments != null && !segments.isEmpty()) {
            long[] segment = segments.get(0);
            long other = segment[0] == at ? segment[1] : segment[0];
            remove(ends, at, segment);
            remove(ends, other, segment);
            at = other;
            line.add(point(at));
            segments = ends.get(at);
        }
        return line;
    }

    private static void remove(Map<Long, List<long[]>> ends, long key, long[] segment) {
        List<long[]> segments = ends.get(key);
        if (segments != null) {
            segments.remove(segment);
            if (segments.isEmpty()) {
                ends.remove(key);
            }
        }
    }

    private static Point point(long key) {
        return new Point((key >>> 32) / 100.0, (key & 0xffffffffL) / 100.0);
    }

    private static long key(double x, double y) {
        return Math.round(x * 100) << 32 | Math.round(y * 100);
    }

    /** Adds the parts of the lines within one square, ends in hundredths of a pixel. */
    private void square(int x, int y, int stride, double value, Map<Long, List<long[]>> ends) {
        double[] corner = {rows[y][x], rows[y][x + stride], rows[y + stride][x + stride], rows[y + stride][x]};
        int[] dx = {0, stride, stride, 0};
        int[] dy = {0, 0, stride, stride};
        List<Long> crossings = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            // the same way round from both squares of an edge, so that their ends meet to the last bit
            int a = dx[i] + dy[i] < dx[j] + dy[j] ? i : j;
            int b = a == i ? j : i;
            if (corner[a] >= value != corner[b] >= value) {
                double share = (value - corner[a]) / (corner[b] - corner[a]);
                crossings.add(
                        key(x + 0.5 + dx[a] + share * (dx[b] - dx[a]), y + 0.5 + dy[a] + share * (dy[b] - dy[a])));
            }
        }
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            long[] segment = {crossings.get(i), crossings.get(i + 1)};
            if (segment[0] != segment[1]) {
                ends.computeIfAbsent(segment[0], k -> new ArrayList<>()).add(segment);
                ends.computeIfAbsent(segment[1], k -> new ArrayList<>()).add(segment);
            }
        }
    }
}
