package io.github.saltfront.app.notebook;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.learn.DiffusivityKnowledge;
import io.github.saltfront.learn.GainResponse;
import io.github.saltfront.learn.SaltTaste;
import io.github.saltfront.learn.TimedCook;
import io.github.saltfront.learn.TimingResponse;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SolidCheck;
import io.github.saltfront.safety.ProbeError;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import tools.jackson.databind.JsonNode;

/**
 * What can be learned from one cook. It is computed when the cook is noted, from the plan without anything learned, and kept.
 *
 * @param appliance id of the appliance
 * @param timed times in the heat beside what the model says of them
 * @param ovenOffset reading in the oven less the dial [K]
 * @param refrigerator reading in the refrigerator [K]
 * @param tasting what tasters said of the salt
 * @param thickness logarithm of the thickness over the usual one [-]
 * @param meat key of the kind of meat
 * @param soak gain in the brine beside what the model says of it
 */
public record Evidence(
        String appliance,
        Optional<TimedCook> timed,
        OptionalDouble ovenOffset,
        OptionalDouble refrigerator,
        Optional<SaltTaste.Tasting> tasting,
        OptionalDouble thickness,
        String meat,
        Optional<DiffusivityKnowledge.WeighedSoak> soak) {
    private static final Phrases PHRASES = Phrases.of(Evidence.class);

    private static final long SEED = 1;

    /** Least salt by which a tasting counts [kg/kg]: below it nothing but the meat's own is tasted. */
    private static final double LEAST_SALT = 1e-3;

    /**
     * Computes the evidence.
     *
     * @param note what was noted
     * @param plan the plan of its request, without anything learned
     * @param probe the error of the thermometer, if it was checked
     * @param executor where to run parts of the ensemble
     * @return the evidence
     */
    public static Evidence of(CookNote note, Plan plan, Optional<ProbeError> probe, Executor executor) {
        Request request = plan.request();
        CookNote.Measured measured = note.measured();
        double setting = request.cook().setting();
        return new Evidence(
                request.cook().appliance().id(),
                timed(note, plan, probe, executor),
                measured.oven().isPresent()
                        ? OptionalDouble.of(measured.oven().getAsDouble() - setting)
                        : OptionalDouble.empty(),
                measured.refrigerator(),
                tasting(note, plan),
                thickness(note, request),
                request.food().meat().diffusivity().id(),
                soak(note, plan, executor));
    }

    /** A bath is left out, since there time makes the hold; so are several appliances in a row, whose times cannot be told apart. */
    private static Optional<TimedCook> timed(CookNote note, Plan plan, Optional<ProbeError> probe, Executor executor) {
        Request request = plan.request();
        if (note.measured().pull().isEmpty() || request.cook().appliance().medium() == Appliance.Medium.LIQUID) {
            return Optional.empty();
        }
        CookNote.Pull pull = note.measured().pull().get();
        double middle = probe.map(error -> 0.5 * (error.lower(pull.reading()) + error.upper(pull.reading())))
                .orElse(pull.reading());
        double factor = plan.cooking()
                .check()
                .map(SolidCheck::correction)
                .map(SolidCheck.Correction::timeFactor)
                .orElse(1.0);
        TimingResponse response = TimingResponse.of(asMeasured(note, request), List.of(middle), factor, executor, SEED);
        return Optional.of(new TimedCook(response, List.of(pull.time())));
    }

    /** With the thickness that was measured: a thicker piece must not be taken for a colder oven. */
    private static Request asMeasured(CookNote note, Request request) {
        Request.Food food = request.food();
        OptionalDouble measured = note.measured().thickness();
        if (food.cut().isEmpty() || measured.isEmpty()) {
            return request;
        }
        Shape shape;
        try {
            shape = PieceShape.of(food.cut().get(), food.pieceMass(), measured);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(PHRASES.say("measured-thickness", e.getMessage()), e);
        }
        return request.of(new Request.Food(
                food.cut(),
                food.meat(),
                shape,
                food.pieces(),
                food.pieceMass(),
                food.edibleShare(),
                food.startTemperature()));
    }

    private static Optional<SaltTaste.Tasting> tasting(CookNote note, Plan plan) {
        Interval salt = plan.salting().after();
        List<SaltTaste.Rating> said = note.saltRatings();
        if (said.isEmpty() || salt.low() < LEAST_SALT) {
            return Optional.empty();
        }
        double spread = Math.log(salt.high() / salt.low()) / (2 * Draw.NINETY_FIVE);
        return Optional.of(new SaltTaste.Tasting(Math.log(salt.median()), spread, said));
    }

    private static OptionalDouble thickness(CookNote note, Request request) {
        Optional<Cut> cut = request.food().cut();
        if (cut.isEmpty() || note.measured().thickness().isEmpty()) {
            return OptionalDouble.empty();
        }
        double usual = PieceShape.thickness(cut.get(), request.food().pieceMass());
        return OptionalDouble.of(Math.log(note.measured().thickness().getAsDouble() / usual));
    }

    private static Optional<DiffusivityKnowledge.WeighedSoak> soak(CookNote note, Plan plan, Executor executor) {
        OptionalDouble gain = note.measured().masses().gain();
        if (gain.isEmpty() || !plan.salting().treatment().isSoak()) {
            return Optional.empty();
        }
        GainResponse response = GainResponse.of(asMeasured(note, plan.request()), plan.salting(), executor, SEED);
        double edible = gain.getAsDouble() / plan.request().food().edibleShare();
        return Optional.of(new DiffusivityKnowledge.WeighedSoak(response, edible));
    }

    /** Returns the evidence as JSON, as it is kept. */
    public Map<String, Object> toJson() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("appliance", appliance);
        timed.ifPresent(t -> json.put(
                "timed",
                Map.of(
                        "settings", t.response().settings(),
                        "convections", t.response().convections(),
                        "log_times", t.response().logTimes(),
                        "covariance", t.response().covariance(),
                        "times_s", t.times())));
        ovenOffset.ifPresent(value -> json.put("oven_offset_k", value));
        refrigerator.ifPresent(value -> json.put("refrigerator_k", value));
        tasting.ifPresent(t -> json.put(
                "tasting",
                Map.of(
                        "log_salt", t.logSalt(),
                        "spread", t.spread(),
                        "ratings", t.ratings().stream().map(Enum::name).toList())));
        thickness.ifPresent(value -> json.put("log_thickness", value));
        json.put("meat", meat);
        soak.ifPresent(s -> json.put(
                "soak",
                Map.of(
                        "places", s.response().places(),
                        "gains", s.response().gains(),
                        "spread", s.response().spread(),
                        "gain", s.gain())));
        return json;
    }

    /**
     * Reads what {@link #toJson} wrote.
     *
     * @param json the JSON
     * @return the evidence
     * @throws IllegalArgumentException if it is not whole
     */
    public static Evidence read(JsonNode json) {
        Optional<TimedCook> timed = find(json, "timed")
                .map(t -> new TimedCook(
                        new TimingResponse(
                                numbers(t.path("settings")),
                                numbers(t.path("convections")),
                                numbers(t.path("log_times")),
                                numbers(t.path("covariance"))),
                        numbers(t.path("times_s"))));
        Optional<SaltTaste.Tasting> tasting = find(json, "tasting").map(t -> {
            List<SaltTaste.Rating> said = new ArrayList<>();
            t.path("ratings").forEach(r -> said.add(SaltTaste.Rating.valueOf(r.asString())));
            return new SaltTaste.Tasting(number(t.path("log_salt")), number(t.path("spread")), said);
        });
        Optional<DiffusivityKnowledge.WeighedSoak> soak = find(json, "soak")
                .map(s -> new DiffusivityKnowledge.WeighedSoak(
                        new GainResponse(numbers(s.path("places")), numbers(s.path("gains")), number(s.path("spread"))),
                        number(s.path("gain"))));
        return new Evidence(
                json.path("appliance").asString(""),
                timed,
                findNumber(json, "oven_offset_k"),
                findNumber(json, "refrigerator_k"),
                tasting,
                findNumber(json, "log_thickness"),
                json.path("meat").asString(""),
                soak);
    }

    private static Optional<JsonNode> find(JsonNode json, String key) {
        return json.path(key).isObject() ? Optional.of(json.path(key)) : Optional.empty();
    }

    private static OptionalDouble findNumber(JsonNode json, String key) {
        return json.path(key).isNumber() ? OptionalDouble.of(json.path(key).asDouble()) : OptionalDouble.empty();
    }

    private static double number(JsonNode node) {
        if (!node.isNumber()) {
            throw new IllegalArgumentException(PHRASES.say("the-evidence-of-a-cook"));
        }
        return node.asDouble();
    }

    private static List<Double> numbers(JsonNode node) {
        List<Double> values = new ArrayList<>();
        node.forEach(value -> values.add(number(value)));
        return values;
    }
}
