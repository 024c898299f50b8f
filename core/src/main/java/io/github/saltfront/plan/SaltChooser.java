package io.github.saltfront.plan;

import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.JuiceLoss;
import io.github.saltfront.quality.Seasoning;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/** Works the salting out: what {@link SaltAdvice} decides, in grams and hours, within the time there is. */
final class SaltChooser {
    private static final Phrases PHRASES = Phrases.of(SaltChooser.class);

    /** Usual strength of a brine as salt per mass of water [kg/kg]: 60 g per liter; common practice, no source. */
    static final double USUAL_STRENGTH = 0.06;

    /** Time to weigh, mix and lay out before salting starts [s]; common practice, no source. */
    static final double PREPARATION = 20 * 60;

    private static final double QUARTER = 15 * 60;
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    /** Least and most time of a soak in cultured milk or a mild marinade, where the rule for the cut is silent [s]. */
    private static final Band USUAL_MARINATING = new Band(4 * HOUR, 12 * HOUR, DAY);

    private static final double NINETY_PERCENT = Draw.NINETY_FIVE;
    private static final Seasoning SEASONING = Seasoning.load();

    private final Request request;
    private final double available;
    private final Band taste;
    private final BathSetting setting;
    private final Nights nights;
    private final SoakSearch search;
    private final List<Plan.Reason> reasons = new ArrayList<>();

    SaltChooser(Request request, Executor executor, long seed, double cookAndRest) {
        this(request, executor, seed, cookAndRest, Fineness.WHOLE);
    }

    SaltChooser(Request request, Executor executor, long seed, double cookAndRest, Fineness fineness) {
        this.request = request;
        available = request.timing()
                .serve()
                .map(serve -> Duration.between(request.timing().now(), serve).getSeconds() - cookAndRest - PREPARATION)
                .orElse(Double.POSITIVE_INFINITY);
        Band usual = SEASONING.targetRaw();
        double target = request.taste().sodiumLimit().isPresent()
                ? Math.min(
                        request.taste().rawSalt(),
                        Sodium.rawSaltFor(
                                request.taste().sodiumLimit().getAsDouble(),
                                BrineSheet.YIELD,
                                SEASONING.saltKept(isMoist(request)).typical(),
                                BrineSheet.SERVING))
                : request.taste().rawSalt();
        taste = usual.times(target / usual.typical());
        nights = new Nights(request, cookAndRest);
        setting = new BathSetting(request);
        search = new SoakSearch(request, executor, seed, taste, fineness);
    }

    private static boolean isMoist(Request request) {
        return switch (request.cook().appliance().medium()) {
            case LIQUID, STEAM -> true;
            default -> false;
        };
    }

    Plan.SaltPlan choose() {
        requireTimeToCook();
        SaltAdvice.Decision decision = new SaltAdvice(request, available).decide();
        reasons.addAll(decision.reasons());
        request.taste().sodiumLimit().ifPresent(this::tellCost);
        return switch (decision.treatment()) {
            case WET_BRINE -> wet(decision);
            case EQUILIBRIUM, DAIRY, MARINADE -> matched(decision);
            case DRY_SALT -> dry(decision);
            case SURFACE_SALT -> surface();
            case NONE, AUTO -> none();
        };
    }

    private void requireTimeToCook() {
        if (available < 0) {
            long minutes = (long) Math.ceil(-available / 60);
            throw new PlanningException(
                    "serve",
                    PHRASES.say(
                            "the-time-to-serve-is",
                            minutes,
                            request.timing()
                                    .serve()
                                    .orElseThrow()
                                    .plusMinutes(minutes)
                                    .toLocalDateTime()));
        }
    }

    private void tellCost(double limit) {
        double usual = request.taste().rawSalt();
        double juice = JuiceLoss.saltFactor(taste.typical()) / JuiceLoss.saltFactor(usual) - 1;
        String difference =
                taste.typical() < usual * (1 - SEASONING.differenceThreshold().high())
                        ? PHRASES.say("anyone-can-tell-the-difference")
                        : PHRASES.say("few-can-tell-the-difference");
        reasons.add(new Plan.Reason(
                PHRASES.say(
                        "for-at-most-mg-sodium",
                        limit * 1e6,
                        QuantityFormat.percent(taste.typical()),
                        QuantityFormat.percent(usual),
                        difference,
                        100 * juice),
                List.of("cfr21-101-61", "common-practice")));
    }

    /** Salt that brings the edible part from what it holds to the target [kg]. */
    private double dose() {
        return DrySalting.toTarget(
                        request.food().mass(),
                        1 - request.food().edibleShare(),
                        request.food().meat().nativeSalt(),
                        taste.typical())
                .salt();
    }

    private Plan.SaltPlan none() {
        return unsoaked(Request.Treatment.NONE, 0, 0, asBought(), Optional.empty(), List.of());
    }

    private Plan.SaltPlan surface() {
        double salt = dose();
        if (salt <= 0) {
            return enough();
        }
        double target = taste.typical();
        return unsoaked(
                Request.Treatment.SURFACE_SALT,
                salt,
                0,
                new Interval(target, target, target),
                Optional.empty(),
                List.of());
    }

