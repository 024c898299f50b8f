package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.catalog.TreatmentRules;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Provenance;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether to salt ahead at all, and how: asks the questions of choice_steps.csv in their order and then the rule for the cut and
 * the way of cooking. Every answer carries its source.
 */
final class SaltAdvice {
    private static final Phrases PHRASES = Phrases.of(SaltAdvice.class);

    /** Source of what was computed here. */
    static final List<String> MODEL = List.of("model");

    /** Source of a wish. */
    static final List<String> WISH = List.of("request");

    /** Why a treatment is chosen that the request names. */
    static Plan.Reason askedFor() {
        return new Plan.Reason(PHRASES.say("you-asked-for-it"), WISH);
    }

    private static final List<String> MOIST = List.of("simmer", "pressure-cooker");
    private static final double LEAST_TIME_BEFORE_COOKING = 15 * 60;

    private final Request request;
    private final double available;
    private final TreatmentRules rules = Catalog.load().treatments();
    private final List<Plan.Reason> reasons = new ArrayList<>();

    SaltAdvice(Request request, double available) {
        this.request = request;
        this.available = available;
    }

    /**
     * What to do.
     *
     * @param treatment the treatment
     * @param liquid liquid that belongs to it, where none is named
     * @param usualTime usual time, if the rule knows one
     * @param reasons why
     */
    record Decision(Request.Treatment treatment, String liquid, Optional<Band> usualTime, List<Plan.Reason> reasons) {}

    Decision decide() {
        SaltedAlready label = request.salting().label();
        Request.Treatment wish = request.salting().treatment();
        if (wish != Request.Treatment.AUTO) {
            return wished(wish, label);
        }
        if (label.verdict() == SaltedAlready.Verdict.REFUSE) {
            return nothing(label.reason().orElseThrow(), step("already-salted").provenance());
        }
        boolean soldSalted = request.food()
                .cut()
                .map(c -> c.treatmentClass().equals("enhanced"))
                .orElse(false);
        if (!soldSalted) {
            label.reason().ifPresent(words -> add(words, step("already-salted").provenance()));
        }
        if (MOIST.contains(request.cook().appliance().id())) {
            TreatmentRules.ChoiceStep moist = step("moist-heat");
            return nothing(PHRASES.say("it-cooks-in-liquid-so", moist.why()), moist.provenance());
        }
        if (request.taste().sodiumLimit().isPresent()) {
            add(PHRASES.say("a-guest-is-on-a"), step("sodium-limit").provenance());
            boolean early = available >= DrySalting.DISSOLVING_LONGEST;
            return decision(
                    early ? Request.Treatment.DRY_SALT : Request.Treatment.SURFACE_SALT, "water", Optional.empty());
        }
        Optional<Request.Treatment> byLiquid =
                request.salting().liquor().liquid().flatMap(SaltAdvice::forLiquid);
        if (byLiquid.isPresent()) {
            reasons.add(new Plan.Reason(PHRASES.say("is-what-the-liquid-you", capital(name(byLiquid.get()))), WISH));
            rather(byLiquid.get());
            return decision(byLiquid.get(), "water", Optional.empty());
        }
        if (request.food().cut().isEmpty()) {
            reasons.add(new Plan.Reason(PHRASES.say("nothing-is-known-of-the"), List.of("common-practice")));
            return decision(Request.Treatment.WET_BRINE, "water", Optional.empty());
        }
        return byRule(rules.find(request.food().cut().get().treatmentClass(), cookWord())
                .orElseThrow());
    }

    private Decision wished(Request.Treatment wish, SaltedAlready label) {
        boolean strong = wish == Request.Treatment.WET_BRINE
                || request.salting().strength().isPresent();
        if (label.verdict() == SaltedAlready.Verdict.REFUSE && wish.isSoak() && strong) {
            throw new PlanningException(
                    "salting.treatment",
                    PHRASES.say(
                            "possible-instead-treatment-none-dry",
                            label.reason().orElseThrow()));
        }
        reasons.add(askedFor());
        label.reason().ifPresent(words -> add(words, step("already-salted").provenance()));
        rather(wish);
        String liquid = wish == Request.Treatment.DAIRY
                ? "buttermilk"
                : wish == Request.Treatment.MARINADE ? "soy-sauce" : "water";
        return decision(wish, liquid, Optional.empty());
    }

    /** Says so if a treatment is not what the rule for the cut would have. */
    private void rather(Request.Treatment wish) {
        boolean mildMarinade = wish == Request.Treatment.MARINADE
                && !request.salting()
                        .liquor()
                        .liquid()
                        .map(l -> l.acid().isStrong())
                        .orElse(false);
        request.food()
                .cut()
                .flatMap(cut -> rules.find(cut.treatmentClass(), cookWord()))
                .filter(rule -> !mildMarinade && !rule.avoidWhy().isEmpty())
                .filter(rule -> treatment(rule.avoid()).filter(wish::equals).isPresent())
                .ifPresent(rule -> add(PHRASES.say("for-this-cut-one-would", rule.avoidWhy()), rule.provenance()));
    }

