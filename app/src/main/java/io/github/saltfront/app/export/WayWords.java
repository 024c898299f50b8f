package io.github.saltfront.app.export;

import io.github.saltfront.plan.Outcome;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Sensitivity;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.plan.Way;
import io.github.saltfront.plan.Wish;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Alternatives and what matters most, in sentences. */
final class WayWords {
    /** Inputs that are told of a result, at most. */
    private static final int TOLD = 2;

    private WayWords() {}

    /** What is done in another way, such as "Salt it dry for 12 h". */
    static String title(Way way, Plan plan) {
        String salting = salting(way);
        Request.Cook cook = plan.request().cook();
        boolean sameAppliance = way.appliance().id().equals(cook.appliance().id());
        boolean sameHeat = sameAppliance && Math.abs(way.setting() - cook.setting()) < 1;
        List<String> heat = new ArrayList<>();
        if (!sameHeat) {
            heat.add(String.format(
                    Locale.ROOT,
                    "%s at %.0f °C",
                    way.appliance().name().toLowerCase(Locale.ROOT),
                    Temperature.toCelsius(way.setting())));
        }
        if (way.core().isPresent()
                && !way.core().equals(plan.request().taste().core())
                && !isRaisedAnyway(way.core().getAsDouble(), plan.cooking())
                && Math.abs(way.core().getAsDouble() - plan.cooking().wished()) > 0.5) {
            heat.add(String.format(
                    Locale.ROOT,
                    "to a core of %.0f °C",
                    Temperature.toCelsius(way.core().getAsDouble())));
        }
        return salting + (heat.isEmpty() ? "" : ", " + String.join(", ", heat));
    }

    /** A core that safety raises to the same reading as the plan's is no other core. */
    private static boolean isRaisedAnyway(double core, Plan.CookPlan cooking) {
        return cooking.isRaised() && core < cooking.peak().median();
    }

    private static String salting(Way way) {
        String time = way.time().isPresent() ? " for " + time(way.time().getAsDouble()) : "";
        return switch (way.treatment()) {
            case WET_BRINE ->
                way.strength().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                "a strong brine of %.0f %%",
                                100 * way.strength().getAsDouble())
                        : "a wet brine" + time;
            case EQUILIBRIUM -> "a weak brine matched to the target";
            case DAIRY -> "cultured milk with salt";
            case MARINADE -> "a marinade";
            case DRY_SALT -> "dry salt" + time;
            case SURFACE_SALT -> "salt on the outside just before the heat";
            case NONE, AUTO -> "no salt ahead";
        };
    }

    /** What an alternative wins and loses against the plan, in numbers. */
    static String balance(PlanSearch.Alternative alternative, Outcome base) {
        String wins = list(alternative.wins(), alternative.outcome(), base);
        String loses = list(alternative.loses(), alternative.outcome(), base);
        return "Wins: " + wins + "." + (loses.isEmpty() ? " Loses nothing that counts." : " Loses: " + loses + ".");
    }

    private static String list(List<Wish> wishes, Outcome outcome, Outcome base) {
        return String.join(
                "; ",
                wishes.stream()
                        .map(wish -> wish.words() + " " + value(wish, outcome) + " (here " + value(wish, base) + ")")
                        .toList());
    }

    static String value(Wish wish, Outcome outcome) {
        double value = outcome.value(wish);
        return switch (wish) {
            case JUICE, EVEN_SALT -> String.format(Locale.ROOT, "%.0f %%", 100 * value);
            case TENDER -> String.format(Locale.ROOT, "%.0f", 100 * value);
            case CRISP_SKIN -> String.format(Locale.ROOT, "%.0f °C", Temperature.toCelsius(value));
            case LITTLE_WORK -> String.format(Locale.ROOT, "%.0f", value);
            case SHORT -> time(value);
            case LOW_SODIUM -> String.format(Locale.ROOT, "%.0f mg", value * 1e6);
        };
    }

    private static String time(double seconds) {
        return QuantityFormat.time(60 * Math.rint(seconds / 60));
    }

    /** How many ways were tried and why some were dropped. */
    static String tried(PlanSearch.Found found) {
        int dropped =
                found.dropped().values().stream().mapToInt(Integer::intValue).sum();
        StringBuilder words = new StringBuilder(String.format(
                Locale.ROOT, "%d ways were tried, %d can be done", found.tried(), found.tried() - dropped));
        for (PlanSearch.Dropped reason : PlanSearch.Dropped.values()) {
            Integer count = found.dropped().get(reason);
            if (count != null) {
                words.append("; ").append(count).append(' ').append(reason.words());
            }
        }
        return words.append('.').toString();
    }

    /** Sentences on what matters most to the time, the salt and the weight, most first. */
    static List<String> sensitivities(Plan plan) {
        Map<Sensitivity.Result, Integer> told = new LinkedHashMap<>();
        List<String> sentences = new ArrayList<>();
        for (Sensitivity s : plan.sensitivities()) {
            if (told.merge(s.result(), 1, Integer::sum) <= TOLD) {
                sentences.add(advice(s.input()) + effect(s));
            }
        }
        return sentences;
    }

    private static String advice(Uncertainty input) {
        return switch (input) {
            case THICKNESS -> "Measure the thickness: it";
            case SETTING -> "Check the true temperature of the appliance: it";
            case START -> "Measure how cold the meat is at the start: that";
            case PROBE -> "Check the thermometer in ice water: its error";
            default -> {
                String words = input.words();
                yield words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1)
                        + " cannot be measured at home and";
            }
        };
    }

    private static String effect(Sensitivity s) {
        double effect = Math.abs(s.effect());
        return switch (s.result()) {
            case TIME_TO_PULL -> String.format(Locale.ROOT, " moves the time in the heat by ±%.0f min.", effect / 60);
            case MEAN_SALT ->
                String.format(Locale.ROOT, " moves the salt on the plate by ±%.2f points of percent.", 100 * effect);
            case MASS_LOSS ->
                String.format(Locale.ROOT, " moves the loss of weight by ±%.1f points of percent.", 100 * effect);
        };
    }
}
