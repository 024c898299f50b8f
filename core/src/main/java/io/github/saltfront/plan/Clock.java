package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Steps in time: counted back from serving, or forward from now. */
final class Clock {
    private static final Phrases PHRASES = Phrases.of(Clock.class);

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
        String restWords = PHRASES.say("by-now-it-should-be", sequence.rest().words());
        steps.add(new Plan.Step(resting, Plan.StepKind.REST, restWords, false));
        steps.add(new Plan.Step(
                cookStart.plusSeconds((long) (cook + rest)), Plan.StepKind.SERVE, PHRASES.say("serve"), true));
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
        String name = PHRASES.say("load-of", load, count);
        return step.kind() == Plan.StepKind.REST && load < count
                ? PHRASES.say(
                        "by-now-it-should-be-2",
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
                    PHRASES.say(
                            "the-time-to-serve-is",
                            possible.plusMinutes(1).withSecond(0).withNano(0).toLocalDateTime()));
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
            steps.add(new Plan.Step(
                    cookStart.minusMinutes(2), Plan.StepKind.SALT_OUTSIDE, PHRASES.say("salt-the-outside"), true));
        }
        return steps;
    }

    private static Plan.Step preheating(CookSequence.Step step, ZonedDateTime use) {
        return new Plan.Step(
                use.minusSeconds((long) preheat(step.appliance())),
                Plan.StepKind.PREHEAT,
                PHRASES.say(
                        "heat-the-to-c",
                        Phrases.within(step.appliance().name()),
                        Temperature.toCelsius(step.setting())),
                true);
    }

    private static String cookWords(Request request, Plan.CookPlan cooking) {
        List<CookSequence.Step> before = request.cook().sequence().before();
        if (!request.equipment().thermometer() && before.isEmpty()) {
            return PHRASES.say("start-cooking-and-set-a", QuantityFormat.time(minutesUp(cooking)));
        }
        return before.isEmpty()
                ? PHRASES.say("start-cooking-thermometer-in-the")
                : PHRASES.say("start-cooking", stepWords(before.get(0)));
    }

    private static String watchWords(Request request, Plan.CookPlan cooking, CookStages stages) {
        String then = request.cook().sequence().after().isEmpty()
                ? PHRASES.say("take-it-out")
                : PHRASES.say("go-on-to-what-comes");
        if (!request.equipment().thermometer()) {
            return PHRASES.say("the-time-is-up-not", then);
        }
        return stages.isBath()
                ? PHRASES.say("from-now-on-it-may")
                : PHRASES.say("from-now-on-it-may-2", Temperature.toCelsius(cooking.pullTemperature()), then);
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
                    ? PHRASES.say("on-to-the-next-at", next.appliance().name(), Temperature.toCelsius(next.setting()))
                    : PHRASES.say("on-to-the-next", stepWords(next));
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
            String words = first ? PHRASES.say("as-soon-as-it-shows") : PHRASES.say("on-to-the-next-2");
            steps.add(new Plan.Step(at, Plan.StepKind.NEXT, words + stepWords(step), true));
            at = at.plusSeconds((long) step.time());
            last = step;
        }
        return steps;
    }

    private static String stepWords(CookSequence.Step step) {
        return PHRASES.say(
                "at-c-for",
                step.appliance().name(),
                Temperature.toCelsius(step.setting()),
                QuantityFormat.time(step.time()));
    }

    private static String saltWords(Plan.SaltPlan salting) {
        if (!salting.treatment().isSoak()) {
            return PHRASES.say("salt-the-meat-all-over");
        }
        String bath = switch (salting.treatment()) {
            case DAIRY, MARINADE -> PHRASES.say("marinade");
            default -> PHRASES.say("brine");
        };
        return PHRASES.say("put-the-meat-into-the", bath);
    }

    private static String dryWords(Plan.SaltPlan salting) {
        if (!salting.treatment().isSoak()) {
            return PHRASES.say("take-it-out-pat-it");
        }
        return salting.treatment() == Request.Treatment.DAIRY
                ? PHRASES.say("take-it-out-let-it")
                : PHRASES.say("take-it-out-pour-the");
    }
}
