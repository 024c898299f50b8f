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
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Alternatives and what matters most, in sentences. */
final class WayWords {
    private static final Phrases PHRASES = Phrases.of(WayWords.class);

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
            heat.add(PHRASES.say("at-c", Phrases.within(way.appliance().name()), Temperature.toCelsius(way.setting())));
        }
        if (way.core().isPresent()
                && !way.core().equals(plan.request().taste().core())
                && !isRaisedAnyway(way.core().getAsDouble(), plan.cooking())
                && Math.abs(way.core().getAsDouble() - plan.cooking().wished()) > 0.5) {
            heat.add(PHRASES.say(
                    "to-a-core-of-c", Temperature.toCelsius(way.core().getAsDouble())));
        }
        return salting + (heat.isEmpty() ? "" : ", " + String.join(", ", heat));
    }

    /** A core that safety raises to the same reading as the plan's is no other core. */
    private static boolean isRaisedAnyway(double core, Plan.CookPlan cooking) {
        return cooking.isRaised() && core < cooking.peak().median();
    }

    private static String salting(Way way) {
        String time = way.time().isPresent()
                ? PHRASES.say("for-a-time", time(way.time().getAsDouble()))
                : "";
        return switch (way.treatment()) {
            case WET_BRINE ->
                way.strength().isPresent()
                        ? PHRASES.say("a-strong-brine-of", 100 * way.strength().getAsDouble())
                        : PHRASES.say("a-wet-brine", time);
            case EQUILIBRIUM -> PHRASES.say("a-weak-brine-matched-to");
            case DAIRY -> PHRASES.say("cultured-milk-with-salt");
            case MARINADE -> PHRASES.say("a-marinade");
            case DRY_SALT -> PHRASES.say("dry-salt", time);
            case SURFACE_SALT -> PHRASES.say("salt-on-the-outside-just");
            case NONE, AUTO -> PHRASES.say("no-salt-ahead");
        };
    }

    /** What an alternative wins and loses against the plan, in numbers. */
    static String balance(PlanSearch.Alternative alternative, Outcome base) {
        String wins = list(alternative.wins(), alternative.outcome(), base);
        String loses = list(alternative.loses(), alternative.outcome(), base);
        return PHRASES.say(
                "wins",
                wins,
                (loses.isEmpty() ? PHRASES.say("loses-nothing-that-counts") : PHRASES.say("loses", loses)));
    }

    private static String list(List<Wish> wishes, Outcome outcome, Outcome base) {
        return String.join(
                "; ",
                wishes.stream()
                        .map(wish -> PHRASES.say("here", wish.words(), value(wish, outcome), value(wish, base)))
                        .toList());
    }

    static String value(Wish wish, Outcome outcome) {
        double value = outcome.value(wish);
        return switch (wish) {
            case JUICE, EVEN_SALT -> Phrases.figures("%.0f %%", 100 * value);
            case TENDER -> String.format(Locale.ROOT, "%.0f", 100 * value);
            case CRISP_SKIN -> Phrases.figures("%.0f °C", Temperature.toCelsius(value));
            case LITTLE_WORK -> String.format(Locale.ROOT, "%.0f", value);
            case SHORT -> time(value);
            case LOW_SODIUM -> Phrases.figures("%.0f mg", value * 1e6);
        };
    }

    private static String time(double seconds) {
        return QuantityFormat.time(60 * Math.rint(seconds / 60));
    }

    /** How many ways were tried and why some were dropped. */
    static String tried(PlanSearch.Found found) {
        int dropped =
                found.dropped().values().stream().mapToInt(Integer::intValue).sum();
        StringBuilder words =
                new StringBuilder(PHRASES.say("ways-were-tried-can-be", found.tried(), found.tried() - dropped));
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
            case THICKNESS -> PHRASES.say("measure-the-thickness-it");
            case SETTING -> PHRASES.say("check-the-true-temperature-of");
            case START -> PHRASES.say("measure-how-cold-the-meat");
            case PROBE -> PHRASES.say("check-the-thermometer-in-ice");
            default -> {
                String words = input.words();
                yield PHRASES.say(
                        "cannot-be-measured-at-home",
                        words.substring(0, 1).toUpperCase(Locale.ROOT),
                        words.substring(1));
            }
        };
    }

    private static String effect(Sensitivity s) {
        double effect = Math.abs(s.effect());
        return switch (s.result()) {
            case TIME_TO_PULL -> PHRASES.say("moves-the-time-in-the", effect / 60);
            case MEAN_SALT -> PHRASES.say("moves-the-salt-on-the", 100 * effect);
            case MASS_LOSS -> PHRASES.say("moves-the-loss-of-weight", 100 * effect);
        };
    }
}
