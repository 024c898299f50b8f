package io.github.saltfront.app.export;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.data.Bibliography;
import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Sensitivity;
import io.github.saltfront.quality.JuiceLoss;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.safety.HoldTable;
import io.github.saltfront.safety.Meat;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Explains a plan from its own numbers: why the juice stays, how the salt moves, why a lower temperature with time is enough; in one
 * minute, as a lesson, and as the model has it; with questions for students whose answers come from the same numbers.
 */
public final class PlanExplained {
    private static final Phrases PHRASES = Phrases.of(PlanExplained.class);

    /** Steps of the table of holds [K]. */
    private static final double HOLD_STEP = 2;

    private final Plan plan;
    private final Fronts fronts;
    private final Optional<byte[]> film;
    private final ExplainPage page;

    private PlanExplained(Plan plan, Fronts fronts, Optional<byte[]> film) {
        this.plan = plan;
        this.fronts = fronts;
        this.film = film;
        page = new ExplainPage(
                PHRASES.say("why-this-works", plan.request().food().meat().name()));
    }

    /**
     * Writes the page.
     *
     * @param plan the plan
     * @param fronts its fronts
     * @param film the fronts as a film, to be folded into the page
     * @return a page without scripts and without requests to any host
     */
    public static String write(Plan plan, Fronts fronts, Optional<byte[]> film) {
        return new PlanExplained(plan, fronts, film).write();
    }

    private String write() {
        page.text(PHRASES.say(
                "x-g-mm-thick-every",
                food().pieces(),
                1000 * food().pieceMass(),
                2000 * food().shape().halfThickness()));
        List<String> sections = Stream.of("in-one-minute", "as-a-lesson", "as-it-is-computed", "questions")
                .map(PHRASES::say)
                .toList();
        page.contents(sections);
        page.section(1, sections.get(0));
        minute();
        page.section(2, sections.get(1));
        lesson();
        page.section(3, sections.get(2));
        model();
        page.section(4, sections.get(3));
        questions();
        page.text(PHRASES.say("a-plan-predicts-only-a"));
        return page.end();
    }

    private Request.Food food() {
        return plan.request().food();
    }

    private Plan.CookPlan cook() {
        return plan.cooking();
    }

    private boolean isSalted() {
        return plan.salting().treatment() != Request.Treatment.NONE;
    }

    private boolean isAhead() {
        return plan.salting().time() > 0;
    }

    private static String c(double temperature) {
        return Phrases.figures("%.1f °C", Temperature.toCelsius(temperature));
    }

    private static String percent(double share) {
        return Phrases.figures("%.2f %%", 100 * share);
    }

    private static String minutes(double seconds) {
        return QuantityFormat.time(seconds);
    }

    private static String range(Interval interval, double factor, String unit) {
        return PHRASES.say("to", factor * interval.median(), unit, factor * interval.low(), factor * interval.high());
    }

    private void minute() {
        if (isSalted()) {
            page.text(
                    isAhead()
                            ? PHRASES.say(
                                    "salt-creeps-in-it-gets",
                                    minutes(plan.salting().time()),
                                    percent(plan.salting().after().median()),
                                    percent(plan.result().coreSalt().median()))
                            : PHRASES.say("the-salt-goes-on-just"));
        }
        page.text(PHRASES.say(
                "heat-runs-the-middle-needs",
                minutes(cook().timeToPull().median()),
                c(cook().pullTemperature()),
                c(cook().peak().median())));
        page.text(PHRASES.say(
                "juice-leaves-where-proteins-shrink", range(plan.result().massLoss(), 100, "%")));
        page.text(PHRASES.say("safe-is-temperature-and-time", holdWords()));
        page.figure(FrontsSvg.of(fronts), PHRASES.say("the-two-fronts-time-runs"));
        film.ifPresent(gif -> page.film(gif, FrontsSvg.describe(fronts)));
    }

    private String holdWords() {
        ConsumerMinimum minimum = cook().verdict().rule().consumerMinimum();
        String official = PHRASES.say("the-official-minimum-for-consumers", minimum.describe());
        return cook().holdAtTarget()
                .map(hold -> PHRASES.say("at-the-peak-of-the", c(cook().peak().median()), minutes(hold), official))
                .orElse(isFish() ? official : PHRASES.say("at-the-peak-of-this", official));
    }