    private Decision byRule(TreatmentRules.Rule rule) {
        for (TreatmentRules.Choice choice : List.of(rule.first(), rule.second())) {
            Optional<Request.Treatment> treatment = treatment(choice.treatment());
            if (treatment.isEmpty()) {
                continue;
            }
            double least = choice.time().map(Band::low).orElse(0.0);
            boolean waits =
                    treatment.get() != Request.Treatment.NONE && treatment.get() != Request.Treatment.SURFACE_SALT;
            if (waits && Math.max(least, LEAST_TIME_BEFORE_COOKING) > available) {
                reasons.add(new Plan.Reason(
                        PHRASES.say(
                                "wants-or-more-there-are",
                                capital(name(treatment.get())),
                                hours(Math.max(least, LEAST_TIME_BEFORE_COOKING)),
                                hours(available)),
                        rule.provenance().sourceIds()));
                continue;
            }
            reasons.add(
                    0,
                    new Plan.Reason(
                            PHRASES.say("suits-this-cut", capital(name(treatment.get())), rule.why()),
                            rule.provenance().sourceIds()));
            treatment(rule.avoid())
                    .filter(avoid ->
                            avoid != Request.Treatment.NONE && !rule.avoidWhy().isEmpty())
                    .ifPresent(avoid -> add(PHRASES.say("not", name(avoid), rule.avoidWhy()), rule.provenance()));
            return decision(treatment.get(), liquidOf(choice.treatment()), choice.time());
        }
        add(PHRASES.say("too-little-time-to-salt"), step("short-of-time").provenance());
        return decision(Request.Treatment.SURFACE_SALT, "water", Optional.empty());
    }

    private Decision nothing(String words, Provenance provenance) {
        add(words, provenance);
        return decision(Request.Treatment.NONE, "water", Optional.empty());
    }

    private Decision decision(Request.Treatment treatment, String liquid, Optional<Band> usualTime) {
        return new Decision(treatment, liquid, usualTime, List.copyOf(reasons));
    }

    private void add(String words, Provenance provenance) {
        reasons.add(new Plan.Reason(words, provenance.sourceIds()));
    }

    private TreatmentRules.ChoiceStep step(String id) {
        return rules.choiceSteps().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The way of cooking as the rules name it. */
    private String cookWord() {
        Appliance.Medium medium = request.cook().appliance().medium();
        return medium == Appliance.Medium.OIL || medium == Appliance.Medium.RADIANT ? "fry-or-grill" : "any";
    }

    private static Optional<Request.Treatment> forLiquid(Liquid liquid) {
        if (liquid.id().equals("water")) {
            return Optional.empty();
        }
        boolean acid = liquid.acid()
                        .acidity()
                        .map(a -> AcidAdvice.of(a.typical()) != AcidAdvice.NONE)
                        .orElse(false)
                && liquid.acid().fraction().typical() > 0;
        if (liquid.allergens().contains(Liquid.Allergen.MILK) && acid) {
            return Optional.of(Request.Treatment.DAIRY);
        }
        boolean seasoned = liquid.allergens().contains(Liquid.Allergen.SOY)
                || liquid.allergens().contains(Liquid.Allergen.FISH);
        return Optional.of(acid || seasoned ? Request.Treatment.MARINADE : Request.Treatment.WET_BRINE);
    }

    private static Optional<Request.Treatment> treatment(TreatmentRules.Treatment of) {
        return switch (of) {
            case WET_BRINE -> Optional.of(Request.Treatment.WET_BRINE);
            case DRY_SALT -> Optional.of(Request.Treatment.DRY_SALT);
            case SURFACE_SALT -> Optional.of(Request.Treatment.SURFACE_SALT);
            case DAIRY -> Optional.of(Request.Treatment.DAIRY);
            case SOY_MARINADE, ACID -> Optional.of(Request.Treatment.MARINADE);
            case NONE -> Optional.of(Request.Treatment.NONE);
            case WET_THEN_DRY -> Optional.empty();
        };
    }

    private static String liquidOf(TreatmentRules.Treatment treatment) {
        return switch (treatment) {
            case DAIRY -> "buttermilk";
            case SOY_MARINADE -> "soy-sauce";
            case ACID -> "wine-red";
            default -> "water";
        };
    }

    /** Returns a treatment in words that fit into a sentence. */
    static String name(Request.Treatment treatment) {
        return switch (treatment) {
            case WET_BRINE -> PHRASES.say("a-wet-brine");
            case EQUILIBRIUM -> PHRASES.say("a-weak-brine-matched-to");
            case DAIRY -> PHRASES.say("buttermilk-or-yogurt-with-salt");
            case MARINADE -> PHRASES.say("a-marinade");
            case DRY_SALT -> PHRASES.say("dry-salting");
            case SURFACE_SALT -> PHRASES.say("salting-just-before-the-heat");
            case NONE, AUTO -> PHRASES.say("no-salt-ahead");
        };
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String hours(double seconds) {
        return QuantityFormat.time(60 * Math.floor(seconds / 60));
    }
}
