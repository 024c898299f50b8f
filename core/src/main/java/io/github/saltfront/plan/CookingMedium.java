package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.matter.IapwsIf97Saturation;
import io.github.saltfront.quality.Band;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.Optional;

/**
 * An appliance at a setting, as the solver's face conditions, with the luck of a member.
 *
 * <ul>
 *   <li>Air: convection, radiation to walls at air temperature, and evaporation from the wet share of the surface.
 *   <li>Embers or a glowing element: the flux of the source is turned into an equivalent radiant temperature.
 *   <li>Metal and fat: while the meat is wet its face stays at the boiling point whatever the plate's temperature (Cernela et
 *       al. 2015, plates at 160-260 degrees Celsius); the rest of the heat drives vapor off through a growing crust.
 *   <li>Where one face is heated at a time, faces take turns; a round piece is turned all around.
 *   <li>Vapor given off by the food stays for a while: the humidity of the table belongs to {@link Use#USUAL_AREA} of surface and
 *       grows with it (estimate).
 * </ul>
 *
 * @param appliance the appliance
 * @param setting temperature it is set to [K]
 * @param totalPressure ambient pressure [Pa]
 * @param hasSkin whether the surface is skin
 * @param use how it is used
 * @see "cernela2015"
 */
public record CookingMedium(Appliance appliance, double setting, double totalPressure, boolean hasSkin, Use use) {
    /** Time between turns where one face is heated at a time [s]; common practice: every 1 to 2 minutes. */
    public static final double TURN_INTERVAL = 120;

    /** Room from which an appliance warms up [K]. */
    private static final double ROOM = Temperature.fromCelsius(20);

    /** Most of the air that may be vapor [-]: the evaporation relation has no value in pure steam. */
    private static final double MOST_VAPOR = 0.9;

    /**
     * How an appliance is used.
     *
     * @param turnInterval time between turns where one face is heated at a time [s]
     * @param warmUp time in which it warms up with the meat in it [s]; 0 if it is hot before
     * @param area surface of all pieces in it [m2]
     * @param round whether the piece is round, so that turning brings every side to the heat
     */
    public record Use(double turnInterval, double warmUp, double area, boolean round) {
        /** Surface of the food that the humidity of the table belongs to [m2]: a chicken; estimate. */
        public static final double USUAL_AREA = 0.12;

        /** Hot before, turned every two minutes, one usual load. */
        public static final Use USUAL = new Use(TURN_INTERVAL, 0, USUAL_AREA, false);

        /** Checks the values. */
        public Use {
            Checks.requireInRange("time between turns", turnInterval, 5, 86400, "s");
            Checks.requireInRange("time of warming up", warmUp, 0, 7200, "s");
            Checks.requireInRange("surface of the food", area, 0, 100, "m2");
        }
    }

    /**
     * Creates a medium used as usual.
     *
     * @param appliance the appliance
     * @param setting temperature it is set to [K]
     * @param totalPressure ambient pressure [Pa]
     * @param hasSkin whether the surface is skin
     */
    public CookingMedium(Appliance appliance, double setting, double totalPressure, boolean hasSkin) {
        this(appliance, setting, totalPressure, hasSkin, Use.USUAL);
    }

    /** Air above a face that waits for its turn [K]; estimate: kitchen air warmed by the pan or grill. */
    private static final double IDLE_AIR = Temperature.fromCelsius(40);

    private static final double IDLE_COEFFICIENT = 10;

    /** Band of the wetness relative to its median [-]: measured roasts lie near 10-30 % wet where the median is 15 %. */
    private static final Band WETNESS = new Band(0.67, 1, 2);

    /**
     * Returns the face conditions: one if the medium is all around, two if faces take turns.
     *
     * @param draw luck of the member
     * @param rest true to take the luck of resting instead of that of cooking
     * @return the conditions
     */
    public List<FaceCondition> faces(Draw draw, boolean rest) {
        return tunedFaces(rest ? draw : draw.tuned(appliance.tuning()), rest);
    }

    private List<FaceCondition> tunedFaces(Draw draw, boolean rest) {
        double temperature = temperature(draw, rest);
        double coefficient = draw.logarithmic(rest ? Uncertainty.REST : Uncertainty.CONVECTION, appliance.convection());
        double emissivity = emissivity(draw);
        double wet = wetShare(draw);
        double vapor = vaporPressure(draw, temperature);
        if (boils()) {
            return boiling(temperature, coefficient);
        }
        if (appliance.bothFaces()) {
            return List.of(new FaceCondition(
                    warming(temperature), TimeProfile.constant(coefficient), emissivity, wet, vapor, totalPressure));
        }
        FaceCondition first = turning(temperature, IDLE_AIR, coefficient, IDLE_COEFFICIENT, wet, vapor);
        return use.round()
                ? List.of(first)
                : List.of(first, turning(IDLE_AIR, temperature, IDLE_COEFFICIENT, coefficient, wet, vapor));
    }

