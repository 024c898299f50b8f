package io.github.saltfront.plan;

import io.github.saltfront.quality.Band;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.PredictedVerdict;
import io.github.saltfront.units.Checks;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plan for one request. Predictions are 90 % intervals of the ensemble; temperatures in K, times in s, masses in kg, salt per
 * wet mass in kg/kg.
 *
 * @param request the request it answers; of frozen meat, as it stands when it is thawed
 * @param thawing how it is thawed before, if it is frozen
 * @param salting what to do with salt
 * @param cooking how to cook and when to stop
 * @param result what to expect on the plate
 * @param clock steps in time
 * @param cautions cautions that apply
 * @param sensitivities what matters most to the results, most first
 * @param members size of the ensemble
 * @param seed its seed
 */
public record Plan(
        Request request,
        Optional<Thawing> thawing,
        SaltPlan salting,
        CookPlan cooking,
        Result result,
        List<Step> clock,
        List<Caution> cautions,
        List<Sensitivity> sensitivities,
        int members,
        long seed) {
    /** Copies the lists. */
    public Plan {
        clock = List.copyOf(clock);
        cautions = List.copyOf(cautions);
        sensitivities = List.copyOf(sensitivities);
    }

    /** Returns whether a hold in a bath, and neither a reading nor a given time, ends the heat. */
    public boolean endsByHold() {
        return cooking.verdict().rule().allowsHold()
                && CookStages.isBath(request.cook().appliance());
    }

    /** The same plan, whose treatment was chosen for another reason than a wish for it. */
    Plan saltedBecause(Reason reason) {
        List<Reason> reasons = new ArrayList<>(salting.reasons());
        reasons.removeIf(old -> old.equals(SaltAdvice.askedFor()));
        reasons.add(0, reason);
        return new Plan(
                request,
                thawing,
                salting.because(reasons),
                cooking,
                result,
                clock,
                cautions,
                sensitivities,
                members,
                seed);
    }

    Plan thawedFirst(Thawing first, List<Step> longer) {
        return new Plan(
                request, Optional.of(first), salting, cooking, result, longer, cautions, sensitivities, members, seed);
    }

    /**
     * What to do with salt.
     *
     * @param treatment chosen treatment, never {@code AUTO}
     * @param reasons why
     * @param target mean salt of the raw meat that is aimed at [kg/kg]
     * @param salt salt to weigh for all pieces [kg]; what a liquid brings is not in it
     * @param soaking the bath, for a soak
     * @param time planned time of salting [s]
     * @param window when it is seasoned enough and when it turns too salty, for a soak
     * @param after mean salt of the raw meat when salting is over [kg/kg]
     * @param even time for salt to even out: the middle within what can be tasted of the mean, for fast, usual and slow meat
     *     [s]; empty where nothing was salted ahead
     * @param finish salt to put on the surface afterwards because the soak is too short [kg]; mostly zero
     * @param cautions what to take care of when salting, gravest first
     */
    public record SaltPlan(
            Request.Treatment treatment,
            List<Reason> reasons,
            double target,
            double salt,
            Optional<Soaking> soaking,
            double time,
            Optional<Window> window,
            Interval after,
            Optional<Band> even,
            double finish,
            List<HandlingCaution> cautions) {
        /** Copies the lists. */
        public SaltPlan {
            reasons = List.copyOf(reasons);
            cautions = List.copyOf(cautions);
        }

        SaltPlan because(List<Reason> others) {
            return new SaltPlan(treatment, others, target, salt, soaking, time, window, after, even, finish, cautions);
        }

        /** Returns the water of the bath for all pieces [kg]; zero without a bath. */
        public double water() {
            return soaking.map(s -> s.bath().water()).orElse(0.0);
        }

        /** Returns the strength of the bath as salt per mass of water, all salt counted [kg/kg]; zero without a bath. */
        public double saltPerWater() {
            return soaking.map(s -> s.bath().saltPerWater()).orElse(0.0);
        }
    }

    /**
     * A reason and where it comes from.
     *
     * @param words one or two sentences
     * @param sources keys of the bibliography; {@code common-practice} where there is no source, {@code model} for what was
     *     computed here, {@code request} for a wish
     */
    public record Reason(String words, List<String> sources) {
        /** Copies the list; at least one source is required. */
        public Reason {
            sources = List.copyOf(sources);
            Checks.require(!sources.isEmpty(), "a reason needs a source, got none for \"" + words + "\".");
        }
    }

    /**
     * The bath of a soak.
     *
     * @param bath the bath as mixed
     * @param vessel what it is in and why so much, in words
     * @param end salt of the meat if it is left for good, by the balance without swelling [kg/kg]
     * @param isMatched whether it is so weak that the meat ends at the target
     * @param acid what its acid does, if it holds any that counts
     * @param limit what sets the latest time, in words
     */
    public record Soaking(Bath bath, String vessel, double end, boolean isMatched, Optional<Acid> acid, String limit) {}

    /**
     * What the acid of a bath does.
     *
     * @param advice what to expect of it
     * @param depth how deep it goes in the planned time [m], good to a factor of two
     */
    public record Acid(AcidAdvice advice, Band depth) {}

    /**
     * Window of a soak.
     *
     * @param earliest time at which half of the ensemble has reached the low end of the taste band [s]
     * @param best time at which half of the ensemble has reached the target [s]
     * @param latest time at which a fifth of the ensemble has passed the high end of the taste band [s]; the longest a bath
     *     may stand if that never comes
     * @param tooSaltyAtBest share of the ensemble beyond the high end at the best time [-]
     * @param isSure whether one time suits slow and fast meat: 95 % seasoned before 5 % are too salty
     */
    public record Window(double earliest, double best, double latest, double tooSaltyAtBest, boolean isSure) {
        Window endingBy(double time) {
            return new Window(earliest, best, Math.min(latest, time), tooSaltyAtBest, isSure);
        }
    }

    /**
     * How to cook and when to stop.
     *
     * @param pullTemperature reading at which to take it out [K]
     * @param wished core temperature that was wished for or is usual [K]
     * @param byWish reading that the wish alone would ask for [K]; below the other where safety sets it
     * @param loads loads that go into the heat one after the other
     * @param reasons why this temperature
     * @param timeToPull time in the appliance [s]
     * @param peak highest core temperature after it is out [K]
     * @param timeToPeak time from taking it out to the peak [s]
     * @param timeNearTarget time the core stays within 1 K of the target or above after it is out [s]
     * @param rest rest [s]
     * @param served temperature of the middle at the end of the rest [K]
     * @param holdShare share of the required hold at the worst place, with the allowance for salt if it is salted [-]
     * @param holdAtTarget required hold at the peak's median [s], if the table has one
     * @param warmth times in which bacteria grow, against the official limits
     * @param verdict verdict on the lower end
     * @param check what the numbers above were corrected by; empty for slabs and where faces differ
     */
    public record CookPlan(
            double pullTemperature,
            double wished,
            double byWish,
            Loads loads,
            List<String> reasons,
            Interval timeToPull,
            Interval peak,
            Interval timeToPeak,
            Interval timeNearTarget,
            double rest,
            Interval served,
            Interval holdShare,
            Optional<Double> holdAtTarget,
            WarmTimes warmth,
            PredictedVerdict verdict,
            Optional<SolidCheck> check) {
        /** Copies the list. */
        public CookPlan {
            reasons = List.copyOf(reasons);
        }

        /** Returns whether safety, not the wish, sets the reading. */
        public boolean isRaised() {
            return pullTemperature > byWish + 0.25;
        }
    }

    /**
     * What to expect on the plate.
     *
     * @param rawMeanSalt mean salt after salting, before the heat [kg/kg]
     * @param meanSalt mean salt when served [kg/kg]
     * @param outerSalt salt of the outer 5 mm when served [kg/kg]
     * @param coreSalt salt in the middle when served [kg/kg]
     * @param massGain gain of mass by salting per raw mass [kg/kg]
     * @param massLoss loss of mass from raw to served per raw mass [kg/kg]
     * @param evaporated evaporated water per raw mass [kg/kg]
     * @param servingSodium sodium of a cooked serving of {@link BrineSheet#SERVING} [kg]
     * @param juiceSalt salt of the juice that drips, as it runs [kg/kg]; empty if next to none does
     * @param quality crust, skin and tenderness
     */
    public record Result(
            Interval rawMeanSalt,
            Interval meanSalt,
            Interval outerSalt,
            Interval coreSalt,
            Interval massGain,
            Interval massLoss,
            Interval evaporated,
            Interval servingSodium,
            Optional<Interval> juiceSalt,
            PlateQuality quality) {}

    /** What a step of the clock is about. */
    public enum StepKind {
        /** Frozen meat goes into the refrigerator. */
        THAW,
        /** Salting starts: into the bath, or salt on the meat. */
        SALT,
        /** Salting ends: out of the bath, pat dry. */
        PAT_DRY,
        /** Salt on the outside just before the heat. */
        SALT_OUTSIDE,
        /** The appliance is heated. */
        PREHEAT,
        /** The meat goes into the heat. */
        COOK,
        /** The meat goes on to the next appliance of a sequence. */
        NEXT,
        /** From now on it may be done. */
        WATCH,
        /** By now it should be out. */
        REST,
        /** It is served. */
        SERVE
    }

    /**
     * A step of the clock.
     *
     * @param time when
     * @param kind what it is about
     * @param words what to do
     * @param active whether the cook is busy with it
     */
    public record Step(ZonedDateTime time, StepKind kind, String words, boolean active) {}
}
