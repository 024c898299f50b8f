package io.github.saltfront.catalog;

import io.github.saltfront.units.Checks;

/**
 * What a kitchen has learned about one of its appliances: where its true temperature and its heat transfer lie within the bands of
 * the catalog. Both are counted in standard normal variates of the catalog's bands, so that what was not learned keeps mean 0 and
 * spread 1.
 *
 * @param meanSetting mean of the true temperature against the dial [-]
 * @param meanConvection mean of the heat transfer coefficient [-]
 * @param spreadSetting standard deviation that is left of the first [-], above 0, at most 1
 * @param spreadConvection standard deviation that is left of the second [-], above 0, at most 1
 * @param correlation correlation of the two [-]; times alone cannot tell a hotter oven from a stronger draft
 */
public record ApplianceTuning(
        double meanSetting, double meanConvection, double spreadSetting, double spreadConvection, double correlation) {
    /** Nothing learned. */
    public static final ApplianceTuning NONE = new ApplianceTuning(0, 0, 1, 1, 0);

    /** Farthest mean [-]: a tenfold of what the catalog thinks likely is a fault and not an oven. */
    private static final double FARTHEST = 20;

    /** Checks the values. */
    public ApplianceTuning {
        Checks.requireInRange("mean of the setting", meanSetting, -FARTHEST, FARTHEST, "-");
        Checks.requireInRange("mean of the convection", meanConvection, -FARTHEST, FARTHEST, "-");
        Checks.requireInRange("spread of the setting", spreadSetting, 1e-3, 1, "-");
        Checks.requireInRange("spread of the convection", spreadConvection, 1e-3, 1, "-");
        Checks.requireInRange("correlation", correlation, -0.999, 0.999, "-");
    }

    /** Tells whether nothing was learned. */
    public boolean isNone() {
        return equals(NONE);
    }

    /** Tells whether it heats faster than the catalog thinks, by its temperature or by its draft. */
    public boolean isHotter() {
        return meanSetting > 0 || meanConvection > 0;
    }
}
