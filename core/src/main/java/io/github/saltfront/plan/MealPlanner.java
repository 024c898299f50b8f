package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;

/**
 * Plans several dishes for one time. Where two want the same appliance at different settings, one takes the setting of the other if
 * that was left open; otherwise it is cooked first and waits, at most as long as food may officially stand out. What waits is planned
 * anew with its longer rest.
 */
public final class MealPlanner {
    private static final Phrases PHRASES = Phrases.of(MealPlanner.class);

    /** Dishes whose order is looked for in full; more would take too long, and fill no home kitchen. */
    public static final int MOST_DISHES = 6;

    private static final int MOST_TRIES = 4;

    /** Added to a wait that turned out too short after planning anew [s]. */
    private static final double MORE = 300;

    private static final String CLOCK = "EEE HH:mm";

    private final List<Meal.Dish> dishes;
    private final Map<String, Integer> counts;
    private final Executor executor;
    private final long seed;
    private final List<String> notes = new ArrayList<>();

    private MealPlanner(List<Meal.Dish> dishes, Map<String, Integer> counts, Executor executor, long seed) {
        this.dishes = dishes;
        this.counts = counts;
        this.executor = executor;
        this.seed = seed;
    }

    /**
     * Plans a meal.
     *
     * @param dishes the dishes, at most {@link #MOST_DISHES}, all to be served at the same time
     * @param counts how many there are of an appliance by its id; one where it is not named
     * @param executor where to run parts; has no effect on the numbers
     * @param seed seed of the ensembles
     * @return the meal
     * @throws PlanningException if a dish cannot be done, or not beside the others
     */
    public static Meal plan(List<Meal.Dish> dishes, Map<String, Integer> counts, Executor executor, long seed) {
        return new MealPlanner(dishes, counts, executor, seed).plan();
    }

    private Meal plan() {
        List<Meal.Course> courses = new ArrayList<>();
        for (Meal.Dish dish : dishes) {
            courses.add(course(dish, 0));
        }
        courses = sharing(courses);
        courses = waiting(courses);
        List<Meal.Use> uses = courses.stream()
                .flatMap(course -> uses(course).stream())
                .sorted(Comparator.comparing(Meal.Use::from))
                .toList();
        tellSharing(uses);
        List<Meal.Step> clock = clock(courses);
        tellRefrigerator(courses);
        tellHands(clock);
        return new Meal(courses, clock, uses, notes);
    }

    /** Plans a dish that waits; the wait is a longer rest. */
    private Meal.Course course(Meal.Dish dish, double wait) {
        Request request = dish.request();
        try {
            if (wait <= 0) {
                return new Meal.Course(dish, Planner.plan(request, executor, seed), 0);
            }
            CookStages usual = new CookStages(request, Planner.rule(request));
            CookSequence sequence = request.cook().sequence();
            CookSequence longer = new CookSequence(
                    sequence.before(),
                    sequence.after(),
                    sequence.turnInterval(),
                    sequence.warmUp(),
                    new CookSequence.Rest(true, OptionalDouble.of(usual.rest() + wait)));
            Request.Cook cook = request.cook();
            Request waiting =
                    request.cookedBy(new Request.Cook(cook.appliance(), cook.setting(), cook.altitude(), longer));
            return new Meal.Course(dish, Planner.plan(waiting, executor, seed), wait);
        } catch (PlanningException e) {
            throw new PlanningException(e.field(), dish.name() + ": " + e.getMessage());
        }
    }

