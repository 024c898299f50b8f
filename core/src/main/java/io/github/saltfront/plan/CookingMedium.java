package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.matter.IapwsIf97Saturation;
import io.github.saltfront.quality.Band;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.TimeProfile;
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
 *       al. 2015, plates at 160-260 degrees Celsius), so that the medium is taken at the boiling point if it is hotter.
 *   <li>Where one face is heated at a time, faces take turns.
 * </ul>
 *
 * @param appliance the appliance
 * @param setting temperature it is set to [K]
 * @param totalPressure ambient pressure [Pa]
 * @param hasSkin whether the surface is skin
 * @see "cernela2015"
 */
public record CookingMedium(Appliance appliance, double setting, double totalPressure, boolean hasSkin) {
    /** Time between turns where one face is heated at a time [s]; common practice: every 1 to 2 minutes. */
    public static final double TURN_INTERVAL = 120;

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
        double temperature = temperature(draw, rest);
        double coefficient = draw.logarithmic(rest ? Uncertainty.REST : Uncertainty.CONVECTION, appliance.convection());
        double emissivity = emissivity(draw);
        double wet = wetShare(draw);
        double vapor = vaporPressure(draw, temperature);
        if (appliance.bothFaces()) {
            return List.of(new FaceCondition(
                    TimeProfile.constant(temperature),
                    TimeProfile.constant(coefficient),
                    emissivity,
                    wet,
                    vapor,
                    totalPressure));
        }
        return List.of(
                turning(temperature, IDLE_AIR, coefficient, IDLE_COEFFICIENT, wet, vapor),
                turning(IDLE_AIR, temperature, IDLE_COEFFICIENT, coefficient, wet, vapor));
    }

    private FaceCondition turning(
            double first, double second, double firstCoefficient, double secondCoefficient, double wet, double vapor) {
        return new FaceCondition(
                new TimeProfile.Alternating(first, second, TURN_INTERVAL),
                new TimeProfile.Alternating(firstCoefficient, secondCoefficient, TURN_INTERVAL),
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
        boolean boils = appliance.evaporation().kind() == Appliance.Evaporation.Kind.BOILING;
        if (boils) {
            return Math.min(temperature, IapwsIf97Saturation.temperature(totalPressure));
        }
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
            return draw.logarithmic(
                    Uncertainty.HUMIDITY,
                    appliance.evaporation().vaporPressure().get());
        }
        if (appliance.evaporation().relativeHumidity().isPresent()) {
            double humidity = draw.linear(
                    Uncertainty.HUMIDITY,
                    appliance.evaporation().relativeHumidity().get());
            return Math.min(1, Math.max(0, humidity)) * IapwsIf97Saturation.pressure(temperature);
        }
        return 0;
    }
}