    private boolean boils() {
        return appliance.evaporation().kind() == Appliance.Evaporation.Kind.BOILING;
    }

    private TimeProfile warming(double temperature) {
        return use.warmUp() > 0
                ? new TimeProfile.Ramp(Math.min(ROOM, temperature), temperature, use.warmUp())
                : TimeProfile.constant(temperature);
    }

    private List<FaceCondition> boiling(double temperature, double coefficient) {
        double boiling = IapwsIf97Saturation.temperature(totalPressure);
        if (appliance.bothFaces()) {
            return List.of(FaceCondition.boiling(
                    warming(temperature), TimeProfile.constant(coefficient), totalPressure, boiling));
        }
        FaceCondition first = boilingTurn(temperature, IDLE_AIR, coefficient, IDLE_COEFFICIENT, boiling);
        return use.round()
                ? List.of(first)
                : List.of(first, boilingTurn(IDLE_AIR, temperature, IDLE_COEFFICIENT, coefficient, boiling));
    }

    private FaceCondition boilingTurn(
            double first, double second, double firstCoefficient, double secondCoefficient, double boiling) {
        return FaceCondition.boiling(
                new TimeProfile.Alternating(first, second, use.turnInterval()),
                new TimeProfile.Alternating(firstCoefficient, secondCoefficient, use.turnInterval()),
                totalPressure,
                boiling);
    }

    private FaceCondition turning(
            double first, double second, double firstCoefficient, double secondCoefficient, double wet, double vapor) {
        return new FaceCondition(
                new TimeProfile.Alternating(first, second, use.turnInterval()),
                new TimeProfile.Alternating(firstCoefficient, secondCoefficient, use.turnInterval()),
                0,
                wet,
                vapor,
                totalPressure);
    }

    private double temperature(Draw draw, boolean rest) {
        double error = draw.normal(rest ? Uncertainty.REST : Uncertainty.SETTING)
                / Draw.NINETY_FIVE
                * appliance.setPointError();
        double temperature = setting + error;
        Optional<Band> source = appliance.radiation().sourceTemperature();
        if (source.isPresent()) {
            return radiantTemperature(temperature, draw.linear(Uncertainty.EMISSIVITY, source.get()), draw);
        }
        return temperature;
    }

    /** Temperature of a medium that gives a face at 80 degrees Celsius the flux of air and embers together. */
    private double radiantTemperature(double air, double source, Draw draw) {
        double h = draw.logarithmic(Uncertainty.CONVECTION, appliance.convection());
        double face = Temperature.fromCelsius(80);
        double factor = appliance.radiation().emissivity().typical()
                * appliance.radiation().viewFactor().typical()
                * PhysicalConstants.STEFAN_BOLTZMANN;
        double flux = h * (air - face) + factor * (Math.pow(source, 4) - Math.pow(face, 4));
        return face + flux / h;
    }

    private double emissivity(Draw draw) {
        if (appliance.radiation().sourceTemperature().isPresent()) {
            return 0;
        }
        double value = draw.linear(Uncertainty.EMISSIVITY, appliance.radiation().emissivity());
        return Math.min(
                1, Math.max(0, value * appliance.radiation().viewFactor().typical()));
    }

    private double wetShare(Draw draw) {
        if (appliance.evaporation().kind() != Appliance.Evaporation.Kind.TO_AIR) {
            return 0;
        }
        double median = hasSkin
                ? appliance.evaporation().wetFractionSkin()
                : appliance.evaporation().wetFractionBare();
        return Math.min(1, median * draw.logarithmic(Uncertainty.WETNESS, WETNESS));
    }

    private double vaporPressure(Draw draw, double temperature) {
        if (appliance.evaporation().vaporPressure().isPresent()) {
            double usual = draw.logarithmic(
                    Uncertainty.HUMIDITY,
                    appliance.evaporation().vaporPressure().get());
            return Math.min(MOST_VAPOR * totalPressure, usual * Math.max(1, use.area() / Use.USUAL_AREA));
        }
        if (appliance.evaporation().relativeHumidity().isPresent()) {
            double humidity = draw.linear(
                    Uncertainty.HUMIDITY,
                    appliance.evaporation().relativeHumidity().get());
            double saturated = IapwsIf97Saturation.pressure(temperature);
            return Math.min(MOST_VAPOR * totalPressure, Math.min(1, Math.max(0, humidity)) * saturated);
        }
        return 0;
    }
}
