package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.matter.StandardAtmosphere;
import io.github.saltfront.quality.Band;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The stages from the refrigerator to the plate: heat until the thermometer shows the pull temperature, then rest. */
public final class CookStages {
    /** Kind of the heating stage. */
    public static final String HEAT = "heat";

    /** Kind of a stage of given time before the one that the thermometer ends. */
    static final String BEFORE = "heat-before";

    /** Kind of a stage of given time between that and the rest. */
    static final String AFTER = "heat-after";

    /** Kind of the resting stage. */
    public static final String REST = "rest";

    /** Longest heating [s]. */
    static final double LONGEST_HEAT = 24 * 3600;

    /** Error of a kitchen thermometer checked in ice water, 5th to 95th percentile [K]; estimate. */
    public static final Band PROBE = new Band(-0.7, 0, 0.7);

    private static final double MINUTE = 60;

    /** Density of raw meat, for the surface of the load [kg/m3]. */
    private static final double DENSITY = 1055;

    private final Request request;
    private final SafetyRule rule;
    private final double pressure;
    private final boolean skin;
    private final CookingMedium medium;
    private final CookingMedium restMedium;
    private final double rest;
    private final OptionalDouble heatTime;

    /**
     * Lays out the stages.
     *
     * @param request the request
     * @param rule what is required, for the rest that belongs to the consumer minimum
     */
    public CookStages(Request request, SafetyRule rule) {
        this(request, rule, OptionalDouble.empty());
    }

    private CookStages(Request request, SafetyRule rule, OptionalDouble heatTime) {
        this.request = request;
        this.rule = rule;
        this.heatTime = heatTime;
        pressure = StandardAtmosphere.pressure(request.cook().altitude());
        skin = request.food().meat().hasSkin();
        medium = mediumAt(request.cook().setting());
        CookSequence.Rest resting = request.cook().sequence().rest();
        Appliance bench = Catalog.load().appliances().get(resting.applianceId());
        restMedium = new CookingMedium(bench, bench.temperature().typical(), pressure, skin);
        rest = Math.max(
                resting.time().orElse(restByMass(request.food().pieceMass())),
                rule.consumerMinimum().rest());
    }

    /** The same stages where a time [s] and no thermometer ends the heat. */
    CookStages timed(double time) {
        return new CookStages(request, rule, OptionalDouble.of(time));
    }

    /** Usual rest: small pieces 5 min, roasts 15 min, birds 20 min (USDA-SR28 study notes, common practice). */
    private static double restByMass(double pieceMass) {
        if (pieceMass < 0.5) {
            return 5 * MINUTE;
        }
        return pieceMass < 1.5 ? 10 * MINUTE : pieceMass < 4 ? 15 * MINUTE : 20 * MINUTE;
    }

    private CookingMedium medium(Appliance appliance, double setting, double turnInterval, double warmUp) {
        Shape shape = request.food().shape();
        boolean round = !(shape instanceof Shape.Slab || shape instanceof Shape.Box);
        double volume = request.piecesAtOnce() * request.food().pieceMass() / DENSITY;
        return new CookingMedium(
                appliance,
                setting,
                pressure,
                skin,
                new CookingMedium.Use(turnInterval, warmUp, Math.min(50, volume * shape.surfaceToVolume()), round));
    }

    /**
     * Returns the medium of the stage that the thermometer ends, at a setting.
     *
     * @param setting the setting [K]
     * @return the medium, used as the request says
     */
    public CookingMedium mediumAt(double setting) {
        CookSequence sequence = request.cook().sequence();
        return medium(request.cook().appliance(), setting, sequence.turnInterval(), sequence.warmUp());
    }

    private DayEnsemble.StageFor stage(String kind, CookSequence.Step step, SaltExchange salt) {
        CookingMedium used = medium(step.appliance(), step.setting(), step.turnInterval(), 0);
        return draw -> new Stage(kind, used.faces(draw, false), salt, step.time(), StopRule.NEVER);
    }

    /** All stages from the first heat to the plate; salt on the surface goes on before the first. */
    List<DayEnsemble.StageFor> through(double pullTemperature, SaltExchange salt) {
        CookSequence sequence = request.cook().sequence();
        List<DayEnsemble.StageFor> stages = new ArrayList<>();
        SaltExchange next = salt;
        for (CookSequence.Step step : sequence.before()) {
            stages.add(stage(BEFORE, step, next));
            next = SaltExchange.KEEP;
        }
        stages.add(heat(pullTemperature, next));
        for (CookSequence.Step step : sequence.after()) {
            stages.add(stage(AFTER, step, SaltExchange.KEEP));
        }
        stages.add(restStage());
        return stages;
    }

    /** Time from the first heat to the plate without the stage that the thermometer ends [s]. */
    double fixedTime() {
        CookSequence sequence = request.cook().sequence();
        return sequence.timeBefore() + sequence.timeAfter() + rest;
    }

    /** Returns the rest before serving [s]. */
    public double rest() {
        return rest;
    }

    /**
     * Returns whether the medium is held so near the wished core that a hold, not a reading, ends the cook; never where no hold
     * counts.
     */
    public boolean isBath() {
        return rule.allowsHold() && isBath(request.cook().appliance());
    }

    static boolean isBath(Appliance appliance) {
        return appliance.medium() == Appliance.Medium.LIQUID && appliance.id().equals("water-bath");
    }

    /** Heating until the thermometer, with its error, shows the pull temperature [K]. */
    DayEnsemble.StageFor heat(double pullTemperature) {
        return heat(pullTemperature, SaltExchange.NONE);
    }

    /** Heating with salt on the surface. */
    DayEnsemble.StageFor heat(double pullTemperature, SaltExchange salt) {
        if (heatTime.isPresent()) {
            return draw -> new Stage(HEAT, medium.faces(draw, false), salt, heatTime.getAsDouble(), StopRule.NEVER);
        }
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
