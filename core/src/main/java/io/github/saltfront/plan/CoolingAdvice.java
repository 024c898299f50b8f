package io.github.saltfront.plan;

import io.github.saltfront.safety.ColdStorage;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Will it cool in time, and what is the smallest change that makes it? Changes are tried from the least work to the most, each at its
 * cautious end: stirring, a colder refrigerator, an ice bath, thinner portions, thinner portions in an ice bath.
 *
 * @param asked forecast of what was asked, at its cautious end; it decides
 * @param typical the same in the middle of the bands, for information
 * @param changes changes from the least to the most work, with their forecasts
 * @param ice ice that melts at least if it is cooled to 41 F in an ice bath [kg]
 * @param storage how long it keeps afterwards
 * @param reheating official minimum when it is heated again
 */
public record CoolingAdvice(
        CoolingForecast asked,
        CoolingForecast typical,
        List<Change> changes,
        double ice,
        ColdStorage storage,
        ConsumerMinimum reheating) {
    private static final Phrases PHRASES = Phrases.of(CoolingAdvice.class);

    private static final double THINNEST = 0.004;
    private static final double STEP = 0.001;
    private static final double COLDEST_REFRIGERATOR = Temperature.fromCelsius(1);
    private static final double COLD = Temperature.fromFahrenheit(41);

    /** Copies the list. */
    public CoolingAdvice {
        changes = List.copyOf(changes);
    }

    /**
     * A change and what it does.
     *
     * @param words the change
     * @param thickness thickness of the portions [m], if it is one of portions
     * @param forecast forecast at its cautious end
     */
    public record Change(String words, OptionalDouble thickness, CoolingForecast forecast) {}

    /**
     * Works out the advice.
     *
     * @param food what is cooled
     * @param medium what it is cooled in
     * @return the advice
     */
    public static CoolingAdvice of(HotFood food, CoolingMedium medium) {
        CoolingForecast asked = CoolingForecast.cautious(food, medium);
        List<Change> changes = asked.keepsLimits() ? List.of() : changes(food, medium);
        return new CoolingAdvice(
                asked,
                CoolingForecast.typical(food, medium),
                changes,
                food.heatAbove(COLD) / IceBalance.HEAT_OF_FUSION,
                ColdStorage.get(food.kind() == HotFood.Kind.SOLID ? "cooked-meat" : "soup"),
                ConsumerMinimum.get("leftovers"));
    }

    /** Returns the first change that keeps both limits. */
    public Optional<Change> smallestChange() {
        return changes.stream()
                .filter(change -> change.forecast().keepsLimits())
                .findFirst();
    }

    private static List<Change> changes(HotFood food, CoolingMedium medium) {
        CoolingMedium ice = CoolingMedium.get(CoolingMedium.ICE_BATH);
        boolean inIce = medium.id().equals(ice.id());
        List<Change> changes = new ArrayList<>();
        if (food.kind() == HotFood.Kind.STILL) {
            changes.add(change(PHRASES.say("stir-it-all-the-while"), food.stirred(), medium));
        }
        if (!inIce && medium.temperature() > COLDEST_REFRIGERATOR) {
            changes.add(change(
                    PHRASES.say("medium-at", medium.name(), celsius(COLDEST_REFRIGERATOR)),
                    food,
                    medium.at(COLDEST_REFRIGERATOR)));
        }
        if (!inIce) {
            changes.add(change(PHRASES.say("ice-bath"), food, ice));
            if (food.kind() == HotFood.Kind.STILL) {
                changes.add(change(PHRASES.say("ice-bath-stirring-the-food"), food.stirred(), ice));
            }
        }
        portions(food, medium).ifPresent(changes::add);
        if (!inIce) {
            portions(food, ice).ifPresent(changes::add);
        }
        return changes;
    }

    private static Change change(String words, HotFood food, CoolingMedium medium) {
        return new Change(words, OptionalDouble.empty(), CoolingForecast.cautious(food, medium));
    }

    /** The thickest layer, in whole millimeters, that keeps both limits at the cautious end. */
    private static Optional<Change> portions(HotFood food, CoolingMedium medium) {
        int low = (int) Math.round(THINNEST / STEP);
        int high = (int) Math.ceil(food.thickness() / STEP) + 1;
        if (high <= low + 1
                || !CoolingForecast.cautious(food.layer(THINNEST), medium).keepsLimits()) {
            return Optional.empty();
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (CoolingForecast.cautious(food.layer(middle * STEP), medium).keepsLimits()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double thickness = low * STEP;
        String form = food.kind() == HotFood.Kind.SOLID
                ? PHRASES.say("slices")
                : medium.coolsTop() ? PHRASES.say("layers-in-shallow-pans") : PHRASES.say("flat-bags");
        String words = PHRASES.say("of-at-most-mm-apart", form, low, medium.name(), celsius(medium.temperature()));
        return Optional.of(new Change(
                words, OptionalDouble.of(thickness), CoolingForecast.cautious(food.layer(thickness), medium)));
    }

    private static String celsius(double kelvin) {
        return Phrases.figures("%.0f °C", Temperature.toCelsius(kelvin));
    }
}
