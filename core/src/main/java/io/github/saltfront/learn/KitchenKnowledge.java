package io.github.saltfront.learn;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.ApplianceTuning;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.plan.Request;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that one kitchen has learned, and how plans use it: what a request says goes before it, and each use is told among the
 * assumptions. Limits: an oven's offset stays within {@link OvenKnowledge#LARGEST_OFFSET}; a bath is never taken to be warmer than
 * its dial, since there time makes the hold; a refrigerator is never taken to be colder than the plans assume; the target of salt stays
 * within {@link SaltTaste#LEAST} and {@link SaltTaste#MOST}. Holds, official minima and limits of time are not learned.
 *
 * @param ovens what was learned of appliances, by id
 * @param refrigerator its temperature [K]
 * @param salt salt of the raw meat that suits the table [kg/kg]
 * @param thickness logarithm of this butcher's thickness over the usual one of the catalog [-]
 * @param diffusivities speed of salt, by key of the catalog
 */
public record KitchenKnowledge(
        Map<String, OvenKnowledge> ovens,
        Optional<LearnedValue> refrigerator,
        Optional<LearnedValue> salt,
        Optional<LearnedValue> thickness,
        Map<String, DiffusivityKnowledge> diffusivities) {
    private static final Phrases PHRASES = Phrases.of(KitchenKnowledge.class);

    /** Nothing learned. */
    public static final KitchenKnowledge NONE =
            new KitchenKnowledge(Map.of(), Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

    /** Warmest refrigerator that plans take [K]. */
    public static final double WARMEST_REFRIGERATOR = Temperature.fromCelsius(8);

    /** Most and one over the least thickness over the usual that plans take [-]; our limit. */
    public static final double LARGEST_THICKNESS = 1.4;

    private static final String FIELD = "notebook";
    private static final double LARGEST_LOGARITHM = Math.log(LARGEST_THICKNESS);

    /** Copies the maps. */
    public KitchenKnowledge {
        ovens = Map.copyOf(ovens);
        diffusivities = Map.copyOf(diffusivities);
    }

    /** Tells whether there is nothing in it. */
    public boolean isEmpty() {
        return equals(NONE);
    }

    /**
     * Puts what was learned into a request.
     *
     * @param request the request as it was read; its assumptions tell what was not said
     * @return the request with what was learned, and what it uses among its assumptions
     */
    public Request applied(Request request) {
        List<Request.Assumption> told = new ArrayList<>(request.assumptions());
        Request.Food food = meat(thickness(request, told), told);
        Request.Salting salting = refrigerator(request, told);
        Request.Taste taste = taste(request, told);
        Request.Cook cook = cook(request.cook(), told);
        return new Request(food, salting, cook, taste, request.timing(), request.guests(), request.equipment(), told);
    }

    private static boolean isAssumed(Request request, String field) {
        return request.assumptions().stream().anyMatch(a -> a.field().equals(field));
    }

    private static void tell(List<Request.Assumption> told, String replaced, String words) {
        told.removeIf(a -> a.field().equals(replaced));
        told.add(new Request.Assumption(FIELD, words, PHRASES.say("learned-from-your-notebook")));
    }

    private Request.Cook cook(Request.Cook cook, List<Request.Assumption> told) {
        Appliance appliance = cook.appliance();
        OvenKnowledge known = ovens.get(appliance.id());
        if (known == null) {
            return cook;
        }
        boolean bath = appliance.medium() == Appliance.Medium.LIQUID;
        ApplianceTuning learned = known.tuning();
        ApplianceTuning used = bath && learned.meanSetting() > 0
                ? new ApplianceTuning(0, learned.meanConvection(), 1, learned.spreadConvection(), learned.correlation())
                : learned;
        tell(
                told,
                "",
                ovenWords(appliance, known) + (used.equals(learned) ? "" : PHRASES.say("not-taken-as-warmer-for")));
        return cook.in(appliance.tuned(used));
    }

    /**
     * Says what was learned about an appliance.
     *
     * @param appliance the appliance
     * @param known what was learned
     * @return such as {@code using your oven: 9 K below its dial (3 cooks, 90 %: 5 to 13)}
     */
    public static String ovenWords(Appliance appliance, OvenKnowledge known) {
        LearnedValue offset = known.offset();
        boolean below = offset.value() < 0;
        String side = PHRASES.say(below ? "below" : "above");
        double sign = below ? -1 : 1;
        double near = sign * (below ? offset.high() : offset.low());
        double far = sign * (below ? offset.low() : offset.high());
        return PHRASES.say(
                "using-your-k-its-dial",
                Phrases.within(appliance.name()),
                Math.abs(offset.value()),
                side,
                count(known.cooks(), "cook"),
                near,
                far,
                known.coefficient().value(),
                known.coefficient().low(),
                known.coefficient().high());
    }

    private static String count(int count, String what) {
        return PHRASES.say(count == 1 ? what : what + "s", count);
    }

    private Request.Salting refrigerator(Request request, List<Request.Assumption> told) {
        Request.Salting old = request.salting();
        if (refrigerator.isEmpty() || !isAssumed(request, "refrigerator")) {
            return old;
        }
        LearnedValue known = refrigerator.get();
        double used = Math.max(old.refrigerator(), Math.min(WARMEST_REFRIGERATOR, known.value()));
        String words = PHRASES.say(
                "using-your-refrigerator-c-90",
                Temperature.toCelsius(known.value()),
                count(known.count(), "reading"),
                Temperature.toCelsius(known.low()),
                Temperature.toCelsius(known.high()),
                used > known.value() ? PHRASES.say("not-taken-as-colder-than") : "");
        boolean warm = known.high() > Temperature.fromCelsius(5);
        tell(told, "refrigerator", words + (warm ? PHRASES.say("it-may-be-warmer-than") : ""));
        return new Request.Salting(
                old.treatment(), old.salt(), old.strength(), old.time(), old.liquor(), used, old.label());
    }

    private Request.Taste taste(Request request, List<Request.Assumption> told) {
        Request.Taste old = request.taste();
        if (salt.isEmpty() || !isAssumed(request, "taste.salt")) {
            return old;
        }
        LearnedValue known = salt.get();
        double used = SaltTaste.limited(known.value());
        tell(
                told,
                "taste.salt",
                PHRASES.say(
                        "using-your-taste-salt-in",
                        100 * used,
                        count(known.count(), "rating"),
                        100 * known.low(),
                        100 * known.high(),
                        used == known.value() ? "" : PHRASES.say("held-at-our-limit")));
        return new Request.Taste(used, old.core(), old.sodiumLimit(), old.wishes());
    }

    private Request.Food thickness(Request request, List<Request.Assumption> told) {
        Request.Food old = request.food();
        Optional<Cut> cut = old.cut();
        if (thickness.isEmpty() || cut.isEmpty() || !isAssumed(request, "thickness")) {
            return old;
        }
        LearnedValue known = thickness.get();
        double factor = Math.exp(Math.max(-LARGEST_LOGARITHM, Math.min(LARGEST_LOGARITHM, known.value())));
        Optional<Shape> shape = shape(cut.get(), old.pieceMass(), factor);
        if (shape.isEmpty()) {
            return old;
        }
        told.removeIf(a -> a.field().equals("thickness"));
        tell(
                told,
                "",
                PHRASES.say(
                        "using-your-butcher-times-as",
                        factor,
                        count(known.count(), "piece"),
                        Math.exp(known.low()),
                        Math.exp(known.high())));
        return new Request.Food(
                old.cut(),
                old.meat(),
                shape.get(),
                old.pieces(),
                old.pieceMass(),
                old.edibleShare(),
                old.startTemperature());
    }

    /** The shape; empty where no piece of that mass can be so thick. */
    private static Optional<Shape> shape(Cut cut, double mass, double factor) {
        double usual = PieceShape.thickness(cut, mass);
        try {
            return Optional.of(PieceShape.of(cut, mass, OptionalDouble.of(factor * usual)));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    private Request.Food meat(Request.Food old, List<Request.Assumption> told) {
        MeatModel meat = old.meat();
        DiffusivityKnowledge known = diffusivities.get(meat.diffusivity().id());
        if (known == null) {
            return old;
        }
        LearnedValue factor = known.factor();
        tell(
                told,
                "",
                PHRASES.say(
                        "using-your-meat-salt-moves",
                        factor.value(),
                        count(factor.count(), "soak"),
                        factor.low(),
                        factor.high()));
        MeatModel learned = new MeatModel(
                meat.name(),
                meat.species(),
                meat.composition(),
                meat.nativeSalt(),
                known.applied(meat.diffusivity()),
                meat.juiceFactor(),
                meat.safety(),
                meat.hasSkin());
        return new Request.Food(
                old.cut(),
                learned,
                old.shape(),
                old.pieces(),
                old.pieceMass(),
                old.edibleShare(),
                old.startTemperature());
    }
}
