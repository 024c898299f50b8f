package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.matter.StandardAtmosphere;
import io.github.saltfront.quality.Band;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;

/** The stages from the refrigerator to the plate: heat until the thermometer shows the pull temperature, then rest. */
public final class CookStages {
    /** Kind of the heating stage. */
    public static final String HEAT = "heat";

    /** Kind of the resting stage. */
    public static final String REST = "rest";

    /** Longest heating [s]. */
    static final double LONGEST_HEAT = 24 * 3600;

    /** Error of a kitchen thermometer checked in ice water, 5th to 95th percentile [K]; estimate. */
    public static final Band PROBE = new Band(-0.7, 0, 0.7);

    private static final double MINUTE = 60;

    private final Request request;
    private final CookingMedium medium;
    private final CookingMedium restMedium;
    private final double rest;

    /**
     * Lays out the stages.
     *
     * @param request the request
     * @param rule what is required, for the rest that belongs to the consumer minimum
     */
    public CookStages(Request request, SafetyRule rule) {
        this.request = request;
        double pressure = StandardAtmosphere.pressure(request.cook().altitude());
        boolean skin = request.food().meat().hasSkin();
        medium = new CookingMedium(request.cook().appliance(), request.cook().setting(), pressure, skin);
        Appliance bench = Catalog.load().appliances().get("rest-bare");
        restMedium = new CookingMedium(bench, bench.temperature().typical(), pressure, skin);
        rest = Math.max(
                restByMass(request.food().pieceMass()), rule.consumerMinimum().rest());
    }

    /** Usual rest: small pieces 5 min, roasts 15 min, birds 20 min (USDA-SR28 study notes, common practice). */
    private static double restByMass(double pieceMass) {
        if (pieceMass < 0.5) {
            return 5 * MINUTE;
        }
        return pieceMass < 1.5 ? 10 * MINUTE : pieceMass < 4 ? 15 * MINUTE : 20 * MINUTE;
    }

    /** Returns the rest before serving [s]. */
    public double rest() {
        return rest;
    }

    /** Returns whether the medium is held so near the wished core that time, not temperature, ends the cook. */
    public boolean isBath() {
        return request.cook().appliance().medium() == Appliance.Medium.LIQUID
                && request.cook().appliance().id().equals("water-bath");
    }

    /** Heating until the thermometer, with its error, shows the pull temperature [K]. */
    DayEnsemble.StageFor heat(double pullTemperature) {
        return heat(pullTemperature, SaltExchange.NONE);
    }

    /** Heating with salt on the surface. */
    DayEnsemble.StageFor heat(double pullTemperature, SaltExchange salt) {
        return draw -> {
            double error = draw.linear(Uncertainty.PROBE, PROBE);
            StopRule stop = isBath()
                    ? new StopRule(StopRule.Kind.KILL_ABOVE, 1)
                    : new StopRule(StopRule.Kind.CORE_ABOVE, pullTemperature - error);
            return new Stage(HEAT, medium.faces(draw, false), salt, LONGEST_HEAT, stop);
        };
    }

    /** Returns the air of the bench on which it rests. */
    public CookingMedium restMedium() {
        return restMedium;
    }

    /** Returns the rest on the bench. */
    public DayEnsemble.StageFor restStage() {
        return draw -> new Stage(REST, restMedium.faces(draw, true), SaltExchange.NONE, rest, StopRule.NEVER);
    }
}
