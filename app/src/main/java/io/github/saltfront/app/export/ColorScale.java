package io.github.saltfront.app.export;

import io.github.saltfront.units.Checks;

/**
 * Colors from light to dark: each darker than the one before, so that a gray print and eyes that see few colors still tell more
 * from less. Immutable.
 */
final class ColorScale {
    /** Salt: paper to deep blue. */
    static final ColorScale SALT = new ColorScale(0xf4f1e8, 0xc3d4d3, 0x7faab6, 0x3f7895, 0x1c4a70, 0x0c2344);

    /** Heat: paper through amber and brick to dark wine. */
    static final ColorScale HEAT = new ColorScale(0xf4f1e8, 0xf1d9a6, 0xe6ab5d, 0xcb6a38, 0x93312f, 0x4a0f22);

    private final int[] stops;

    private ColorScale(int... stops) {
        this.stops = stops;
    }

    /**
     * Returns a color.
     *
     * @param share place on the scale [-]; below 0 and above 1 the ends
     * @return red, green and blue, eight bits each
     */
    int at(double share) {
        Checks.require(!Double.isNaN(share), "a place on a color scale must be a number, got NaN.");
        double place = Math.min(1, Math.max(0, share)) * (stops.length - 1);
        int below = Math.min(stops.length - 2, (int) place);
        double rest = place - below;
        int color = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int a = stops[below] >> shift & 0xff;
            int b = stops[below + 1] >> shift & 0xff;
            color |= (int) Math.rint(a + rest * (b - a)) << shift;
        }
        return color;
    }

    /** Returns how light a color is to the eye, 0 to 1 (relative luminance of IEC 61966-2-1). */
    static double luminance(int color) {
        return 0.2126 * linear(color >> 16 & 0xff) + 0.7152 * linear(color >> 8 & 0xff) + 0.0722 * linear(color & 0xff);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
