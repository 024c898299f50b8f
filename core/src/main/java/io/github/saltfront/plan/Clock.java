package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.safety.OfficialLimits;
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

    /** Time to take meat out, pat it dry and lay it out [s]; common practice, no source. */
    static final double DRYING = 10 * 60;

    private Clock() {}

    /** Time from the first step to serving [s]. */
    static double wholeTime(Request request, Plan.SaltPlan salting, double cookTimeHigh, CookStages stages) {
        double cook = Math.ceil(cookTimeHigh / 60) * 60;
        CookSequence sequence = request.cook().sequence();
        double one = beforeCook(request, salting) + sequence.timeBefore() + cook + sequence.timeAfter() + stages.rest();
        return one + Loads.of(request, cookTimeHigh).delay();
    }

    private static double beforeCook(Request request, Plan.SaltPlan salting) {
        double before = salting.time() > 0 ? salting.time() + DRYING : 0;
        return Math.max(before, preheat(request));
    }

    /** Time in which what comes first gets hot [s]. */
    private static double preheat(Request request) {
        return preheat(request.cook().sequence().first(request.cook()).appliance());
    }

    private static double preheat(Appliance appliance) {
        return appliance.medium() == Appliance.Medium.AIR ? PREHEAT : PREHEAT / 2;
    }

    static List<Plan.Step> steps(Request request, Plan.SaltPlan salting, Plan.CookPlan cooking, CookStages stages) {
        CookSequence sequence = request.cook().sequence();
        double cook = Math.ceil(cooking.timeToPull().high() / 60) * 60 + sequence.timeBefore();
        double rest = stages.rest() + sequence.timeAfter();
        double wholeBeforeCook = beforeCook(request, salting);
        Loads loads = Loads.of(request, cooking.timeToPull().high());
        ZonedDateTime start = start(request, wholeBeforeCook + cook + rest + loads.delay());
        ZonedDateTime cookStart = start.plusSeconds((long) (wholeBeforeCook + loads.delay()));
        List<Plan.Step> steps = saltSteps(salting, cookStart);
        steps.add(preheating(sequence.first(request.cook()), cookStart));
        steps.add(new Plan.Step(cookStart, Plan.StepKind.COOK, cookWords(request, cooking), true));
        steps.addAll(stepsBefore(request, cookStart));
        ZonedDateTime earliest = cookStart.plusSeconds(
                (long) (sequence.timeBefore() + cooking.timeToPull().low()));
        steps.add(new Plan.Step(earliest, Plan.StepKind.WATCH, watchWords(request, cooking, stages), false));
        ZonedDateTime out = cookStart.plusSeconds((long) cook);
        steps.addAll(stepsAfter(request, earliest, out));
        ZonedDateTime resting = out.plusSeconds((long) sequence.timeAfter());
        String restWords = "By now it should be out, resting " + sequence.rest().words() + ".";
        steps.add(new Plan.Step(resting, Plan.StepKind.REST, restWords, false));
        steps.add(new Plan.Step(cookStart.plusSeconds((long) (cook + rest)), Plan.StepKind.SERVE, "Serve.", true));
        List<Plan.Step> all = loads.count() > 1 ? ofLoads(loads, steps) : steps;
        all.sort(Comparator.comparing(Plan.Step::time));
        return List.copyOf(all);
    }

    /** The steps of the last load, done for every load before it as much earlier as that comes. */
    private static List<Plan.Step> ofLoads(Loads loads, List<Plan.Step> last) {
        List<Plan.Step> all = new ArrayList<>();
        for (int load = 1; load <= loads.count(); load++) {
            long earlier = (long) loads.before(load);
            for (Plan.Step step : last) {
                boolean happens = switch (step.kind()) {
                    case PREHEAT -> load == 1;
                    case SERVE -> load == loads.count();
                    default -> true;
                };
                if (happens) {
                    all.add(new Plan.Step(
                            step.time().minusSeconds(earlier),
                            step.kind(),
                            ofLoad(load, loads.count(), step),
                            step.active()));
                }
            }
        }
        return all;
    }

    private static String ofLoad(int load, int count, Plan.Step step) {
        if (step.kind() == Plan.StepKind.PREHEAT || step.kind() == Plan.StepKind.SERVE) {
            return step.words();
        }
        String name = "Load " + load + " of " + count + ": ";
        return step.kind() == Plan.StepKind.REST && load < count
                ? String.format(
                        Locale.ROOT,
                        "%sby now it should be out. Keep it at %.0f °C or above till it is served.",
                        name,
                        Temperature.toCelsius(OfficialLimits.serving().hotHolding()))
                : name + step.words();
    }

    /** When to begin: so that it is ready when it is to be served, or now. */
    private static ZonedDateTime start(Request request, double whole) {
        ZonedDateTime now = request.timing().now();
        if (request.timing().serve().isEmpty()) {
            return now;
        }
        ZonedDateTime start = request.timing().serve().get().minusSeconds((long) whole);
        if (start.isBefore(now)) {
            ZonedDateTime possible = now.plusSeconds((long) whole);
            throw new PlanningException(
                    "serve",
                    "the time to serve is too soon for this plan. Possible instead: serve "
                            + possible.plusMinutes(1).withSecond(0).withNano(0).toLocalDateTime() + " or later.");
        }
        return start;
    }

    private static List<Plan.Step> saltSteps(Plan.SaltPlan salting, ZonedDateTime cookStart) {
        List<Plan.Step> steps = new ArrayList<>();
        if (salting.time() > 0) {
            ZonedDateTime saltStart = cookStart.minusSeconds((long) (salting.time() + DRYING));
            steps.add(new Plan.Step(saltStart, Plan.StepKind.SALT, saltWords(salting), true));
            steps.add(new Plan.Step(
                    cookStart.minusSeconds((long) DRYING), Plan.StepKind.PAT_DRY, dryWords(salting), true));
        }
        if (salting.treatment() == Request.Treatment.SURFACE_SALT || salting.finish() > 0) {
            steps.add(new Plan.Step(cookStart.minusMinutes(2), Plan.StepKind.SALT_OUTSIDE, "Salt the outside.", true));
        }
        return steps;
    }

    private static Plan.Step preheating(CookSequence.Step step, ZonedDateTime use) {
        return new Plan.Step(
                use.minusSeconds((long) preheat(step.appliance())),
                Plan.StepKind.PREHEAT,
                String.format(
                        Locale.ROOT,
                        "Heat the %s to %.0f °C.",
                        step.appliance().name().toLowerCase(Locale.ROOT),
                        Temperature.toCelsius(step.setting())),
                true);
    }

    private static String cookWords(Request request, Plan.CookPlan cooking) {
        List<CookSequence.Step> before = request.cook().sequence().before();
        if (!request.equipment().thermometer() && before.isEmpty()) {
            return "Start cooking, and set a timer for " + QuantityFormat.time(minutesUp(cooking)) + ".";
        }
        return before.isEmpty()
                ? "Start cooking, thermometer in the thickest part."
                : "Start cooking: " + stepWords(before.get(0));
    }

    private static String watchWords(Request request, Plan.CookPlan cooking, CookStages stages) {
        String then = request.cook().sequence().after().isEmpty() ? "take it out" : "go on to what comes next";
        if (!request.equipment().thermometer()) {
            return "The time is up: " + then
                    + ". Not before, whatever it looks like: color and clear juice show nothing.";
        }
        return stages.isBath()
                ? "From now on it may be done."
                : String.format(
                        Locale.ROOT,
                        "From now on it may show %.1f °C: watch it, and %s then.",
                        Temperature.toCelsius(cooking.pullTemperature()),
                        then);
    }

    private static double minutesUp(Plan.CookPlan cooking) {
        return 60 * Math.ceil(cooking.timeToPull().high() / 60);
    }

    /** What comes before the stage that the thermometer ends, and that stage itself. */
    private static List<Plan.Step> stepsBefore(Request request, ZonedDateTime start) {
        List<CookSequence.Step> before = request.cook().sequence().before();
        List<Plan.Step> steps = new ArrayList<>();
        ZonedDateTime at = start;
        for (int i = 0; i < before.size(); i++) {
            at = at.plusSeconds((long) before.get(i).time());
            boolean last = i == before.size() - 1;
            CookSequence.Step next = last ? request.cook().sequence().main(request.cook()) : before.get(i + 1);
            if (!before.get(i).isSameHeat(next)) {
                steps.add(preheating(next, at));
            }
            String words = last
                    ? String.format(
                            Locale.ROOT,
                            "On to the next: %s at %.0f °C, thermometer in the thickest part.",
                            next.appliance().name(),
                            Temperature.toCelsius(next.setting()))
                    : "On to the next: " + stepWords(next);
            steps.add(new Plan.Step(at, Plan.StepKind.NEXT, words, true));
        }
        return steps;
    }

    private static List<Plan.Step> stepsAfter(Request request, ZonedDateTime earliest, ZonedDateTime out) {
        List<Plan.Step> steps = new ArrayList<>();
        CookSequence.Step last = request.cook().sequence().main(request.cook());
        ZonedDateTime at = out;
        for (CookSequence.Step step : request.cook().sequence().after()) {
            boolean first = at.equals(out);
            if (!last.isSameHeat(step)) {
                steps.add(preheating(step, first ? earliest : at));
            }
            String words = first ? "As soon as it shows that, at the latest now: " : "On to the next: ";
            steps.add(new Plan.Step(at, Plan.StepKind.NEXT, words + stepWords(step), true));
            at = at.plusSeconds((long) step.time());
            last = step;
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
