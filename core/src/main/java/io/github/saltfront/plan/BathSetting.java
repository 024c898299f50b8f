package io.github.saltfront.plan;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.matter.SaltSolubility;
import io.github.saltfront.quality.Band;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a soak of a request lies in: the liquid, how much of it the vessel wants, what its acid does and what to beware of. */
final class BathSetting {
    private static final Phrases PHRASES = Phrases.of(BathSetting.class);

    /** Longest time in strong acid [s]: two hours (AcidAdvice). */
    private static final double LONGEST_IN_STRONG_ACID = 2 * 3600;

    /** The same for fish, whose face acid cooks (treatment_rules.csv) [s]. */
    private static final double LONGEST_OF_FISH_IN_ACID = 1800;

    /** Half of the band of the depth of acid, as a factor: good to a factor of two ({@link AcidFront}). */
    private static final double ACID_FACTOR = 2;

    private final Request request;

    BathSetting(Request request) {
        this.request = request;
    }

    Plan.Soaking soaking(Request.Treatment treatment, Bath bath, double time, boolean isMatched) {
        return new Plan.Soaking(
                bath,
                vesselWords(treatment, bath),
                balance().equilibrium(bath.water(), bath.salt()).meatSaltFraction(),
                isMatched,
                acid(bath, time),
                limit(bath, isMatched));
    }

    List<HandlingCaution> cautions(Bath bath, Optional<Plan.Acid> acid) {
        return HandlingCaution.forOccasions(occasions(bath, acid));
    }

    /** How long acid or enzyme let the meat lie [s]; without end in other liquids. */
    double longestBite(Bath bath) {
        double most = Double.POSITIVE_INFINITY;
        if (acid(bath, 1).filter(a -> a.advice() == AcidAdvice.STRONG).isPresent()) {
            boolean fish =
                    request.food().cut().map(c -> c.group() == Cut.Group.FISH).orElse(false);
            most = fish ? LONGEST_OF_FISH_IN_ACID : LONGEST_IN_STRONG_ACID;
        }
        boolean digests =
                EnzymeSource.findIn(bath.portions().get(0).liquid().id()).isPresent();
        return digests ? Math.min(most, EnzymeSource.LONGEST) : most;
    }

    private String limit(Bath bath, boolean isMatched) {
        if (!Double.isInfinite(longestBite(bath))) {
            return PHRASES.say("then-acid-or-enzyme-spoils");
        }
        return isMatched ? PHRASES.say("for-cold-holding-salt-alone") : PHRASES.say("before-it-may-be-too");
    }

    Liquid liquid(SaltAdvice.Decision decision) {
        return request.salting()
                .liquor()
                .liquid()
                .orElseGet(() -> Catalog.load().liquids().get(decision.liquid()));
    }

    BathMixer mixer(SaltAdvice.Decision decision, Liquid liquid) {
        Request.Liquor liquor = request.salting().liquor();
        double mass = liquor.perMeat().isPresent()
                ? liquor.perMeat().getAsDouble() * request.food().mass()
                : vessel(decision.treatment()).liquidToCover(load()).typical() * liquid.density();
        return new BathMixer(liquid, mass, liquor.sugarPerSalt());
    }

    private Vessel vessel(Request.Treatment treatment) {
        return request.salting().liquor().vessel().orElseGet(() -> {
            if (treatment == Request.Treatment.DAIRY || treatment == Request.Treatment.MARINADE) {
                return new Vessel.Unmeasured("bag");
            }
            boolean hollow = request.food().cut().map(c -> c.size().isHollow()).orElse(false);
            return new Vessel.Unmeasured(hollow ? "bird-in-pot" : "tub");
        });
    }

    private Vessel.Load load() {
        Request.Food food = request.food();
        double density = food.cut().map(c -> c.composition().density()).orElse(1050.0);
        return new Vessel.Load(food.mass(), density, 2 * food.shape().halfThickness());
    }

    private String vesselWords(Request.Treatment treatment, Bath bath) {
        double ratio = bath.liquidMass() / request.food().mass();
        if (request.salting().liquor().perMeat().isPresent()) {
            return PHRASES.say("kg-per-kg-of-meat", ratio);
        }
        Vessel vessel = vessel(treatment);
        Band cover = vessel.liquidToCover(load());
        double room = vessel.practice().headRoom();
        return PHRASES.say(
                "covers-with-to-l",
                vessel.practice().name(),
                cover.low() * 1000,
                cover.high() * 1000,
                room > 0 ? PHRASES.say("leave-cm-to-the-rim", room * 100) : "");
    }

    MeatInBath balance() {
        MeatModel meat = request.food().meat();
        return MeatInBath.ofBought(
                SaltStages.edible(request),
                meat.composition().water(),
                meat.nativeSalt(),
                MeatInBath.PARTITION_TYPICAL);
    }

    Bath dissolved(Bath bath) {
        double cold = request.salting().refrigerator();
        if (bath.undissolvedSalt(cold) > 0) {
            throw new PlanningException(
                    "salting.strength", PHRASES.say("the-water-of-this-bath", 100 * SaltSolubility.saturation(cold)));
        }
        return bath;
    }

    private Optional<Plan.Acid> acid(Bath bath, double time) {
        Bath.Portion first = bath.portions().get(0);
        double speed =
                request.food().meat().diffusivity().medianAt(request.salting().refrigerator());
        double share = first.mass() / bath.liquidMass();
        return AcidFront.of(first.liquid(), share, speed)
                .flatMap(front -> first.liquid()
                        .acid()
                        .acidity()
                        .map(ph -> AcidAdvice.of(ph.typical()))
                        .filter(advice -> advice != AcidAdvice.NONE)
                        .map(advice -> {
                            double depth = Math.min(
                                    front.depth(time), request.food().shape().halfThickness());
                            return new Plan.Acid(
                                    advice,
                                    new Band(
                                            depth / ACID_FACTOR,
                                            depth,
                                            Math.min(
                                                    depth * ACID_FACTOR,
                                                    request.food().shape().halfThickness())));
                        }));
    }

    private List<String> occasions(Bath bath, Optional<Plan.Acid> acid) {
        List<String> occasions = new ArrayList<>(List.of("soak"));
        if (bath.portions().get(0).liquid().parts().water() == 1) {
            occasions.add("spices");
        }
        if (acid.isPresent()) {
            occasions.add("acid");
        }
        if (bath.addedSugar() > 0) {
            occasions.add("hydrometer");
        }
        if (bath.allergens().contains(Liquid.Allergen.MILK)) {
            occasions.add("dairy");
        }
        if (EnzymeSource.findIn(bath.portions().get(0).liquid().id()).isPresent()) {
            occasions.add("enzyme");
        }
        double density =
                request.food().cut().map(c -> c.composition().density()).orElse(1060.0);
        if (Floating.floats(density, bath.strength(), request.salting().refrigerator())) {
            occasions.add("float");
        }
        return occasions;
    }
}
