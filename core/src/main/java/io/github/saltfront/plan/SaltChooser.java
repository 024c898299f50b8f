package io.github.saltfront.plan;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.TreatmentRules;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Seasoning;
import io.github.saltfront.transport.SolverSettings;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;

/** Chooses how to salt: by the wish, else by the rule for the cut, within the time there is. */
final class SaltChooser {
    /** Usual strength of a brine as salt per mass of water [kg/kg]: 60 g per liter; common practice, no source. */
    static final double USUAL_STRENGTH = 0.06;

    /** Share of the ensemble that may be too salty [-]; salt reference, over-salting rule. */
    private static final double TOO_SALTY_SHARE = 0.20;

    /** Members that the window of a soak is read off. */
    private static final int WINDOW_MEMBERS = 100;

    private static final double LONGEST_SOAK = 48 * 3600;
    private static final double GRID = 300;
    private static final double PREPARATION = 20 * 60;
    private static final double LEAST_TIME_BEFORE_COOKING = 15 * 60;

    private final Request request;
    private final Executor executor;
    private final long seed;
    private final double available;
    private final Band taste;
    private final List<String> reasons = new ArrayList<>();

    SaltChooser(Request request, Executor executor, long seed, double cookAndRest) {
        this.request = request;
        this.executor = executor;
        this.seed = seed;
        available = request.timing()
                .serve()
                .map(serve -> Duration.between(request.timing().now(), serve).getSeconds() - cookAndRest - PREPARATION)
                .orElse(Double.POSITIVE_INFINITY);
        Band usual = Seasoning.load().targetRaw();
        taste = usual.times(request.taste().rawSalt() / usual.typical());
    }

    Plan.SaltPlan choose() {
        if (available < 0) {
            long minutes = (long) Math.ceil(-available / 60);
            throw new PlanningException(
                    "serve",
                    "the time to serve is too soon: cooking and resting alone need " + minutes
                            + " min more. Possible instead: serve "
                            + request.timing()
                                    .serve()
                                    .orElseThrow()
                                    .plusMinutes(minutes)
                                    .toLocalDateTime()
                            + " without salting ahead.");
        }
        Request.Treatment wish = request.salting().treatment();
        if (wish != Request.Treatment.AUTO) {
            reasons.add("You asked for it.");
            return build(wish, Optional.empty());
        }
        if (request.food().cut().isEmpty()) {
            return build(Request.Treatment.WET_BRINE, Optional.empty());
        }
        TreatmentRules.Rule rule =
                Catalog.load().treatmentOf(request.food().cut().get(), "any");
        for (TreatmentRules.Choice choice : List.of(rule.first(), rule.second())) {
            Optional<Request.Treatment> treatment = supported(choice.treatment());
            if (treatment.isEmpty()) {
                continue;
            }
            double least = choice.time().map(Band::low).orElse(0.0);
            if (treatment.get() != Request.Treatment.NONE && Math.max(least, LEAST_TIME_BEFORE_COOKING) > available) {
                reasons.add(String.format(
                        Locale.ROOT,
                        "%s wants %.1f h or more; there are %.1f h.",
                        name(treatment.get()),
                        least / 3600,
                        available / 3600));
                continue;
            }
            reasons.add(0, name(treatment.get()) + " suits this cut: " + rule.why() + ".");
            if (rule.avoid() != TreatmentRules.Treatment.NONE
                    && !rule.avoidWhy().isEmpty()) {
                reasons.add("Avoid " + name(rule.avoid()) + ": " + rule.avoidWhy() + ".");
            }
            return build(treatment.get(), Optional.of(choice));
        }
        reasons.add("Salt the outside just before the heat.");
        return build(Request.Treatment.SURFACE_SALT, Optional.empty());
    }

    private static Optional<Request.Treatment> supported(TreatmentRules.Treatment treatment) {
        return switch (treatment) {
            case WET_BRINE -> Optional.of(Request.Treatment.WET_BRINE);
            case DRY_SALT -> Optional.of(Request.Treatment.DRY_SALT);
            case SURFACE_SALT -> Optional.of(Request.Treatment.SURFACE_SALT);
            case NONE -> Optional.of(Request.Treatment.NONE);
            default -> Optional.empty();
        };
    }

