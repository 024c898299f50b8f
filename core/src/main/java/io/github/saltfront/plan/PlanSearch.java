package io.github.saltfront.plan;

import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Looks at all ways that a request leaves open on a few members, drops what cannot be done with the reason counted, and ranks
 * the rest by the cook's wishes. Salting is worked out once for all ways that share it, and so is the reading at which to take
 * it out. Without wishes the rule for the cut decides ({@link SaltAdvice}) and the search only says what else could be done.
 */
public final class PlanSearch {
    private static final Phrases PHRASES = Phrases.of(PlanSearch.class);

    /** Most alternatives that are shown. */
    private static final int SHOWN = 3;

    /** Each wish counts this share of the one before it [-]. */
    private static final double NEXT_WISH = 0.5;

    /** A wish that is not named counts this much [-]: it decides between ways that are equal otherwise. */
    private static final double UNNAMED = 0.05;

    private final Request request;
    private final Executor executor;
    private final long seed;

    /** Why a way is dropped. */
    public enum Dropped {
        /** The official requirement is not met. */
        UNSAFE("would-not-be-safe"),
        /** Too many pieces would be too salty. */
        TOO_SALTY("would-be-too-salty-too"),
        /** It does not fit before serving. */
        TOO_LATE("would-not-be-ready-in"),
        /** A step falls into the night. */
        AT_NIGHT("would-have-you-up-at"),
        /** Appliance, vessel or meat do not allow it. */
        BEYOND_THE_KITCHEN("cannot-be-done-with-this");

        private final String words;

        Dropped(String words) {
            this.words = words;
        }

        /** Returns the reason in plain words, as the end of a sentence. */
        public String words() {
            return PHRASES.say(words);
        }
    }

    /**
     * A way that can be done.
     *
     * @param way the way
     * @param outcome what it comes to
     */
    public record Candidate(Way way, Outcome outcome) {}

    /**
     * An alternative to a plan.
     *
     * @param way the way
     * @param outcome what it comes to
     * @param wins wishes it serves better than the plan by a difference that counts
     * @param loses wishes it serves worse
     */
    public record Alternative(Way way, Outcome outcome, List<Wish> wins, List<Wish> loses) {
        /** Copies the lists. */
        public Alternative {
            wins = List.copyOf(wins);
            loses = List.copyOf(loses);
        }
    }

    /**
     * A plan and what else could be done.
     *
     * @param plan the plan
     * @param compared what it comes to on the same few members as the alternatives; empty if no way was tried
     * @param alternatives ways that differ in kind, best first
     * @param tried number of ways tried
     * @param dropped how many were dropped, and why
     * @param levers what would change the plan
     */
    public record Found(
            Plan plan,
            Optional<Outcome> compared,
            List<Alternative> alternatives,
            int tried,
            Map<Dropped, Integer> dropped,
            List<Lever> levers) {
        /** Copies the lists and the map. */
        public Found {
            levers = List.copyOf(levers);
            alternatives = List.copyOf(alternatives);
            dropped = Map.copyOf(dropped);
        }

        private Found of(Plan other) {
            return new Found(other, compared, alternatives, tried, dropped, levers);
        }

        /**
         * Returns what the plan comes to on the same few members as the alternatives.
         *
         * @throws java.util.NoSuchElementException if no way was tried
         */
        public Outcome outcome() {
            return compared.orElseThrow();
        }
    }

    private PlanSearch(Request request, Executor executor, long seed) {
        this.request = request;
        this.executor = executor;
        this.seed = seed;
    }

    /**
     * Plans, and says what else could be done.
     *
     * @param request the request
     * @param executor where to run parts; has no effect on the numbers
     * @param seed seed of the ensembles; the same seed gives the same plan
     * @return the plan and its alternatives
     * @throws PlanningException if the request cannot be met
     */
    public static Found find(Request request, Executor executor, long seed) {
        Optional<Thawing> thawing = Thawing.of(request, executor, seed);
        Request thawed = thawing.map(first -> first.thawed(request)).orElse(request);
        Found found = new PlanSearch(thawed, executor, seed).find();
        return thawing.map(first -> found.of(first.before(found.plan()))).orElse(found);
    }

