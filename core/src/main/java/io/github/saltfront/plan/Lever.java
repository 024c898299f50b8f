package io.github.saltfront.plan;

import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that would change a plan, and how.
 *
 * @param change what is different, such as "With 3 h more before serving"
 * @param effect what the plan would then be, as the end of a sentence
 */
public record Lever(String change, String effect) {
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
                    levers.add(new Lever("With less than " + limit + " before the heat", SaltAdvice.name(then)));
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
                levers.add(new Lever("With " + QuantityFormat.time(more) + " more", SaltAdvice.name(then)));
                break;
            }
        }
        for (double less = QUARTER; less <= available; less += QUARTER) {
            Request.Treatment then = decision(request, available - less);
            if (then != now) {
                levers.add(new Lever("With " + QuantityFormat.time(less) + " less", SaltAdvice.name(then)));
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
                    String who = other
                            ? "With a guest who is pregnant, very young, old or ill"
                            : "Without guests who are pregnant, very young, old or ill";
                    levers.add(new Lever(
                            who,
                            String.format(
                                    Locale.ROOT,
                                    "out at about %s instead of %s; %.0f %% of the weight left instead of %.0f %%",
                                    celsius(pull),
                                    celsius(base.pullTemperature()),
                                    100 * outcome.weightLeft(),
                                    100 * base.weightLeft())));
                });
        boolean safetyDecides = plan.cooking().isRaised();
        if (safetyDecides) {
            levers.add(new Lever(
                    "With a wish of " + celsius(plan.cooking().peak().median()) + " or more in the middle",
                    "the wish sets the reading; now safety does"));
        } else {
            reading(request, OptionalDouble.of(NO_WISH), seed)
                    .filter(pull -> pull < plan.cooking().pullTemperature() - 0.25)
                    .ifPresent(pull -> levers.add(new Lever(
                            "With no wish for the middle",
                            "safety alone would let it come out at about " + celsius(pull))));
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
        return String.format(Locale.ROOT, "%.1f °C", Temperature.toCelsius(kelvin));
    }
}
