package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Steps in time: counted back from serving, or forward from now. */
final class Clock {
    private static final double PREHEAT = 20 * 60;
    private static final double DRYING = 10 * 60;

    private Clock() {}

    /** Time from the first step to serving [s]. */
    static double wholeTime(Request request, Plan.SaltPlan salting, double cookTimeHigh, CookStages stages) {
        double cook = Math.ceil(cookTimeHigh / 60) * 60;
        CookSequence sequence = request.cook().sequence();
        return beforeCook(request, salting) + sequence.timeBefore() + cook + sequence.timeAfter() + stages.rest();
    }

    private static double beforeCook(Request request, Plan.SaltPlan salting) {
        double before = salting.time() > 0 ? salting.time() + DRYING : 0;
        return Math.max(before, preheat(request));
    }

    private static double preheat(Request request) {
        return request.cook().appliance().medium() == Appliance.Medium.AIR ? PREHEAT : PREHEAT / 2;
    }

    static List<Plan.Step> steps(Request request, Plan.SaltPlan salting, Plan.CookPlan cooking, CookStages stages) {
        double cook = Math.ceil(cooking.timeToPull().high() / 60) * 60
                + request.cook().sequence().timeBefore();
        CookSequence sequence = request.cook().sequence();
        double rest = stages.rest() + sequence.timeAfter();
        boolean salted = salting.time() > 0;
        double before = salted ? salting.time() + DRYING : 0;
        double preheat = preheat(request);
        double wholeBeforeCook = beforeCook(request, salting);
        ZonedDateTime start;
        if (request.timing().serve().isPresent()) {
            ZonedDateTime serve = request.timing().serve().get();
            start = serve.minusSeconds((long) (wholeBeforeCook + cook + rest));
            if (start.isBefore(request.timing().now())) {
                ZonedDateTime possible = request.timing().now().plusSeconds((long) (wholeBeforeCook + cook + rest));
                throw new PlanningException(
                        "serve",
                        "the time to serve is too soon for this plan. Possible instead: serve "
                                + possible.plusMinutes(1)
                                        .withSecond(0)
                                        .withNano(0)
                                        .toLocalDateTime() + " or later.");
            }
        } else {
            start = request.timing().now();
        }
        ZonedDateTime cookStart = start.plusSeconds((long) wholeBeforeCook);
        List<Plan.Step> steps = new ArrayList<>();
        if (salted) {
            ZonedDateTime saltStart = cookStart.minusSeconds((long) before);
            steps.add(new Plan.Step(saltStart, Plan.StepKind.SALT, saltWords(salting), true));
            steps.add(new Plan.Step(
                    cookStart.minusSeconds((long) DRYING), Plan.StepKind.PAT_DRY, dryWords(salting), true));
        }
        if (salting.treatment() == Request.Treatment.SURFACE_SALT || salting.finish() > 0) {
            steps.add(new Plan.Step(cookStart.minusMinutes(2), Plan.StepKind.SALT_OUTSIDE, "Salt the outside.", true));
        }
        steps.add(new Plan.Step(
                cookStart.minusSeconds((long) preheat),
                Plan.StepKind.PREHEAT,
                String.format(
                        Locale.ROOT,
                        "Heat the %s to %.0f °C.",
                        request.cook().appliance().name().toLowerCase(Locale.ROOT),
                        Temperature.toCelsius(request.cook().setting())),
                true));
        steps.add(
                new Plan.Step(cookStart, Plan.StepKind.COOK, "Start cooking, thermometer in the thickest part.", true));
        steps.addAll(sequenceSteps(request, cookStart, cookStart.plusSeconds((long) cook)));
        ZonedDateTime earliest = cookStart.plusSeconds(
                (long) (sequence.timeBefore() + cooking.timeToPull().low()));
        steps.add(new Plan.Step(
                earliest,
                Plan.StepKind.WATCH,
                stages.isBath()
                        ? "From now on it may be done."
                        : String.format(
                                Locale.ROOT,
                                "From now on it may show %.1f °C: watch it, and take it out then.",
                                Temperature.toCelsius(cooking.pullTemperature())),
                false));
        steps.add(new Plan.Step(
                cookStart.plusSeconds((long) cook),
                Plan.StepKind.REST,
                "By now it should be out, resting uncovered.",
                false));
        steps.add(new Plan.Step(cookStart.plusSeconds((long) (cook + rest)), Plan.StepKind.SERVE, "Serve.", true));
        steps.sort(Comparator.comparing(Plan.Step::time));
        return List.copyOf(steps);
    }

    private static List<Plan.Step> sequenceSteps(Request request, ZonedDateTime start, ZonedDateTime out) {
        CookSequence sequence = request.cook().sequence();
        List<Plan.Step> steps = new ArrayList<>();
        ZonedDateTime at = start;
        for (CookSequence.Step step : sequence.before()) {
            steps.add(new Plan.Step(at, Plan.StepKind.NEXT, stepWords(step), true));
            at = at.plusSeconds((long) step.time());
        }
        if (!sequence.before().isEmpty()) {
            steps.add(new Plan.Step(
                    at,
                    Plan.StepKind.NEXT,
                    "Now to the next: "
                            + request.cook().appliance().name().toLowerCase(Locale.ROOT)
                            + String.format(
                                    Locale.ROOT,
                                    " at %.0f °C.",
                                    Temperature.toCelsius(request.cook().setting())),
                    true));
        }
        at = out;
        for (CookSequence.Step step : sequence.after()) {
            steps.add(new Plan.Step(at, Plan.StepKind.NEXT, "When it is out: " + stepWords(step), true));
            at = at.plusSeconds((long) step.time());
        }
        return steps;
    }

    private static String stepWords(CookSequence.Step step) {
        return String.format(
                Locale.ROOT,
                "%s at %.0f °C for %s.",
                step.appliance().name(),
                Temperature.toCelsius(step.setting()),
                QuantityFormat.time(step.time()));
    }

    private static String saltWords(Plan.SaltPlan salting) {
        if (!salting.treatment().isSoak()) {
            return "Salt the meat all over and lay it uncovered in the refrigerator.";
        }
        String bath = switch (salting.treatment()) {
            case DAIRY, MARINADE -> "marinade";
            default -> "brine";
        };
        return "Put the meat into the cold " + bath + ", in the refrigerator.";
    }

    private static String dryWords(Plan.SaltPlan salting) {
        if (!salting.treatment().isSoak()) {
            return "Take it out; pat it dry if it is wet. Do not rinse.";
        }
        return salting.treatment() == Request.Treatment.DAIRY
                ? "Take it out, let it drip off, pour the liquid away. Do not rinse."
                : "Take it out, pour the liquid away, pat the meat dry. Do not rinse.";
    }
}