    /**
     * Plans without looking for other ways, unless the request ranks its wishes, which takes a search.
     *
     * @param request the request
     * @param executor where to run parts; has no effect on the numbers
     * @param seed seed of the ensembles; the same seed gives the same plan
     * @return the plan, with no way tried
     * @throws PlanningException if the request cannot be met
     */
    public static Found planOnly(Request request, Executor executor, long seed) {
        if (!request.taste().wishes().isEmpty()) {
            return find(request, executor, seed);
        }
        Plan plan = Planner.plan(request, executor, seed);
        return new Found(plan, Optional.empty(), List.of(), 0, Map.of(), Lever.ofTime(plan));
    }

    /**
     * Screens all ways that a request leaves open.
     *
     * @param request the request
     * @param executor where to run parts; has no effect on the numbers
     * @param seed seed of the ensembles
     * @return the ways that can be done, best first by the wishes of the request
     */
    public static List<Candidate> screen(Request request, Executor executor, long seed) {
        PlanSearch search = new PlanSearch(request, executor, seed);
        Screening screening = new Screening(request, seed);
        return search.candidates(new EnumMap<>(Dropped.class), screening, search.saltings(screening)).stream()
                .map(screened -> new Candidate(screened.way(), screened.outcome()))
                .toList();
    }

    private Found find() {
        Screening screening = new Screening(request, seed);
        // what a plan leaves idle of the threads is enough for the saltings, which need no plan
        Map<Way.Salting, CompletableFuture<Screening.Tried<Plan.SaltPlan>>> saltings = saltings(screening);
        if (request.taste().wishes().isEmpty()) {
            return around(planBeside(saltings.values()), saltings);
        }
        Map<Dropped, Integer> dropped = new EnumMap<>(Dropped.class);
        List<Screening.Screened> candidates = candidates(dropped, screening, saltings);
        Optional<PlanningException> last = Optional.empty();
        for (Screening.Screened candidate : candidates) {
            try {
                Plan plan = Planner.plan(candidate.way().applyTo(request), executor, seed)
                        .saltedBecause(reason(candidates.size()));
                return found(
                        plan,
                        candidate.outcome(),
                        Lever.ofReading(plan, candidate.outcome(), seed),
                        candidates,
                        dropped);
            } catch (PlanningException e) {
                last = Optional.of(e);
            }
        }
        throw last.orElseGet(() -> nothingLeft(dropped));
    }

    private Plan.Reason reason(int count) {
        String wishes =
                request.taste().wishes().stream().map(Wish::key).collect(Collectors.joining(PHRASES.say("then")));
        return new Plan.Reason(PHRASES.say("of-ways-that-can-be", count, wishes), SaltAdvice.MODEL);
    }

    private static PlanningException nothingLeft(Map<Dropped, Integer> dropped) {
        String reasons = dropped.entrySet().stream()
                .map(e -> e.getValue() + " " + e.getKey().words())
                .collect(Collectors.joining(", "));
        return new PlanningException("rank", PHRASES.say("no-way-of-doing-it", reasons));
    }

    private Plan planBeside(Collection<? extends CompletableFuture<?>> others) {
        try {
            return Planner.plan(request, executor, seed);
        } catch (PlanningException e) {
            others.forEach(other -> other.cancel(false));
            throw e;
        }
    }

    private Found around(Plan plan, Map<Way.Salting, CompletableFuture<Screening.Tried<Plan.SaltPlan>>> saltings) {
        CompletableFuture<Outcome> outcome = run(() -> new Screening(request, seed)
                .outcome(plan.request(), plan.salting(), plan.cooking().pullTemperature()));
        CompletableFuture<List<Lever>> levers =
                outcome.thenApplyAsync(own -> Lever.ofReading(plan, own, seed), executor);
        Map<Dropped, Integer> dropped = new EnumMap<>(Dropped.class);
        Screening screening = new Screening(request, seed, Optional.of(plan));
        List<Screening.Screened> candidates = candidates(dropped, screening, saltings);
        return found(plan, PullSearch.join(outcome), PullSearch.join(levers), candidates, dropped);
    }

    private Found found(
            Plan plan,
            Outcome outcome,
            List<Lever> ofReading,
            List<Screening.Screened> candidates,
            Map<Dropped, Integer> dropped) {
        int tried = candidates.size()
                + dropped.values().stream().mapToInt(Integer::intValue).sum();
        List<Lever> levers = new ArrayList<>(Lever.ofTime(plan));
        levers.addAll(ofReading);
        return new Found(plan, Optional.of(outcome), alternatives(plan, outcome, candidates), tried, dropped, levers);
    }