    private static String name(Enum<?> treatment) {
        return switch (treatment.name()) {
            case "WET_BRINE" -> "A wet brine";
            case "DRY_SALT" -> "Dry salting";
            case "SURFACE_SALT" -> "Salting just before the heat";
            case "WET_THEN_DRY" -> "brine and then drying";
            default -> treatment.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    private Plan.SaltPlan build(Request.Treatment treatment, Optional<TreatmentRules.Choice> choice) {
        return switch (treatment) {
            case WET_BRINE -> wet();
            case DRY_SALT -> dry(choice);
            case SURFACE_SALT -> {
                double salt = doseMass();
                yield new Plan.SaltPlan(treatment, reasons, salt, 0, 0, 0, Optional.empty());
            }
            case NONE, AUTO -> new Plan.SaltPlan(Request.Treatment.NONE, reasons, 0, 0, 0, 0, Optional.empty());
        };
    }

    /** Salt that brings the edible part from its native salt to the target [kg]. */
    private double doseMass() {
        double edible = request.food().mass() * request.food().edibleShare();
        double target = request.taste().rawSalt();
        double lacking = Math.max(0, target - request.food().meat().nativeSalt());
        return edible * lacking / (1 - target);
    }

    private Plan.SaltPlan dry(Optional<TreatmentRules.Choice> choice) {
        Optional<Band> usual = choice.flatMap(TreatmentRules.Choice::time);
        double least = usual.map(Band::low).orElse(3600.0);
        double most = usual.map(Band::high).orElse(24 * 3600.0);
        double time = request.salting()
                .time()
                .orElse(Double.isInfinite(available) ? least : Math.min(most, Math.max(least, available)));
        if (time > available) {
            throw tooSoon(time);
        }
        reasons.add("The dose cannot over-salt: all of it goes in and no more.");
        return new Plan.SaltPlan(Request.Treatment.DRY_SALT, reasons, doseMass(), 0, 0, time, Optional.empty());
    }

    private Plan.SaltPlan wet() {
        double water = request.salting().waterPerMeat() * request.food().mass();
        double strength = request.salting().strength().orElse(USUAL_STRENGTH);
        boolean timeIsGiven = request.salting().time().isPresent();
        if (timeIsGiven && request.salting().strength().isEmpty()) {
            strength = strengthFor(request.salting().time().getAsDouble(), water);
            reasons.add("Weak enough that the time you gave seasons it and no more.");
        }
        Plan.Window window = window(strength * water, water);
        double time = request.salting().time().orElse(Math.min(window.best(), available));
        if (time > available) {
            throw tooSoon(time);
        }
        if (!timeIsGiven && time < window.earliest()) {
            reasons.add("The time there is stays below the earliest at which it tastes seasoned.");
        }
        if (window.tooSaltyAtBest() > TOO_SALTY_SHARE) {
            reasons.add("At this strength the time between seasoned and too salty is shorter than the model is sure of;"
                    + " a weaker brine for longer is safer.");
        }
        return new Plan.SaltPlan(
                Request.Treatment.WET_BRINE, reasons, strength * water, water, strength, time, Optional.of(window));
    }

    private PlanningException tooSoon(double time) {
        long minutes = (long) Math.ceil((time - available) / 60);
        return new PlanningException(
                "serve",
                "salting for " + Math.round(time / 60) + " min does not fit before serving. Possible instead: serve "
                        + request.timing()
                                .serve()
                                .orElseThrow()
                                .plusMinutes(minutes)
                                .toLocalDateTime()
                        + ", or salt for " + Math.round(Math.max(0, available) / 60) + " min.");
    }

    private DayEnsemble ensemble(int members, long memberSeed) {
        return new DayEnsemble(
                request.food().meat(),
                request.food().shape(),
                request.food().startTemperature(),
                Draw.ensemble(members, memberSeed),
                SolverSettings.DEFAULT.withTolerances(0.2, 1e-4));
    }

    /** Strength whose median mean salt at a given time is the target, by bisection [kg/kg of water]. */
    private double strengthFor(double time, double water) {
        DayEnsemble ensemble = ensemble(Planner.SEARCH_MEMBERS, seed + 2);
        double low = 0.001;
        double high = 0.12;
        for (int i = 0; i < 12; i++) {
            double middle = 0.5 * (low + high);
            List<MemberDay> days =
                    ensemble.run(List.of(SaltStages.soak(request, middle * water, water, time)), executor);
            double median = Interval.of(days.stream()
                            .mapToDouble(day -> day.end(SaltStages.SOAK).meanSalt())
                            .toArray())
                    .median();
            if (median > taste.typical()) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.round(0.5 * (low + high) * 1000) / 1000.0;
    }

    private Plan.Window window(double salt, double water) {
        List<MemberDay> days = ensemble(WINDOW_MEMBERS, seed)
                .run(List.of(SaltStages.soak(request, salt, water, LONGEST_SOAK)), executor);
        double earliest = timeOfQuantile(days, 0.5, taste.low());
        double best = timeOfQuantile(days, 0.5, taste.typical());
        double latest = timeOfQuantile(days, 1 - TOO_SALTY_SHARE, taste.high());
        long tooSalty =
                days.stream().filter(day -> day.meanSaltAt(best) > taste.high()).count();
        return new Plan.Window(earliest, best, latest, (double) tooSalty / days.size());
    }

    /** First time on a grid at which a quantile of the ensemble's mean salt reaches a level [s]. */
    private static double timeOfQuantile(List<MemberDay> days, double share, double level) {
        double[] salt = new double[days.size()];
        for (double time = GRID; time < LONGEST_SOAK; time += GRID) {
            for (int i = 0; i < salt.length; i++) {
                salt[i] = days.get(i).meanSaltAt(time);
            }
            Arrays.sort(salt);
            if (Interval.quantile(salt, share) >= level) {
                return time;
            }
        }
        return LONGEST_SOAK;
    }
}