    private void lesson() {
        saltLesson();
        page.head(PHRASES.say("why-the-juice-stays"));
        double salt = plan.salting().after().median();
        double less = 1
                - JuiceLoss.saltFactor(salt)
                        / JuiceLoss.saltFactor(food().meat().nativeSalt());
        page.text(PHRASES.say("muscle-is-a-bundle-of"));
        page.text(
                less > 0.01
                        ? PHRASES.say("at-salt-the-proteins-swell", percent(salt), 100 * less)
                        : PHRASES.say("there-is-too-little-salt"));
        page.head(PHRASES.say("why-it-is-taken-out"));
        page.text(PHRASES.say(
                "at-on-the-thermometer-the",
                c(cook().pullTemperature()),
                minutes(cook().timeToPeak().median()),
                c(cook().peak().median()),
                cook().peak().median() - cook().pullTemperature()));
        if (isFish()) {
            page.head(PHRASES.say("why-fish-goes-to-the"));
            page.text(PHRASES.say(
                    "for-fish-no-official-table",
                    cook().verdict().rule().holdTable().title()));
            return;
        }
        page.head(PHRASES.say("why-a-lower-temperature-with"));
        page.text(PHRASES.say("bacteria-do-not-die-at"));
        page.table(List.of(PHRASES.say("at"), PHRASES.say("hold-for")), holds());
        page.text(PHRASES.say("guests-who-are-pregnant-very"));
    }

    private boolean isFish() {
        return cook().verdict().rule().meat() == Meat.FISH;
    }

    private void saltLesson() {
        if (!isAhead()) {
            return;
        }
        page.head(PHRASES.say("how-the-salt-moves"));
        double half = food().shape().halfThickness();
        page.text(PHRASES.say(
                "each-grain-of-salt-in",
                minutes(plan.salting().time()),
                1000 * Math.sqrt(diffusivity() * plan.salting().time()),
                1000 * half,
                percent(plan.result().outerSalt().median()),
                percent(plan.result().coreSalt().median())));
        plan.salting()
                .even()
                .ifPresent(even -> page.text(PHRASES.say(
                        "left-alone-the-salt-evens",
                        minutes(even.typical()),
                        minutes(even.low()),
                        minutes(even.high()))));
    }

    private double diffusivity() {
        return food().meat().diffusivity().medianAt(plan.request().salting().refrigerator());
    }

    private List<List<String>> holds() {
        HoldTable table = cook().verdict().rule().holdTable();
        List<List<String>> rows = new ArrayList<>();
        double first = Math.ceil(Temperature.toCelsius(table.lowestTemperature()));
        double last = Temperature.toCelsius(table.instantTemperature());
        for (double t = first; t < last; t += HOLD_STEP) {
            OptionalDouble hold = table.requiredHold(Temperature.fromCelsius(t));
            if (hold.isPresent()) {
                rows.add(List.of(Phrases.figures("%.0f °C", t), minutes(hold.getAsDouble())));
            }
        }
        rows.add(List.of(c(table.instantTemperature()), PHRASES.say("no-time-it-is-enough")));
        return rows;
    }

    private void model() {
        SaltDiffusivity d = food().meat().diffusivity();
        Appliance appliance = plan.request().cook().appliance();
        double half = food().shape().halfThickness();
        page.head(PHRASES.say("salt"));
        page.formula("∂c/∂t = ∇·(D ∇c),   D(T) = D₅ exp[−(Ea/R)(1/T − 1/278.15 K)]");
        page.text(PHRASES.say(
                "d-10-m-s-with",
                1e10 * d.medianAt5C(),
                d.geometricStandardDeviation(),
                d.activationEnergy().typical() / 1000,
                d.activationEnergy().low() / 1000,
                d.activationEnergy().high() / 1000,
                1000 * half,
                diffusivity() * plan.salting().time() / (half * half)));
        page.head(PHRASES.say("heat"));
        page.formula("ρ c(T) ∂T/∂t = ∇·(k ∇T),   −k ∂T/∂n = h (Tₛ − T∞) + ε σ (Tₛ⁴ − T∞⁴) + m″ L");
        page.text(PHRASES.say(
                "in-the-h-w-m",
                Phrases.within(appliance.name()),
                appliance.convection().typical(),
                appliance.convection().low(),
                appliance.convection().high(),
                Temperature.toCelsius(plan.request().cook().setting()),
                appliance.setPointError()));
        page.head(PHRASES.say("kill"));
        page.formula(PHRASES.say("share-dt-t-hold-t"));
        HoldTable table = cook().verdict().rule().holdTable();
        page.text(PHRASES.say(
                "t-hold-the-share-at",
                table.title(),
                table.logReduction() > 0 ? PHRASES.say("decades", table.logReduction()) : "",
                table.edition(),
                cook().holdShare().low()));
        page.head(PHRASES.say("juice"));
        page.formula(PHRASES.say("formula-of-loss"));
        page.text(PHRASES.say(
                "x-are-the-denatured-shares",
                food().meat().juiceFactor().low(),
                food().meat().juiceFactor().high(),
                JuiceLoss.saltFactor(plan.salting().after().median()),
                percent(plan.salting().after().median()),
                100 * JuiceLoss.HALF_BAND));
        page.head(PHRASES.say("uncertainty"));
        page.text(PHRASES.say("pieces-with-their-own-luck", plan.members()));
        page.table(
                List.of(PHRASES.say("result"), PHRASES.say("unknown"), PHRASES.say("moves-it-by")),
                plan.sensitivities().stream().map(PlanExplained::sensitivity).toList());
        page.text(PHRASES.say("sources", sources()));
    }