    private Map<Way.Salting, CompletableFuture<Screening.Tried<Plan.SaltPlan>>> saltings(Screening screening) {
        Map<Way.Salting, CompletableFuture<Screening.Tried<Plan.SaltPlan>>> saltings = new LinkedHashMap<>();
        for (Way.Salting salting : Way.saltings(request)) {
            saltings.put(salting, run(() -> screening.salting(salting)));
        }
        return saltings;
    }

    /** Tries salting and heat once each, and then what can be done of both together; best first. */
    private List<Screening.Screened> candidates(
            Map<Dropped, Integer> dropped,
            Screening screening,
            Map<Way.Salting, CompletableFuture<Screening.Tried<Plan.SaltPlan>>> saltings) {
        Map<Way.Heat, CompletableFuture<Screening.Tried<PullSearch.Found>>> heats = new LinkedHashMap<>();
        for (Way.Heat heat : Way.heats(request)) {
            heats.put(heat, run(() -> screening.heat(heat)));
        }
        List<CompletableFuture<Screening.Tried<Screening.Screened>>> all = new ArrayList<>();
        for (Way.Salting salting : saltings.keySet()) {
            Screening.Tried<Plan.SaltPlan> salted = PullSearch.join(saltings.get(salting));
            for (Way.Heat heat : heats.keySet()) {
                Screening.Tried<PullSearch.Found> heated = PullSearch.join(heats.get(heat));
                all.add(run(() -> screening.both(salting, salted, heat, heated)));
            }
        }
        List<Screening.Screened> kept = new ArrayList<>();
        for (CompletableFuture<Screening.Tried<Screening.Screened>> future : all) {
            Screening.Tried<Screening.Screened> tried = PullSearch.join(future);
            tried.value().ifPresent(kept::add);
            tried.dropped().ifPresent(reason -> dropped.merge(reason, 1, Integer::sum));
        }
        kept.sort(Comparator.comparingDouble((Screening.Screened c) -> score(request, c.outcome()))
                .reversed());
        return kept;
    }

    private <T> CompletableFuture<T> run(Supplier<T> task) {
        return CompletableFuture.supplyAsync(task, executor);
    }

    /** Sum over wishes in differences that count; absolute, so that more choice never makes the best one worse. */
    static double score(Request request, Outcome outcome) {
        List<Wish> wishes = request.taste().wishes();
        double score = 0;
        for (Wish wish : Wish.values()) {
            int place = wishes.indexOf(wish);
            double weight = place >= 0 ? Math.pow(NEXT_WISH, place) : UNNAMED;
            score += weight * wish.gain(outcome.value(wish), 0);
        }
        return score;
    }

    /** The best of every other treatment, and the best of the same treatment with another heat; each must win something. */
    private List<Alternative> alternatives(Plan plan, Outcome outcome, List<Screening.Screened> candidates) {
        Map<String, Alternative> kinds = new LinkedHashMap<>();
        for (Screening.Screened candidate : candidates) {
            Alternative alternative = compared(candidate, outcome);
            boolean unsalted = candidate.way().treatment() == Request.Treatment.NONE
                    && plan.salting().treatment() != Request.Treatment.NONE;
            if (!unsalted && !alternative.wins().isEmpty()) {
                kinds.putIfAbsent(kind(candidate.way(), plan), alternative);
            }
        }
        return kinds.values().stream().limit(SHOWN).toList();
    }

    private static String kind(Way way, Plan plan) {
        if (way.treatment() != plan.salting().treatment()) {
            return way.treatment().name();
        }
        if (!way.appliance().id().equals(plan.request().cook().appliance().id())) {
            return way.appliance().id();
        }
        boolean sameSetting = Math.abs(way.setting() - plan.request().cook().setting()) < 1;
        return sameSetting ? PHRASES.say("same-heat") : PHRASES.say("other-heat");
    }

    private Alternative compared(Screening.Screened candidate, Outcome base) {
        List<Wish> wins = new ArrayList<>();
        List<Wish> loses = new ArrayList<>();
        for (Wish wish : Wish.values()) {
            double gain = wish.gain(candidate.outcome().value(wish), base.value(wish));
            if (gain >= 1) {
                wins.add(wish);
            } else if (gain <= -1) {
                loses.add(wish);
            }
        }
        return new Alternative(candidate.way(), candidate.outcome(), wins, loses);
    }
}
