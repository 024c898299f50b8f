package io.github.saltfront.plan;

/**
 * Skin and fat of poultry as a resistance to salt in series with the meat.
 *
 * <p>1.5 mm at 3e-11 m2/s, with water of 480 kg/m3 in skin (48 % water, density near 1000 kg/m3). The diffusion coefficient is
 * an engineering guess with a band of two and a half decades; only fish skin has been measured.
 */
final class SkinBarrier {
    private static final double THICKNESS = 1.5e-3;
    private static final double DIFFUSIVITY = 3e-11;
    private static final double WATER_DENSITY = 480;

    /** Resistance on the basis of salt per water [m2.s/kg]. */
    static final double RESISTANCE = THICKNESS / (DIFFUSIVITY * WATER_DENSITY);

    private SkinBarrier() {}
}
