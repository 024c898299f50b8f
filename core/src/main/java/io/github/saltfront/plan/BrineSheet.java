package io.github.saltfront.plan;

import io.github.saltfront.catalog.CutComposition;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Seasoning;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bath worked out: what to weigh, how strong it is, where it ends and how long it takes.
 *
 * @param order what was asked
 * @param bath the bath as mixed
 * @param equilibrium meat and bath when nothing moves any more
 * @param shortcutDose salt the common shortcut would have put in [kg]
 * @param netGain gain of mass of lean meat at this strength, with its band [kg/kg]
 * @param window mean salt against time
 * @param hydrometer what a hydrometer shows in the bath
 * @param floats whether the meat floats in it
 * @param acid what the acid of the liquid does
 * @param occasions words by which cautions are chosen
 */
public record BrineSheet(
        BrineOrder order,
        Bath bath,
        MeatInBath.Equilibrium equilibrium,
        double shortcutDose,
        Band netGain,
        SoakWindow window,
        Hydrometer hydrometer,
        boolean floats,
        AcidAdvice acid,
        List<String> occasions) {
    private static final Phrases PHRASES = Phrases.of(BrineSheet.class);

    /** Highest temperature at which raw meat may be kept, 41 F [K] (wac2022, 246-215-03525). */
    private static final double COLD_HOLDING = Temperature.fromFahrenheit(41);

    /** Longest soak looked at [s]: two days, the most that official guidance allows in the refrigerator (fsishotline). */
    public static final double LONGEST = 2 * 86400;

    /** Cooked mass over raw mass assumed for sodium [-], as in seasoning.csv. */
    public static final double YIELD = 0.75;

    /** Cooked meat that labels count as a serving [kg]; 21 CFR 101.12, from memory. */
    public static final double SERVING = 0.085;

    private static final double TAP = Temperature.fromCelsius(20);
    private static final double ICE_POINT = Temperature.fromCelsius(0);
    private static final Seasoning SEASONING = Seasoning.load();

    /** Copies the list. */
    public BrineSheet {
        occasions = List.copyOf(occasions);
    }

    /**
     * Returns why the order is refused, if it is: salted meat and a strong brine, or more salt in meat and liquid than wanted.
     *
     * @param order what was asked
     * @return the reason in plain words
     */
    public static Optional<String> refusal(BrineOrder order) {
        boolean strong = order.goal() instanceof BrineOrder.Strength;
        SaltedAlready label = order.food().label();
        if (strong && label.verdict() == SaltedAlready.Verdict.REFUSE) {
            return label.reason();
        }
        if (!strong && addedForEquilibrium(order) < 0) {
            return Optional.of(PHRASES.say("meat-and-liquid-hold-more"));
        }
        return Optional.empty();
    }

    /**
     * Works the bath out.
     *
     * @param order what was asked
     * @return the sheet
     * @throws IllegalArgumentException if the order is refused ({@link #refusal}), salt would stay undissolved or the sugar is
     *     more than the salt
     */
    public static BrineSheet of(BrineOrder order) {
        refusal(order).ifPresent(reason -> {
            throw new IllegalArgumentException(reason);
        });
        Bath bath = mixed(order).requireDissolved(order.temperature());
        CutComposition meat = order.food().asBought();
        MeatInBath balance = balance(order);
        NetMassGain gain = NetMassGain.load();
        Soak soak = new Soak(
                order.food().shape(),
                meat,
                Soak.Exchange.of(
                        bath,
                        order.food().edibleMass(),
                        gain.swelling(meat.water(), meat.nativeSalt(), MeatInBath.PARTITION_TYPICAL, 0)),
                order.temperature(),
                MeatInBath.PARTITION_TYPICAL,
                order.food().hasSkin() ? Soak.SKIN_RESISTANCE : 0);
        SaltStrength strength = bath.strength();
        boolean floats = Floating.floats(meat.density(), strength, order.temperature());
        AcidAdvice acid = order.mix()
                .liquid()
                .acid()
                .acidity()
                .filter(a -> order.mix().liquid().acid().fraction().typical() > 0)
                .map(a -> AcidAdvice.of(a.typical()))
                .orElse(AcidAdvice.NONE);
        return new BrineSheet(
                order,
                bath,
                balance.equilibrium(bath.water(), bath.salt()),
                balance.shortcutDose(bath.water(), order.levels().typical()),
                gain.at(strength.saltFraction()),
                SoakWindow.of(soak, order.food().diffusivity(), order.levels(), LONGEST),
                Hydrometer.in(bath, order.temperature()),
                floats,
                acid,
                occasions(order, floats, acid));
    }

    private static MeatInBath balance(BrineOrder order) {
        CutComposition meat = order.food().asBought();
        return MeatInBath.ofBought(
                order.food().edibleMass(), meat.water(), meat.nativeSalt(), MeatInBath.PARTITION_TYPICAL);
    }

    private static double addedForEquilibrium(BrineOrder order) {
        Bath plain = Bath.of(order.mix().liquid(), order.mix().liquidMass(), 0, 0);
        return balance(order).doseFor(plain.water(), order.levels().typical()) - plain.liquidSalt();
    }

    private static Bath mixed(BrineOrder order) {
        BrineOrder.Mix mix = order.mix();
        Bath bath = order.goal() instanceof BrineOrder.Strength strong
                ? Bath.of(mix.liquid(), mix.liquidMass(), 0, 0).withStrength(strong.strength())
                : Bath.of(mix.liquid(), mix.liquidMass(), addedForEquilibrium(order), 0);
        return bath.withSugar(mix.sugar());
    }

    private static List<String> occasions(BrineOrder order, boolean floats, AcidAdvice acid) {
        List<String> occasions = new ArrayList<>(List.of("soak", "spices"));
        if (order.temperature() > COLD_HOLDING) {
            occasions.add("warm-soak");
        }
        if (order.mix().liquid().parts().water() == 1) {
            occasions.add("ice");
        }
        if (floats) {
            occasions.add("float");
        }
        if (acid != AcidAdvice.NONE) {
            occasions.add("acid");
        }
        if (order.mix().sugar() > 0) {
            occasions.add("hydrometer");
        }
        if (order.mix().liquid().allergens().contains(Liquid.Allergen.MILK)) {
            occasions.add("dairy");
        }
        if (EnzymeSource.findIn(order.mix().liquid().id()).isPresent()) {
            occasions.add("enzyme");
        }
        return occasions;
    }

    /** Returns what the bath is in the words of the goal: whether it may be left without passing the target. */
    public boolean isEquilibrium() {
        return order.goal() instanceof BrineOrder.Equilibrium;
    }

    /**
     * Returns the part of the water to add as ice so that a bath mixed with tap water of 20 degrees Celsius ends at the
     * temperature of the soak [kg]; empty for other liquids and where nothing is to be chilled.
     */
    public OptionalDouble iceFromTap() {
        boolean isWater = order.mix().liquid().parts().water() == 1;
        if (!isWater || order.temperature() >= TAP || order.temperature() < ICE_POINT) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                IceBalance.iceOfHotAndIce(bath.water(), bath.salt(), TAP, IceBalance.FREEZER, order.temperature()));
    }

    /** Returns the cautions for this bath, gravest first. */
    public List<HandlingCaution> cautions() {
        return HandlingCaution.forOccasions(occasions);
    }

    /**
     * Returns the sodium of a serving, roasted or grilled, if the raw meat holds the wanted salt [kg].
     *
     * @return sodium, not rounded
     */
    public double servingSodium() {
        return Sodium.ofServing(
                order.levels().typical(), YIELD, SEASONING.saltKept(false).typical(), SERVING);
    }

    /** Returns the salt of the pan juices if the raw meat holds the wanted salt [kg/kg]. */
    public double panJuiceSalt() {
        return Sodium.ofPanJuices(
                order.levels().typical(), YIELD, SEASONING.saltKept(false).typical());
    }
}