    private Plan.SaltPlan enough() {
        reasons.add(new Plan.Reason(
                PHRASES.say(
                        "the-meat-holds-salt-as",
                        QuantityFormat.percent(request.food().meat().nativeSalt())),
                SaltAdvice.MODEL));
        return none();
    }

    private Plan.SaltPlan dry(SaltAdvice.Decision decision) {
        double salt = dose();
        if (salt <= 0) {
            return enough();
        }
        double least = decision.usualTime().map(Band::low).orElse(HOUR);
        double most = decision.usualTime().map(Band::high).orElse(DAY);
        double time = request.salting()
                .time()
                .orElse(
                        Double.isInfinite(available)
                                ? least
                                : Math.min(most, Math.min(available, Math.max(least, available))));
        requireFits(time);
        if (request.salting().time().isEmpty()) {
            time = Math.max(Math.min(time, least), QUARTER * Math.floor(time / QUARTER));
            time = nights.awake(time, least, Math.min(Math.max(most, DAY), available), reasons);
        }
        reasons.add(new Plan.Reason(PHRASES.say("a-dose-by-weight-cannot"), SaltAdvice.MODEL));
        if (time > DrySalting.WET_FROM && time < DrySalting.WET_UNTIL) {
            reasons.add(new Plan.Reason(PHRASES.say("from-3-to-40-min"), List.of("common-practice")));
        }
        return unsoaked(
                Request.Treatment.DRY_SALT,
                salt,
                time,
                search.dry(salt, time),
                Optional.of(evenTime()),
                List.of("dry-salt"));
    }

    private Plan.SaltPlan unsoaked(
            Request.Treatment treatment,
            double salt,
            double time,
            Interval after,
            Optional<Band> even,
            List<String> occasions) {
        return new Plan.SaltPlan(
                treatment,
                reasons,
                taste.typical(),
                salt,
                Optional.empty(),
                time,
                Optional.empty(),
                after,
                even,
                0,
                treatment == Request.Treatment.NONE ? List.of() : HandlingCaution.forOccasions(occasions));
    }

    private Interval asBought() {
        double salt = request.food().meat().nativeSalt();
        return new Interval(salt, salt, salt);
    }

    /** A strong brine; a weak one instead where the time is not sure, if the cook leaves it open and there is time. */
    private Plan.SaltPlan wet(SaltAdvice.Decision decision) {
        if (taste.low() <= request.food().meat().nativeSalt()) {
            return enough();
        }
        Liquid liquid = setting.liquid(decision);
        BathMixer mixer = setting.mixer(decision, liquid);
        boolean timeIsGiven = request.salting().time().isPresent();
        boolean strengthIsGiven = request.salting().strength().isPresent();
        double strength = request.salting().strength().orElse(USUAL_STRENGTH);
        if (timeIsGiven && !strengthIsGiven) {
            strength = search.strengthFor(request.salting().time().getAsDouble(), mixer);
            reasons.add(new Plan.Reason(PHRASES.say("weak-enough-that-the-time"), SaltAdvice.MODEL));
        }
        Bath bath = setting.dissolved(mixer.strong(strength));
        SoakSearch.Found found = search.strong(bath);
        if (timeIsGiven && !strengthIsGiven) {
            bath = setting.dissolved(mixer.strong(
                    strength * correction(found, request.salting().time().getAsDouble())));
            found = search.strong(bath);
        }
        if (!found.window().isSure()) {
            Optional<Bath> weak = mixer.matched(setting.balance(), taste.typical());
            boolean open = request.salting().treatment() == Request.Treatment.AUTO
                    && !strengthIsGiven
                    && !timeIsGiven
                    && !Double.isInfinite(available);
            Optional<SoakSearch.Found> slow =
                    weak.map(open ? search::matched : search::matchedRoughly).filter(SoakSearch.Found::isDoneInTime);
            boolean fits = slow.map(f -> f.window().best() <= available).orElse(false);
            tellUnsure(strength, found.window(), slow.map(SoakSearch.Found::window), open && fits);
            if (open && fits) {
                return soaked(
                        Request.Treatment.EQUILIBRIUM,
                        setting.dissolved(weak.orElseThrow()),
                        slow.orElseThrow(),
                        Double.POSITIVE_INFINITY,
                        true);
            }
        }
        return soaked(Request.Treatment.WET_BRINE, bath, found, Double.POSITIVE_INFINITY, false);
    }

    /** Factor on the strength that brings the median of the whole ensemble to the target, as uptake goes with strength. */
    private double correction(SoakSearch.Found found, double time) {
        double start = request.food().meat().nativeSalt();
        double gained = found.after(Math.min(time, SoakSearch.LONGEST)).median() - start;
        return gained > 0 ? (taste.typical() - start) / gained : 1;
    }

