package io.github.saltfront.plan;

import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that would change a plan, and how.
 *
 * @param change what is different, such as "With 3 h more before serving"
 * @param effect what the plan would then be, as the end of a sentence
 */
public record Lever(String change, String effect) {
    private static final Phrases PHRASES = Phrases.of(Lever.class);

    private static final double QUARTER = 15 * 60;

    /** How far more or less time is looked for [s]: three days, the longest that anything is salted ahead. */
    private static final double FARTHEST = 72 * 3600;

    /** Lowest core that a request may wish for [K]; below it safety alone decides. */
    private static final double NO_WISH = Temperature.fromCelsius(40);

    /**
     * Returns how much more or less time would lead to another treatment. Nothing is simulated.
     *
     * @param plan the plan
     * @return at most two levers; none if the treatment was asked for
     */
    public static List<Lever> ofTime(Plan plan) {
        Request request = plan.request();
        if (request.salting().treatment() != Request.Treatment.AUTO) {
            return List.of();
        }
        List<Lever> levers = new ArrayList<>();
        if (request.timing().serve().isEmpty()) {
            Request.Treatment now = decision(request, Double.POSITIVE_INFINITY);
            for (double time = FARTHEST; time >= 0; time -= QUARTER) {
                Request.Treatment then = decision(request, time);
                if (then != now) {
                    String limit = QuantityFormat.time(time + QUARTER);
                    levers.add(new Lever(PHRASES.say("with-less-than-before-the", limit), SaltAdvice.name(then)));
                    break;
                }
            }
            return levers;
        }
        double available = available(plan);
        Request.Treatment now = decision(request, available);
        for (double more = QUARTER; more <= FARTHEST; more += QUARTER) {
            Request.Treatment then = decision(request, available + more);
            if (then != now) {
                levers.add(new Lever(PHRASES.say("with-more", QuantityFormat.time(more)), SaltAdvice.name(then)));
                break;
            }
        }
        for (double less = QUARTER; less <= available; less += QUARTER) {
            Request.Treatment then = decision(request, available - less);
            if (then != now) {
                levers.add(new Lever(PHRASES.say("with-less", QuantityFormat.time(less)), SaltAdvice.name(then)));
                break;
            }
        }
        return levers;
    }

    /**
     * Returns what guests and wishes change about the reading, tried on a few members.
     *
     * @param plan the plan
     * @param base what it comes to on the same few members
     * @param seed seed of the ensemble
     * @return levers; what cannot be done is left out
     */
    static List<Lever> ofReading(Plan plan, Outcome base, long seed) {
        List<Lever> levers = new ArrayList<>();
        Request request = plan.request();
        Request.Guests guests = request.guests();
        boolean byReading = request.equipment().thermometer()
                && !plan.endsByHold()
                && request.cook().sequence().after().isEmpty();
        if (!byReading) {
            return levers;
        }
        boolean other = !guests.vulnerable();
        Request changed = request.servedTo(new Request.Guests(guests.count(), other, guests.kitchen()));
        reading(changed, request.taste().core(), seed)
                .filter(pull -> (pull - base.pullTemperature()) * (other ? 1 : -1) > 0.25)
                .ifPresent(pull -> {
                    Outcome outcome = new Screening(changed, seed).outcome(changed, plan.salting(), pull);
                    String who =
                            other ? PHRASES.say("with-a-guest-who-is") : PHRASES.say("without-guests-who-are-pregnant");
                    levers.add(new Lever(
                            who,
                            PHRASES.say(
                                    "out-at-about-instead-of",
                                    celsius(pull),
                                    celsius(base.pullTemperature()),
                                    100 * outcome.weightLeft(),
                                    100 * base.weightLeft())));
                });
        boolean safetyDecides = plan.cooking().isRaised();
        if (safetyDecides) {
            levers.add(new Lever(
                    PHRASES.say(
                            "with-a-wish-of-or", celsius(plan.cooking().peak().median())),
                    PHRASES.say("the-wish-sets-the-reading")));
        } else {
            reading(request, OptionalDouble.of(NO_WISH), seed)
                    .filter(pull -> pull < plan.cooking().pullTemperature() - 0.25)
                    .ifPresent(pull -> levers.add(new Lever(
                            PHRASES.say("with-no-wish-for-the"),
                            PHRASES.say("safety-alone-would-let-it", celsius(pull)))));
        }
        return levers;
    }

    private static Optional<Double> reading(Request request, OptionalDouble core, long seed) {
        Request.Cook cook = request.cook();
        return new Screening(request, seed)
                .heat(new Way.Heat(cook.appliance(), cook.setting(), core))
                .value()
                .map(PullSearch.Found::pullTemperature);
    }

    private static Request.Treatment decision(Request request, double available) {
        return new SaltAdvice(request, available).decide().treatment();
    }

    /** Time that was left for salting [s]. */
    private static double available(Plan plan) {
        Request request = plan.request();
        double all = Duration.between(
                        request.timing().now(), request.timing().serve().orElseThrow())
                .toSeconds();
        CookStages stages = new CookStages(request, plan.cooking().verdict().rule());
        double cook = plan.cooking().timeToPull().high();
        return all - cook - stages.fixedTime() - Loads.of(request, cook).delay() - SaltChooser.PREPARATION;
    }

    private static String celsius(double kelvin) {
        return Phrases.figures("%.1f °C", Temperature.toCelsius(kelvin));
    }
}
