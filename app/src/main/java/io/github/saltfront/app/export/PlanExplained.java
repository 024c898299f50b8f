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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Explains a plan from its own numbers: why the juice stays, how the salt moves, why a lower temperature with time is enough; in one
 * minute, as a lesson, and as the model has it; with questions for students whose answers come from the same numbers.
 */
public final class PlanExplained {
    private static final List<String> SECTIONS =
            List.of("In one minute", "As a lesson", "As the model has it", "Questions for students");

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
        page = new ExplainPage("Why this works: " + plan.request().food().meat().name());
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
        page.text(String.format(
                Locale.ROOT,
                "%d x %.0f g, %.0f mm thick. Every number here is this plan's own; intervals hold 90 of 100 such cooks.",
                food().pieces(),
                1000 * food().pieceMass(),
                2000 * food().shape().halfThickness()));
        page.contents(SECTIONS);
        page.section(1, SECTIONS.get(0));
        minute();
        page.section(2, SECTIONS.get(1));
        lesson();
        page.section(3, SECTIONS.get(2));
        model();
        page.section(4, SECTIONS.get(3));
        questions();
        page.text(
                "A plan predicts. Only a thermometer in the coldest spot shows that food is done; professional kitchens follow"
                        + " local rules and an approved written process.");
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
        return String.format(Locale.ROOT, "%.1f °C", Temperature.toCelsius(temperature));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f %%", 100 * share);
    }

    private static String minutes(double seconds) {
        return QuantityFormat.time(seconds);
    }

    private static String range(Interval interval, double factor, String unit) {
        return String.format(
                Locale.ROOT,
                "%.1f %s (%.1f to %.1f)",
                factor * interval.median(),
                unit,
                factor * interval.low(),
                factor * interval.high());
    }

    private void minute() {
        if (isSalted()) {
            page.text(
                    isAhead()
                            ? String.format(
                                    Locale.ROOT,
                                    "Salt creeps. In %s it gets from the outside far enough that the meat holds %s on average, while the middle still"
                                            + " has %s when it is served. Nothing pushes it but chance: salt wanders from where there is much to where"
                                            + " there is little.",
                                    minutes(plan.salting().time()),
                                    percent(plan.salting().after().median()),
                                    percent(plan.result().coreSalt().median()))
                            : "The salt goes on just before the heat. It has no time to wander: it seasons the outside and stays there.");
        }
        page.text(String.format(
                Locale.ROOT,
                "Heat runs. The middle needs %s to show %s, hundreds of times faster than salt over the same way. Taken out then, it still"
                        + " rises to %s, because the hot outside goes on warming the middle.",
                minutes(cook().timeToPull().median()),
                c(cook().pullTemperature()),
                c(cook().peak().median())));
        page.text(String.format(
                Locale.ROOT,
                "Juice leaves where proteins shrink, and they shrink more the hotter it gets. This plan loses %s of the raw weight."
                        + " Salt loosens the proteins, so that they hold more of it.",
                range(plan.result().massLoss(), 100, "%")));
        page.text("Safe is temperature and time together. " + holdWords());
        page.figure(
                FrontsSvg.of(fronts),
                "The two fronts. Time runs to the right, depth from the surface down to the middle: salt above, heat below.");
        film.ifPresent(gif -> page.film(gif, FrontsSvg.describe(fronts)));
    }

    private String holdWords() {
        ConsumerMinimum minimum = cook().verdict().rule().consumerMinimum();
        String official = "The official minimum for consumers is " + minimum.describe() + ".";
        return cook().holdAtTarget()
                .map(hold -> String.format(
                        Locale.ROOT,
                        "At the peak of %s the worst place needs %s to kill what it must; at a higher temperature it would be shorter, at a"
                                + " lower one longer. %s",
                        c(cook().peak().median()),
                        minutes(hold),
                        official))
                .orElse(isFish() ? official : "At the peak of this plan no time is needed any more. " + official);
    }

    private void lesson() {
        saltLesson();
        page.head("Why the juice stays");
        double salt = plan.salting().after().median();
        double less = 1
                - JuiceLoss.saltFactor(salt)
                        / JuiceLoss.saltFactor(food().meat().nativeSalt());
        page.text(
                "Muscle is a bundle of tubes full of water. From about 40 °C on the tubes narrow, from about 65 °C on they also"
                        + " shorten, and both press juice out. The first cannot be avoided if meat is to be cooked; the second begins just where"
                        + " many people stop.");
        page.text(
                less > 0.01
                        ? String.format(
                                Locale.ROOT,
                                "At %s salt the proteins swell and let each other go: our model takes %.0f %% off the juice that is pressed out"
                                        + " (good to half of that, since measurements disagree).",
                                percent(salt),
                                100 * less)
                        : "There is too little salt here to change how much juice is pressed out: below 0.5 % nobody has measured an"
                                + " effect.");
        page.head("Why it is taken out early");
        page.text(String.format(
                Locale.ROOT,
                "At %s on the thermometer the outside is far hotter than the middle. That heat is on its way in: %s after it is out, the"
                        + " middle peaks at %s, %.1f K higher. Thick pieces and hot ovens carry over more, thin pieces and gentle heat less.",
                c(cook().pullTemperature()),
                minutes(cook().timeToPeak().median()),
                c(cook().peak().median()),
                cook().peak().median() - cook().pullTemperature()));
        if (isFish()) {
            page.head("Why fish goes to the official temperature");
            page.text("For fish no official table trades temperature for time: "
                    + cook().verdict().rule().holdTable().title() + ". The one figure is reached in the coldest spot.");
            return;
        }
        page.head("Why a lower temperature with time is enough");
        page.text(
                "Bacteria do not die at a temperature; they die at a rate, and the rate grows steeply. The table gives the time for the"
                        + " same kill in this meat. It is read at the worst place, not at the middle by assumption.");
        page.table(List.of("at", "hold for"), holds());
        page.text(
                "Guests who are pregnant, very young, old or weakened get the official minimum, whatever the table says.");
    }

    private boolean isFish() {
        return cook().verdict().rule().meat() == Meat.FISH;
    }

    private void saltLesson() {
        if (!isAhead()) {
            return;
        }
        page.head("How the salt moves");
        double half = food().shape().halfThickness();
        page.text(String.format(
                Locale.ROOT,
                "Each grain of salt in solution staggers about and forgets where it came from. Such a walk covers twice the way only in four"
                        + " times the time. In the %s of this plan it covers some %.0f mm; the middle is %.0f mm away. That is why the outer 5 mm"
                        + " hold %s and the middle %s when it is served.",
                minutes(plan.salting().time()),
                1000 * Math.sqrt(diffusivity() * plan.salting().time()),
                1000 * half,
                percent(plan.result().outerSalt().median()),
                percent(plan.result().coreSalt().median())));
        plan.salting()
                .even()
                .ifPresent(even -> page.text(String.format(
                        Locale.ROOT,
                        "Left alone the salt evens out: after about %s (%s to %s) the middle is as salty as the mean, as far as a tongue can"
                                + " tell.",
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
                rows.add(List.of(String.format(Locale.ROOT, "%.0f °C", t), minutes(hold.getAsDouble())));
            }
        }
        rows.add(List.of(c(table.instantTemperature()), "no time: it is enough to get there"));
        return rows;
    }

    private void model() {
        SaltDiffusivity d = food().meat().diffusivity();
        Appliance appliance = plan.request().cook().appliance();
        double half = food().shape().halfThickness();
        page.head("Salt");
        page.formula("∂c/∂t = ∇·(D ∇c),   D(T) = D₅ exp[−(Ea/R)(1/T − 1/278.15 K)]");
        page.text(String.format(
                Locale.ROOT,
                "D₅ = %.1f·10⁻¹⁰ m²/s with a geometric standard deviation of %.1f; Ea = %.0f kJ/mol (%.0f to %.0f). Over the half thickness of"
                        + " %.1f mm the Fourier number of the salting is Dt/L² = %.2f; at 1 the middle has nearly caught up.",
                1e10 * d.medianAt5C(),
                d.geometricStandardDeviation(),
                d.activationEnergy().typical() / 1000,
                d.activationEnergy().low() / 1000,
                d.activationEnergy().high() / 1000,
                1000 * half,
                diffusivity() * plan.salting().time() / (half * half)));
        page.head("Heat");
        page.formula("ρ c(T) ∂T/∂t = ∇·(k ∇T),   −k ∂T/∂n = h (Tₛ − T∞) + ε σ (Tₛ⁴ − T∞⁴) + m″ L");
        page.text(String.format(
                Locale.ROOT,
                "In the %s h = %.0f W/(m²·K) (%.0f to %.0f), by air or contact alone; the surface also radiates and evaporates, which holds it"
                        + " near the boiling point while it is wet. Its true temperature is taken as %.0f °C within %.0f K.",
                appliance.name().toLowerCase(Locale.ROOT),
                appliance.convection().typical(),
                appliance.convection().low(),
                appliance.convection().high(),
                Temperature.toCelsius(plan.request().cook().setting()),
                appliance.setPointError()));
        page.head("Kill");
        page.formula("share = ∫ dt / t_hold(T(t)) ≥ 1 at the worst place");
        HoldTable table = cook().verdict().rule().holdTable();
        page.text(String.format(
                Locale.ROOT,
                "t_hold: %s%s, %s. The share at the lower end of the ensemble is %.1f.",
                table.title(),
                table.logReduction() > 0 ? String.format(Locale.ROOT, ", %.1f decades", table.logReduction()) : "",
                table.edition(),
                cook().holdShare().low()));
        page.head("Juice");
        page.formula("loss = f·g(s)·[0.063·(x₁ + x₂)/2 + 0.182·x₃] + evaporation");
        page.text(String.format(
                Locale.ROOT,
                "x are the denatured shares of myosin, of the soluble proteins with collagen, and of actin; f is this animal's factor (%.2f to"
                        + " %.2f), g the effect of salt, %.2f at %s. Half band of the model against data: %.0f points of percent.",
                food().meat().juiceFactor().low(),
                food().meat().juiceFactor().high(),
                JuiceLoss.saltFactor(plan.salting().after().median()),
                percent(plan.salting().after().median()),
                100 * JuiceLoss.HALF_BAND));
        page.head("Uncertainty");
        page.text(plan.members()
                + " pieces with their own luck were carried through the whole day; intervals are what 90 of 100 of them show."
                + " What moves the result most:");
        page.table(
                List.of("result", "unknown", "moves it by"),
                plan.sensitivities().stream().map(PlanExplained::sensitivity).toList());
        page.text("Sources: " + sources() + ".");
    }

    private static List<String> sensitivity(Sensitivity sensitivity) {
        return switch (sensitivity.result()) {
            case TIME_TO_PULL -> effect("time in the heat", sensitivity, 1.0 / 60, "min");
            case MEAN_SALT -> effect("salt on the plate", sensitivity, 100, "points of percent");
            case MASS_LOSS -> effect("loss of weight", sensitivity, 100, "points of percent");
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
        return found.isEmpty() ? "common practice" : String.join("; ", found);
    }

    private void questions() {
        int n = 1;
        double half = food().shape().halfThickness();
        if (isAhead()) {
            page.question(
                    n++,
                    "A piece twice as thick lies in the same salt. How long until its middle is as far as the middle of this one after "
                            + minutes(plan.salting().time()) + "?",
                    "Four times as long, " + minutes(4 * plan.salting().time())
                            + ": the way counts with its square, since Dt/L² must be the same.");
            page.question(
                    n++,
                    "Estimate the diffusion coefficient from the picture: how deep has the salt come when salting ends, and how long did it"
                            + " take?",
                    String.format(
                            Locale.ROOT,
                            "With a depth x near √(Dt): the plan uses D = %.1f·10⁻¹⁰ m²/s, so that x is about %.1f mm after %s. Readings from %.0f"
                                    + " to %.0f mm are as good as the picture allows.",
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
                    String.format(
                            Locale.ROOT,
                            "The bath is %.0f g of salt in %.0f g of water. What is that in percent of the water, and of the whole?",
                            1000
                                    * plan.salting().saltPerWater()
                                    * plan.salting().water(),
                            1000 * plan.salting().water()),
                    String.format(
                            Locale.ROOT,
                            "%.2f %% of the water, %.2f %% of salt and water together. Recipes mix the two up.",
                            100 * plan.salting().saltPerWater(),
                            100
                                    * plan.salting().saltPerWater()
                                    / (1 + plan.salting().saltPerWater())));
        }
        page.question(
                n++,
                "By how much would the meat be overdone if it were left in until the thermometer shows the wished "
                        + c(cook().wished()) + "?",
                String.format(
                        Locale.ROOT,
                        "By about the carry-over, %.1f K: it would peak near %s instead of %s.",
                        cook().peak().median() - cook().pullTemperature(),
                        c(cook().wished() + cook().peak().median() - cook().pullTemperature()),
                        c(cook().peak().median())));
        holdQuestion(n++);
        page.question(
                n,
                "Which single measurement would make this plan surer, and why?",
                plan.sensitivities().isEmpty()
                        ? "The thickness: time goes with its square."
                        : "What moves it most is the "
                                + plan.sensitivities().get(0).input().words()
                                + "; if it can be measured, measure it first.");
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
                    String.format(
                            Locale.ROOT,
                            "Your thermometer shows 1 K too much, and you hold at what you believe is %s. By how much is the hold too short?",
                            c(low + 1)),
                    String.format(
                            Locale.ROOT,
                            "In truth it is %s, which needs %s instead of %s: %.1f times as long. That is why thermometers are checked in ice.",
                            c(low),
                            minutes(first.getAsDouble()),
                            minutes(second.getAsDouble()),
                            first.getAsDouble() / second.getAsDouble()));
        }
    }
}
