package io.github.saltfront.app.export;

import io.github.saltfront.app.probe.LogProblem;
import io.github.saltfront.safety.CannotTell;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.Lethality;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.MeasuredVerdict;
import io.github.saltfront.safety.NotMet;
import io.github.saltfront.safety.ShownByMeasurement;
import io.github.saltfront.units.Temperature;
import java.util.Locale;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes a result as JSON; its names are a contract. */
public final class LethalityJson {
    /** Name and version of the contract. */
    public static final String SCHEMA = "saltfront-lethality-1";

    private static final int MOST_POINTS = 1000;
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private LethalityJson() {}

    /**
     * Writes a result.
     *
     * @param result the result
     * @return the JSON text
     */
    public static String write(LethalityResult result) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("schema", SCHEMA).put("version", result.version());
        verdict(root, result);
        limits(root, result);
        log(root, result);
        series(root, result);
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root);
    }

    private static void verdict(ObjectNode root, LethalityResult result) {
        MeasuredVerdict verdict = result.verdict();
        Lethality lethality = verdict.evidence().lethality();
        root.put("verdict", name(verdict)).put("headline", verdict.headline());
        verdict.reasons().forEach(root.putArray("reasons")::add);
        root.put("kitchen_note", verdict.kitchenNote());
        root.put("hold_share", lethality.share());
        root.put("hold_share_text", result.shareText());
        root.put("log_reduction_text", result.logReductionText());
        result.completeAfter()
                .ifPresentOrElse(after -> root.put("fulfilled_at_s", after), () -> root.putNull("fulfilled_at_s"));
        root.putObject("table")
                .put("title", result.table().title())
                .put("edition", result.table().edition())
                .put("lowest_temperature_c", celsius(result.table().lowestTemperature()));
        root.putObject("consumer_minimum")
                .put("text", verdict.consumerMinimum().describe())
                .put("temperature_c", celsius(verdict.consumerMinimum().temperature()))
                .put("rest_s", verdict.consumerMinimum().rest())
                .put("edition", io.github.saltfront.safety.ConsumerMinimum.EDITION)
                .put("met", verdict.isMet() && verdict.evidence().consumerMinimumMet())
                .put("finding", result.consumerMinimumText());
        root.put("salted", verdict.rule().salted());
        verdict.rule().foodCodeMinimums().forEach(root.putArray("food_code_minimums")::add);
    }

    private static String name(MeasuredVerdict verdict) {
        if (verdict instanceof ShownByMeasurement) {
            return "shown_by_measurement";
        }
        if (verdict instanceof NotMet) {
            return "not_met";
        }
        if (verdict instanceof CannotTell) {
            return "cannot_tell";
        }
        throw new AssertionError(verdict);
    }

    private static void limits(ObjectNode root, LethalityResult result) {
        ArrayNode limits = root.putArray("limits");
        for (LimitCheck limit : result.limits()) {
            limits.addObject()
                    .put("id", limit.id())
                    .put("outcome", limit.outcome().name().toLowerCase(Locale.ROOT))
                    .put("measured_s", limit.measured())
                    .put("text", limit.text());
        }
        result.information().forEach(root.putArray("information")::add);
        ArrayNode cautions = root.putArray("cautions");
        for (Caution caution : result.cautions()) {
            cautions.addObject()
                    .put("id", caution.id())
                    .put("text", caution.text())
                    .put("cannot_be_switched_off", caution.cannotBeSwitchedOff());
        }
    }

    private static void log(ObjectNode root, LethalityResult result) {
        MeasuredRecord measured = result.measured();
        ObjectNode log = root.putObject("log");
        log.put("sha256", result.reading().sha256())
                .put("rows", result.reading().rows())
                .put(
                        "duration_s",
                        measured.log().time(measured.log().size() - 1)
                                - measured.log().time(0))
                .put("highest_reading_c", celsius(measured.log().highest()))
                .put("gaps", measured.gaps())
                .put("longest_interval_s", measured.longestInterval())
                .put("repeated", measured.log().repeated())
                .put("contradicting", measured.log().contradicting())
                .put("set_aside", measured.log().setAside())
                .put("thermometer", measured.probe().describe())
                .put("placement", measured.placement().describe());
        result.reading().probes().forEach(log.putArray("probes")::add);
        result.reading().notes().forEach(log.putArray("notes")::add);
        ArrayNode problems = log.putArray("problems");
        for (LogProblem problem : result.reading().problems()) {
            problems.addObject().put("line", problem.line()).put("message", problem.message());
        }
    }

    private static void series(ObjectNode root, LethalityResult result) {
        MeasuredRecord measured = result.measured();
        double[] shares = measured.runningShare(result.table());
        int last = shares.length - 1;
        int step = 1 + last / MOST_POINTS;
        ObjectNode series = root.putObject("series");
        ArrayNode time = series.putArray("time_s");
        ArrayNode reading = series.putArray("reading_c");
        ArrayNode share = series.putArray("hold_share");
        for (int i = 0; i <= last; i += i + step > last && i < last ? last - i : step) {
            time.add(measured.log().time(i) - measured.log().time(0));
            reading.add(celsius(measured.log().reading(i)));
            share.add(shares[i]);
        }
    }

    private static double celsius(double kelvin) {
        return Math.rint(Temperature.toCelsius(kelvin) * 1e4) / 1e4;
    }
}
