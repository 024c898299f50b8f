package io.github.saltfront.transport;

import io.github.saltfront.matter.MoistAir;
import io.github.saltfront.units.PhysicalConstants;

/**
 * Energy balance of a face: conduction from the outermost cell equals convection, radiation and evaporation. See
 * {@link FaceCondition} for the equations. One object serves one thread; results are left in fields, so that nothing is
 * allocated.
 */
final class SurfaceBalance {
    /** Heat capacity of moist air near the surface [J/(kg.K)] times Le^(2/3) = 0.88 (psychrometric chapter values). */
    private static final double AIR_CAPACITY_TIMES_LEWIS = 1006 * 0.88;

    /** Molar mass of water over that of dry air (ASHRAE Fundamentals, chapter Psychrometrics). */
    private static final double MOLAR_MASS_RATIO = MoistAir.MASS_RATIO;

    /** Water per dry solids at which the surface is half dry in the sorption curve [kg/kg], see {@link #waterActivity}. */
    private static final double SORPTION_WATER = 0.17;

    private static final double SIGMA = PhysicalConstants.STEFAN_BOLTZMANN;
    private static final int MOST_ITERATIONS = 60;

    /**
     * Step of Newton's method that is the last [K]: the error left is of its square times a curvature over a slope of some
     * percent a kelvin, below 1e-9 K.
     */
    private static final double LAST_STEP = 1e-4;

    /** Step of a bisection that is the last [K]. */
    private static final double LAST_BISECTION = 1e-9;

    /** Says that the temperature of the face is not even roughly known. */
    static final double NO_GUESS = Double.NaN;

    private static final double CELSIUS = LaneBlock.KELVIN;

    /** Range over which boiling sets in [K]; estimate: bubbles need some superheat and a face is not even. */
    private static final double ONSET = 0.5;

    /** Onsets below the boiling point from which on nothing boils [-]. */
    private static final double NEGLIGIBLE = 20;

    /** Conductivity of a dry crust [W/(m.K)]: 0.1 to 0.2 (from memory, unconfirmed). */
    private static final double CRUST_CONDUCTIVITY = 0.15;

    /** Thickness of the crust that lies between medium and face [m]; set before a face that boils is solved. */
    double crust;

    /** Temperature of the outside of the crust in degrees Celsius; that of the face where nothing boils. */
    double outside;

    /** Temperature of the face in degrees Celsius. */
    double surface;

    /** Heat that enters the outermost cell [W/m2]. */
    double flux;

    /** Derivative of the flux with respect to the temperature of the outermost cell [W/(m2.K)], not positive. */
    double slope;

    /** Water that evaporates, negative if it condenses [kg/(m2.s)]. */
    double evaporation;

    /** Derivative of the evaporation with respect to the water activity, the face cooling along [kg/(m2.s)]. */
    double evaporationByActivity;

    /** Derivative of {@link #flux} with respect to the water activity, not positive [W/m2]. */
    double fluxByActivity;

    /** Derivative of the evaporation with respect to the temperature of the outermost cell where water boils [kg/(m2.s.K)]. */
    double boilingByCell;

    /**
     * Water activity of a meat surface from its water content: an Oswin curve with exponent 1/2,
     * a = (w/w0)^2 / (1 + (w/w0)^2), lowered by salt as an ideal solution of its ions.
     *
     * <p>The shape is that of published sorption curves of raw meat (0.99 wet, 0.8 near 0.35 kg/kg); w0 = 0.17 kg/kg is from
     * memory, unconfirmed.
     */
    static double waterActivity(double water, double salt) {
        double x = Math.max(0, water) / SORPTION_WATER;
        double ratio = x * x;
        double moles = 2 * Math.max(0, salt) / PhysicalConstants.MOLAR_MASS_SODIUM_CHLORIDE;
        double waterMoles = Math.max(0, water) / PhysicalConstants.MOLAR_MASS_WATER;
        return ratio / (1 + ratio) * waterMoles / (waterMoles + moles + 1e-12);
    }

    /** Derivative of {@link #waterActivity} with respect to the water [kg/kg]. */
    static double activityByWater(double water, double salt) {
        double x = Math.max(0, water) / SORPTION_WATER;
        double ratio = x * x;
        double moles = 2 * Math.max(0, salt) / PhysicalConstants.MOLAR_MASS_SODIUM_CHLORIDE + 1e-12;
        double waterMoles = Math.max(0, water) / PhysicalConstants.MOLAR_MASS_WATER;
        double all = waterMoles + moles;
        double byDryness = 2 * x / SORPTION_WATER / ((1 + ratio) * (1 + ratio)) * waterMoles / all;
        double byDilution = ratio / (1 + ratio) * moles / (PhysicalConstants.MOLAR_MASS_WATER * all * all);
        return byDryness + byDilution;
    }

    /** Solves a face that has neither radiation nor evaporation. */
    void solveLinear(double cell, double conductance, double medium, double coefficient) {
        double through = coefficient * conductance / (coefficient + conductance);
        flux = through * (medium - cell);
        slope = -through;
        surface = cell + flux / conductance;
        outside = surface;
        evaporation = 0;
        evaporationByActivity = 0;
        fluxByActivity = 0;
    }

    /** {@link #solveLinear} of all lanes, the same to the last bit. */
    static void exchangeRow(
            double[] medium,
            double[] coefficient,
            double[] conductance,
            double[] cell,
            double[] flux,
            double[] slope,
            double[] surface) {
        for (int l = 0; l < flux.length; l++) {
            double through = coefficient[l] * conductance[l] / (coefficient[l] + conductance[l]);
            flux[l] = through * (medium[l] - cell[l]);
            slope[l] = -through;
            surface[l] = cell[l] + flux[l] / conductance[l];
        }
    }