    private static List<String> sensitivity(Sensitivity sensitivity) {
        return switch (sensitivity.result()) {
            case TIME_TO_PULL -> effect(PHRASES.say("time-in-the-heat"), sensitivity, 1.0 / 60, "min");
            case MEAN_SALT ->
                effect(PHRASES.say("salt-on-the-plate"), sensitivity, 100, PHRASES.say("points-of-percent"));
            case MASS_LOSS -> effect(PHRASES.say("loss-of-weight"), sensitivity, 100, PHRASES.say("points-of-percent"));
        };
    }

    private static List<String> effect(String result, Sensitivity sensitivity, double factor, String unit) {
        String size = QuantityFormat.significant(Math.abs(factor * sensitivity.effect()), 2);
        return List.of(result, sensitivity.input().words(), "±" + size + " " + unit);
    }

    private String sources() {
        Bibliography books = Bibliography.load();
        List<String> found = new ArrayList<>();
        Stream.of(
                        food().meat().diffusivity().provenance(),
                        plan.request().cook().appliance().provenance())
                .flatMap(provenance -> provenance.sourceIds().stream())
                .distinct()
                .forEach(id -> books.find(id)
                        .ifPresent(book -> found.add(book.authors() + " " + book.year() + ", " + book.title())));
        return found.isEmpty() ? PHRASES.say("common-practice") : String.join("; ", found);
    }

    private void questions() {
        int n = 1;
        double half = food().shape().halfThickness();
        if (isAhead()) {
            page.question(
                    n++,
                    PHRASES.say("a-piece-twice-as-thick", minutes(plan.salting().time())),
                    PHRASES.say(
                            "four-times-as-long-the", minutes(4 * plan.salting().time())));
            page.question(
                    n++,
                    PHRASES.say("estimate-the-diffusion-coefficient"),
                    PHRASES.say(
                            "with-a-depth-x-near",
                            1e10 * diffusivity(),
                            1000 * Math.sqrt(diffusivity() * plan.salting().time()),
                            minutes(plan.salting().time()),
                            1000
                                    * Math.min(
                                            half,
                                            0.7
                                                    * Math.sqrt(diffusivity()
                                                            * plan.salting().time())),
                            1000
                                    * Math.min(
                                            2 * half,
                                            2
                                                    * Math.sqrt(diffusivity()
                                                            * plan.salting().time()))));
        }
        if (plan.salting().water() > 0) {
            page.question(
                    n++,
                    PHRASES.say(
                            "the-bath-is-g-of",
                            1000
                                    * plan.salting().saltPerWater()
                                    * plan.salting().water(),
                            1000 * plan.salting().water()),
                    PHRASES.say(
                            "of-the-water-of-salt",
                            100 * plan.salting().saltPerWater(),
                            100
                                    * plan.salting().saltPerWater()
                                    / (1 + plan.salting().saltPerWater())));
        }
        page.question(
                n++,
                PHRASES.say("by-how-much-would-the", c(cook().wished())),
                PHRASES.say(
                        "by-about-the-carry-over",
                        cook().peak().median() - cook().pullTemperature(),
                        c(cook().wished() + cook().peak().median() - cook().pullTemperature()),
                        c(cook().peak().median())));
        holdQuestion(n++);
        page.question(
                n,
                PHRASES.say("which-single-measurement-would-make"),
                plan.sensitivities().isEmpty()
                        ? PHRASES.say("the-thickness-time-goes-with")
                        : PHRASES.say(
                                "what-moves-it-most-is",
                                plan.sensitivities().get(0).input().words()));
    }

    private void holdQuestion(int number) {
        HoldTable table = cook().verdict().rule().holdTable();
        double low = Math.max(
                table.lowestTemperature(), Math.min(cook().peak().median(), table.highestTimedTemperature() - 1) - 1);
        OptionalDouble first = table.requiredHold(low);
        OptionalDouble second = table.requiredHold(low + 1);
        if (!isFish() && first.isPresent() && second.isPresent() && second.getAsDouble() > 0) {
            page.question(
                    number,
                    PHRASES.say("your-thermometer-shows-1-k", c(low + 1)),
                    PHRASES.say(
                            "in-truth-it-is-which",
                            c(low),
                            minutes(first.getAsDouble()),
                            minutes(second.getAsDouble()),
                            first.getAsDouble() / second.getAsDouble()));
        }
    }
}