    /** Lets dishes whose setting is open take that of another in the same appliance. */
    private List<Meal.Course> sharing(List<Meal.Course> courses) {
        List<Meal.Course> all = new ArrayList<>(courses);
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < all.size(); j++) {
                Optional<Meal.Course> changed = i == j ? Optional.empty() : atSettingOf(all.get(i), all.get(j));
                if (changed.isPresent()) {
                    all.set(i, changed.get());
                }
            }
        }
        return all;
    }

    private Optional<Meal.Course> atSettingOf(Meal.Course course, Meal.Course other) {
        Request request = course.dish().request();
        Request.Cook cook = request.cook();
        Request.Cook wanted = other.plan().request().cook();
        Appliance appliance = cook.appliance();
        boolean sameAppliance = appliance.id().equals(wanted.appliance().id());
        boolean within = wanted.setting() >= appliance.temperature().low()
                && wanted.setting() <= appliance.temperature().high();
        boolean open = request.assumptions().stream().anyMatch(a -> a.field().equals("setting"));
        boolean inTheWay =
                uses(course).stream().anyMatch(use -> uses(other).stream().anyMatch(u -> collide(use, List.of(u))));
        if (!sameAppliance || !within || !open || !inTheWay) {
            return Optional.empty();
        }
        Request.Cook changed = new Request.Cook(appliance, wanted.setting(), cook.altitude(), cook.sequence());
        notes.add(PHRASES.say(
                "goes-in-at-c-the",
                course.dish().name(),
                Temperature.toCelsius(wanted.setting()),
                other.dish().name(),
                Phrases.within(appliance.name())));
        return Optional.of(course(new Meal.Dish(course.dish().name(), request.cookedBy(changed)), 0));
    }

    /** Lets dishes wait that cannot share, as little in all as possible. */
    private List<Meal.Course> waiting(List<Meal.Course> courses) {
        double[] waits = new double[courses.size()];
        List<Meal.Course> now = new ArrayList<>(courses);
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            if (!anyCollide(now)) {
                tellWaits(now);
                return now;
            }
            double[] found = leastWaits(now);
            for (int i = 0; i < waits.length; i++) {
                if (found[i] > 0) {
                    waits[i] += found[i] + (tries > 0 ? MORE : 0);
                    requireShort(now.get(i), waits[i]);
                    now.set(i, course(now.get(i).dish(), waits[i]));
                }
            }
        }
        throw crowded(now);
    }

    private boolean anyCollide(List<Meal.Course> courses) {
        List<Meal.Use> all =
                courses.stream().flatMap(course -> uses(course).stream()).toList();
        return all.stream().anyMatch(use -> collide(use, all));
    }

    /** Whether more of an appliance would be needed than there are: uses at one setting take one, a full one takes its own. */
    private boolean collide(Meal.Use use, List<Meal.Use> all) {
        List<Meal.Use> against = new ArrayList<>();
        for (Meal.Use other : all) {
            boolean sameAppliance = other != use && other.appliance().equals(use.appliance());
            if (sameAppliance && !other.dish().equals(use.dish()) && use.overlaps(other) && !use.shares(other)) {
                boolean counted = against.stream().anyMatch(a -> a.shares(other));
                if (!counted) {
                    against.add(other);
                }
            }
        }
        return against.size() >= counts.getOrDefault(use.appliance(), 1);
    }

    /** Shortest waits over all orders in which dishes may be placed, the first placed waiting least. */
    private double[] leastWaits(List<Meal.Course> courses) {
        double[][] best = {new double[0]};
        permute(new ArrayList<>(), courses, best);
        if (best[0].length == 0) {
            throw crowded(courses);
        }
        return best[0];
    }

    private void permute(List<Integer> order, List<Meal.Course> courses, double[][] best) {
        if (order.size() == courses.size()) {
            double[] waits = waits(order, courses);
            if (waits.length > 0 && (best[0].length == 0 || sum(waits) < sum(best[0]))) {
                best[0] = waits;
            }
            return;
        }
        for (int i = 0; i < courses.size(); i++) {
            if (!order.contains(i)) {
                order.add(i);
                permute(order, courses, best);
                order.remove(order.size() - 1);
            }
        }
    }

    /** Waits if dishes are placed in an order, each as late as those before it allow; none if one would wait too long. */
    private double[] waits(List<Integer> order, List<Meal.Course> courses) {
        double[] waits = new double[courses.size()];
        List<Meal.Use> placed = new ArrayList<>();
        for (int i : order) {
            List<Meal.Use> own = uses(courses.get(i));
            OptionalDouble wait = wait(own, placed);
            if (wait.isEmpty() || standing(courses.get(i)) + wait.getAsDouble() > limit()) {
                return new double[0];
            }
            waits[i] = wait.getAsDouble();
            own.forEach(use -> placed.add(use.earlier(waits[i])));
        }
        return waits;
    }

    private OptionalDouble wait(List<Meal.Use> own, List<Meal.Use> placed) {
        List<Double> tries = new ArrayList<>(List.of(0.0));
        for (Meal.Use use : own) {
            for (Meal.Use other : placed) {
                double gap = Duration.between(other.from(), use.to()).toSeconds();
                if (use.appliance().equals(other.appliance()) && gap > 0) {
                    tries.add(gap);
                }
            }
        }
        return tries.stream()
                .sorted()
                .mapToDouble(Double::doubleValue)
                .filter(wait -> own.stream().noneMatch(use -> collide(use.earlier(wait), placed)))
                .findFirst();
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    /** Time a dish stands out of the heat already [s]. */
    private static double standing(Meal.Course course) {
        return course.plan().cooking().rest();
    }

    /** Longest time that food may officially stand out [s]. */
    private static double limit() {
        return OfficialLimits.serving().out();
    }

    private void requireShort(Meal.Course course, double wait) {
        CookStages usual = new CookStages(
                course.dish().request(), course.plan().cooking().verdict().rule());
        if (usual.rest() + wait > limit()) {
            throw crowded(List.of(course));
        }
    }

    private PlanningException crowded(List<Meal.Course> courses) {
        String names = String.join(
                PHRASES.say("and"),
                courses.stream().map(course -> course.dish().name()).toList());
        return new PlanningException(
                "dishes", PHRASES.say("there-are-too-few-appliances", names, QuantityFormat.time(limit())));
    }

    private void tellWaits(List<Meal.Course> courses) {
        for (Meal.Course course : courses) {
            if (course.delay() > 0) {
                notes.add(PHRASES.say(
                        "is-cooked-first-and-waits",
                        course.dish().name(),
                        QuantityFormat.time(60 * Math.rint(course.delay() / 60)),
                        Phrases.within(
                                course.plan().request().cook().appliance().name()),
                        Temperature.toCelsius(course.plan().cooking().served().median())));
            }
        }
    }

    private void tellSharing(List<Meal.Use> uses) {
        for (int i = 0; i < uses.size(); i++) {
            for (int j = i + 1; j < uses.size(); j++) {
                Meal.Use a = uses.get(i);
                Meal.Use b = uses.get(j);
                boolean together = a.appliance().equals(b.appliance())
                        && !a.dish().equals(b.dish())
                        && a.overlaps(b)
                        && a.shares(b)
                        && counts.getOrDefault(a.appliance(), 1) == 1;
                if (together) {
                    notes.add(PHRASES.say("and-are-in-the-together", a.dish(), b.dish(), named(a.appliance())));
                }
            }
        }
    }

    /** Room that baths and meat take in the refrigerator at the fullest time. */
    private void tellRefrigerator(List<Meal.Course> courses) {
        courses.stream()
                .flatMap(course -> time(course.plan(), Plan.StepKind.SALT).stream())
                .max(Comparator.comparingDouble(start -> liters(courses, start)))
                .ifPresent(when -> notes.add(
                        PHRASES.say("from-meat-and-baths-take", Phrases.time(CLOCK, when), liters(courses, when))));
    }

    private static double liters(List<Meal.Course> courses, ZonedDateTime at) {
        return courses.stream()
                .map(Meal.Course::plan)
                .filter(plan -> time(plan, Plan.StepKind.SALT)
                                .filter(from -> !from.isAfter(at))
                                .isPresent()
                        && time(plan, Plan.StepKind.PAT_DRY)
                                .filter(to -> to.isAfter(at))
                                .isPresent())
                .mapToDouble(MealPlanner::liters)
                .sum();
    }

    private static double liters(Plan plan) {
        double bath = plan.salting().soaking().map(s -> s.bath().volume()).orElse(0.0);
        return 1000 * (bath + plan.request().food().mass() / 1050);
    }

    private static Optional<ZonedDateTime> time(Plan plan, Plan.StepKind kind) {
        return plan.clock().stream()
                .filter(step -> step.kind() == kind)
                .map(Plan.Step::time)
                .findFirst();
    }

    private static List<Meal.Step> clock(List<Meal.Course> courses) {
        List<Meal.Step> steps = new ArrayList<>();
        for (Meal.Course course : courses) {
            Plan plan = course.plan();
            for (Plan.Step step : plan.clock()) {
                double minutes = step.active()
                        ? Effort.minutes(
                                step.kind(),
                                plan.salting().treatment(),
                                plan.request().piecesAtOnce())
                        : 0;
                steps.add(new Meal.Step(course.dish().name(), step, minutes));
            }
        }
        steps.sort(Comparator.comparing(step -> step.step().time()));
        return steps;
    }

    /** Where two dishes want the cook at once. */
    private void tellHands(List<Meal.Step> clock) {
        List<Meal.Step> active = clock.stream()
                .filter(step -> step.minutes() > 0 && step.step().kind() != Plan.StepKind.SERVE)
                .toList();
        for (int i = 1; i < active.size(); i++) {
            Meal.Step before = active.get(i - 1);
            Meal.Step next = active.get(i);
            ZonedDateTime free = before.step().time().plusSeconds((long) (60 * before.minutes()));
            if (!before.dish().equals(next.dish()) && next.step().time().isBefore(free)) {
                notes.add(PHRASES.say(
                        "at-both-and-want-you",
                        Phrases.time(CLOCK, next.step().time()),
                        before.dish(),
                        next.dish(),
                        before.dish(),
                        before.minutes()));
            }
        }
    }

    /** When a dish uses which appliance: warming up, and then to the end for the slowest of 20 cooks. */
    static List<Meal.Use> uses(Meal.Course course) {
        Plan plan = course.plan();
        Request.Cook cook = plan.request().cook();
        CookSequence sequence = cook.sequence();
        Loads loads = plan.cooking().loads();
        String name = course.dish().name();
        ZonedDateTime start = time(plan, Plan.StepKind.COOK).orElseThrow();
        ZonedDateTime warm =
                time(plan, Plan.StepKind.PREHEAT).filter(start::isAfter).orElse(start);
        boolean full = loads.count() > 1;
        List<Meal.Use> uses = new ArrayList<>();
        ZonedDateTime at = start;
        for (CookSequence.Step step : sequence.before()) {
            ZonedDateTime end = at.plusSeconds((long) step.time());
            uses.add(new Meal.Use(name, step.appliance().id(), step.setting(), uses.isEmpty() ? warm : at, end, full));
            at = end;
        }
        double main = Math.ceil(plan.cooking().timeToPull().high() / 60) * 60 + loads.delay();
        ZonedDateTime out = at.plusSeconds((long) main);
        uses.add(new Meal.Use(name, cook.appliance().id(), cook.setting(), uses.isEmpty() ? warm : at, out, full));
        at = out;
        for (CookSequence.Step step : sequence.after()) {
            ZonedDateTime end = at.plusSeconds((long) step.time());
            uses.add(new Meal.Use(name, step.appliance().id(), step.setting(), at, end, full));
            at = end;
        }
        return uses;
    }

    private static String named(String appliance) {
        return Phrases.within(Catalog.load().appliances().get(appliance).name());
    }
}