    private void tellUnsure(double strength, Plan.Window strong, Optional<Plan.Window> weak, boolean isChosen) {
        StringBuilder words = new StringBuilder(PHRASES.say(
                "how-fast-salt-moves-in",
                QuantityFormat.percent(strength),
                time(strong.best()),
                100 * strong.tooSaltyAtBest()));
        if (weak.isPresent()) {
            String wait = time(weak.get().best());
            words.append(
                    isChosen ? PHRASES.say("there-is-time-for-a", wait) : PHRASES.say("a-weak-brine-matched-to", wait));
        } else {
            words.append(PHRASES.say("it-is-too-thick-for"));
        }
        reasons.add(new Plan.Reason(words.toString(), SaltAdvice.MODEL));
    }

    private static String time(double seconds) {
        return QuantityFormat.time(60 * Math.rint(seconds / 60));
    }

    /** A bath matched to the target, or of the strength the cook gave. */
    private Plan.SaltPlan matched(SaltAdvice.Decision decision) {
        Liquid liquid = setting.liquid(decision);
        BathMixer mixer = setting.mixer(decision, liquid);
        boolean isMatched = request.salting().strength().isEmpty();
        Bath bath = isMatched
                ? mixer.matched(setting.balance(), taste.typical())
                        .orElseThrow(() -> new PlanningException("taste.salt", PHRASES.say("the-meat-holds-more-salt")))
                : mixer.strong(request.salting().strength().getAsDouble());
        SoakSearch.Found found =
                isMatched ? search.matched(setting.dissolved(bath)) : search.strong(setting.dissolved(bath));
        double most = Double.POSITIVE_INFINITY;
        if (decision.treatment() != Request.Treatment.EQUILIBRIUM) {
            most = decision.usualTime().map(Band::high).orElse(USUAL_MARINATING.high());
        }
        if (isMatched) {
            reasons.add(new Plan.Reason(PHRASES.say("salt-is-weighed-for-meat"), SaltAdvice.MODEL));
        }
        if (bath.portions().size() > 1) {
            reasons.add(new Plan.Reason(PHRASES.say("alone-is-saltier-than-the", liquid.name()), SaltAdvice.MODEL));
        }
        return soaked(decision.treatment(), bath, found, most, isMatched);
    }

    private Plan.SaltPlan soaked(
            Request.Treatment treatment, Bath bath, SoakSearch.Found found, double longest, boolean isMatched) {
        double bite = setting.longestBite(bath);
        Plan.Window window = found.window().endingBy(bite);
        double time =
                request.salting().time().orElse(Math.min(Math.min(window.best(), longest), Math.min(available, bite)));
        if (time > bite) {
            reasons.add(new Plan.Reason(
                    PHRASES.say("you-gave-more-than-in", time(time), time(bite)),
                    List.of("fsishotline", "common-practice")));
        }
        requireFits(time);
        if (request.salting().time().isEmpty()) {
            boolean roomy = isMatched && time >= window.best();
            double most = Math.min(Math.min(window.latest(), longest), Math.min(available, bite));
            time = nights.awake(time, roomy ? window.best() : time, roomy ? most : time, reasons);
        }
        Interval after = found.after(Math.min(time, SoakSearch.LONGEST));
        double finish = 0;
        if (after.median() < taste.low()) {
            finish = DrySalting.toTarget(SaltStages.edible(request), 0, after.median(), taste.typical())
                    .salt();
            reasons.add(new Plan.Reason(
                    PHRASES.say(
                            "after-it-holds-salt-and",
                            time(time),
                            QuantityFormat.percent(after.median()),
                            finish * 1000),
                    SaltAdvice.MODEL));
        }
        Plan.Soaking soaking = setting.soaking(treatment, bath, time, isMatched);
        return new Plan.SaltPlan(
                treatment,
                reasons,
                taste.typical(),
                bath.addedSalt(),
                Optional.of(soaking),
                time,
                Optional.of(window),
                after,
                Optional.of(evenTime()),
                finish,
                setting.cautions(bath, soaking.acid()));
    }

    private void requireFits(double time) {
        if (time > available) {
            long minutes = (long) Math.ceil((time - available) / 60);
            throw new PlanningException(
                    "serve",
                    PHRASES.say(
                            "salting-for-min-does-not",
                            Math.round(time / 60),
                            request.timing()
                                    .serve()
                                    .orElseThrow()
                                    .plusMinutes(minutes)
                                    .toLocalDateTime(),
                            Math.round(Math.max(0, available) / 60)));
        }
    }

    private SaltDiffusivity diffusivity() {
        return request.food().meat().diffusivity();
    }

    /** Until the middle of a slab of this thickness is within what can be tasted of the mean, for the band of salt speed. */
    private Band evenTime() {
        double share = 1 - SEASONING.differenceThreshold().typical();
        double path = request.food().shape().halfThickness();
        double energy = diffusivity().activationEnergy().typical();
        double[] times = new double[3];
        for (int i = 0; i < times.length; i++) {
            double speed = diffusivity().at(request.salting().refrigerator(), NINETY_PERCENT * (1 - i), energy);
            times[i] = Evenness.timeTo(share, path, speed);
        }
        return new Band(times[0], times[1], times[2]);
    }
}
