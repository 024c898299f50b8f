package io.github.saltfront.plan;

import io.github.saltfront.quality.Band;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * Frozen meat is thawed in the refrigerator before anything else, covered, so that none of it gets warm. The piece is carried
 * through it like through any other stage; everything after starts from the temperature of the refrigerator.
 *
 * @param time until the middle is free of ice [s]
 */
public record Thawing(Interval time) {
    private static final Phrases PHRASES = Phrases.of(Thawing.class);

    /** Meat colder than this at the start is thawed first [K]; between this and freezing it is only very cold. */
    public static final double FROZEN_BELOW = Temperature.fromCelsius(-2);

    private static final double THAWED = Temperature.fromCelsius(-0.5);
    private static final double LONGEST = 14 * 86400;
    private static final double WHOLE_HOURS = 3600;
    private static final int MEMBERS = 12;

    /** Enough for a time that is told in whole hours: ice makes fine steps and layers slow. */
    private static final int LAYERS = 16;

    private static final double TOLERANCE = 0.5;

    /**
     * Simulates the thawing of a request.
     *
     * @param request the request
     * @param executor where to run parts of the ensemble
     * @param seed seed of the ensemble
     * @return how long it takes; empty if the meat is not frozen
     */
    static Optional<Thawing> of(Request request, Executor executor, long seed) {
        Request.Food food = request.food();
        if (!isFrozen(request)) {
            return Optional.empty();
        }
        CoolingMedium medium = CoolingMedium.get(CoolingMedium.REFRIGERATOR);
        Band coefficient = medium.coefficient();
        double cold = request.salting().refrigerator();
        if (cold <= THAWED + 1) {
            throw new PlanningException("refrigerator", PHRASES.say("the-meat-is-frozen-and"));
        }
        DayEnsemble ensemble = new DayEnsemble(
                food.meat(),
                food.shape(),
                food.startTemperature(),
                Draw.ensemble(MEMBERS, seed + 5),
                SolverSettings.DEFAULT.withTolerances(TOLERANCE, 1e-3),
                LAYERS);
        List<MemberDay> days = ensemble.run(
                List.of(draw -> new Stage(
                        "thaw",
                        List.of(FaceCondition.convection(cold, draw.logarithmic(Uncertainty.CONVECTION, coefficient))),
                        SaltExchange.NONE,
                        LONGEST,
                        new StopRule(StopRule.Kind.CORE_ABOVE, THAWED))),
                executor);
        return Optional.of(new Thawing(Interval.of(
                days.stream().mapToDouble(day -> day.ends().get(0).end()).toArray())));
    }

    static boolean isFrozen(Request request) {
        return request.food().startTemperature() < FROZEN_BELOW;
    }

    /** Time that is planned for it: what the slowest of 20 pieces takes, in whole hours [s]. */
    double planned() {
        return WHOLE_HOURS * Math.ceil(time.high() / WHOLE_HOURS);
    }

    /** The request as it stands when the meat is thawed. */
    Request thawed(Request request) {
        Request.Food food = request.food();
        Request.Timing timing = request.timing();
        ZonedDateTime ready = timing.now().plusSeconds((long) planned());
        if (timing.serve().isPresent() && !timing.serve().get().isAfter(ready)) {
            throw new PlanningException(
                    "serve",
                    PHRASES.say(
                            "the-meat-is-frozen-and-2",
                            QuantityFormat.time(planned()),
                            QuantityFormat.time(Duration.between(
                                            timing.now(), timing.serve().get())
                                    .toSeconds())));
        }
        return request.of(new Request.Food(
                        food.cut(),
                        food.meat(),
                        food.shape(),
                        food.pieces(),
                        food.pieceMass(),
                        food.edibleShare(),
                        request.salting().refrigerator()))
                .at(new Request.Timing(ready, timing.serve()));
    }

    /** The plan with the thawing before it. */
    Plan before(Plan plan) {
        List<Plan.Step> clock = new ArrayList<>(plan.clock());
        ZonedDateTime latest = clock.get(0).time().minusSeconds((long) planned());
        ZonedDateTime earliest = plan.request().timing().now().minusSeconds((long) planned());
        clock.add(
                0,
                new Plan.Step(
                        Nights.eveningBefore(latest, earliest),
                        Plan.StepKind.THAW,
                        PHRASES.say("put-the-frozen-meat-into", words()),
                        true));
        return plan.thawedFirst(this, clock);
    }

    /** Returns how long it takes, for people. */
    public String words() {
        return PHRASES.say("to", hours(time.median()), hours(time.low()), hours(time.high()));
    }

    private static String hours(double seconds) {
        return QuantityFormat.time(1800 * Math.rint(seconds / 1800));
    }
}