    /**
     * Solves a face against metal or fat that may boil water; see {@link FaceCondition}. Boiling sets in over {@link #ONSET},
     * not at once: the face is at the smooth minimum of what it would be dry and of the boiling point.
     */
    private void solveBoiling(
            FaceCondition condition, double cell, double conductance, double medium, double h, double activity) {
        double behind = 1 / (1 / h + crust / CRUST_CONDUCTIVITY);
        solveLinear(cell, conductance, medium, behind);
        boilingByCell = 0;
        double limit = condition.boilingTemperature() - CELSIUS;
        double below = (limit - surface) / ONSET;
        // a face that waits for its turn over cooler air boils nothing away
        if (medium <= limit || below > NEGLIGIBLE) {
            outside = medium - flux / h;
            return;
        }
        double dryByCell = conductance / (conductance + behind);
        double share = 1 / (1 + Math.exp(below));
        surface = limit - ONSET * (Math.max(below, 0) + Math.log1p(Math.exp(-Math.abs(below))));
        flux = conductance * (surface - cell);
        slope = conductance * ((1 - share) * dryByCell - 1);
        double latent = VaporRelations.latentHeat(limit);
        // where the outermost layer is dry the front lies deeper and less boils away; the outside gets hotter instead
        evaporationByActivity = Math.max(0, behind * (medium - surface) - flux) / latent;
        evaporation = activity * evaporationByActivity;
        boilingByCell = activity * share * conductance / latent;
        outside = Math.min(medium, medium - (flux + evaporation * latent) / h);
    }

    /** Solves a face of whose temperature nothing is known. */
    void solve(FaceCondition condition, double time, double cell, double conductance, double activity) {
        solve(condition, time, cell, conductance, activity, NO_GUESS);
    }

    /**
     * Solves a face with radiation or evaporation by Newton's method within a bracket.
     *
     * @param condition the face
     * @param time time since the start of the stage [s]
     * @param cell temperature of the outermost cell in degrees Celsius
     * @param conductance conductance from that cell to the face [W/(m2.K)]
     * @param activity water activity of the face [-]
     * @param guess temperature of the face nearby in degrees Celsius, or {@link #NO_GUESS}
     */
    void solve(FaceCondition condition, double time, double cell, double conductance, double activity, double guess) {
        double medium = condition.mediumTemperature().at(time) - CELSIUS;
        double h = condition.coefficient().at(time);
        if (condition.boils()) {
            solveBoiling(condition, cell, conductance, medium, h, activity);
            return;
        }
        if (condition.isLinear()) {
            solveLinear(cell, conductance, medium, h);
            return;
        }
        double wall = medium + CELSIUS;
        double radiant = condition.emissivity() * SIGMA;
        double wallPower = radiant * wall * wall * wall * wall;
        double mass = condition.wetShare() * h * MOLAR_MASS_RATIO / AIR_CAPACITY_TIMES_LEWIS;
        double low = Math.min(cell, medium) - 60;
        double high = Math.max(cell, medium) + 60;
        double x = guess > low && guess < high ? guess : cell + 0.2 * (medium - cell);
        double outer = 0;
        double outerSlope = 0;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            double kelvin = x + CELSIUS;
            outer = h * (medium - x) + wallPower - radiant * kelvin * kelvin * kelvin * kelvin;
            outerSlope = -h - 4 * radiant * kelvin * kelvin * kelvin;
            if (mass > 0) {
                double latent = VaporRelations.latentHeat(x);
                evaporate(x, latent, mass, condition.vaporPressure(), condition.totalPressure(), activity);
                outer -= evaporation * latent;
                outerSlope -= massSlope * latent;
            }
            double residual = conductance * (x - cell) - outer;
            if (residual > 0) {
                high = x;
            } else {
                low = x;
            }
            double step = residual / (conductance - outerSlope);
            double next = x - step;
            double last = LAST_STEP;
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
                last = LAST_BISECTION;
            }
            double change = next - x;
            x = next;
            if (Math.abs(change) < last) {
                evaporation += massSlope * change;
                break;
            }
        }
        surface = x;
        outside = x;
        flux = conductance * (x - cell);
        slope = conductance * outerSlope / (conductance - outerSlope);
        fluxByActivity = 0;
        if (mass == 0) {
            evaporation = 0;
            evaporationByActivity = 0;
        } else {
            double cooling = VaporRelations.latentHeat(x) * evaporationByActivity / (conductance - outerSlope);
            fluxByActivity = -conductance * cooling;
            evaporationByActivity -= massSlope * cooling;
        }
    }

    private double massSlope;

    private void evaporate(double celsius, double latent, double mass, double vapor, double total, double activity) {
        double saturation = VaporRelations.saturationPressure(celsius);
        double floor = 1e-3 * total;
        double open = total - activity * saturation;
        double kelvin = celsius + CELSIUS;
        double saturationSlope = saturation
                * latent
                * PhysicalConstants.MOLAR_MASS_WATER
                / (PhysicalConstants.MOLAR_GAS * kelvin * kelvin);
        double logarithm;
        double byOpen;
        if (open > floor) {
            logarithm = Math.log((total - vapor) / open);
            byOpen = 1 / open;
        } else {
            // straight continuation, so that Newton's method comes back from states above the boiling point
            logarithm = Math.log((total - vapor) / floor) + (floor - open) / floor;
            byOpen = 1 / floor;
        }
        evaporation = mass * logarithm;
        massSlope = mass * byOpen * activity * saturationSlope;
        evaporationByActivity = mass * byOpen * saturation;
    }
}
