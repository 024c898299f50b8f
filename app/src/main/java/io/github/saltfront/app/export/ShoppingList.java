package io.github.saltfront.app.export;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Measure;
import io.github.saltfront.plan.Bath;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SpoonedSalt;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;

/** What a plan needs, by weight in metric and US units, salt by the spoon too. */
public final class ShoppingList {
    private static final Phrases PHRASES = Phrases.of(ShoppingList.class);

    private ShoppingList() {}

    /**
     * One thing to have.
     *
     * @param name what it is
     * @param mass how much [kg]
     * @param words how much, for people
     */
    public record Item(String name, double mass, String words) {
        /** Returns the item as one line. */
        public String line() {
            return words + " " + name;
        }
    }

    /**
     * Returns the list.
     *
     * @param plan the plan
     * @return meat first, then what goes on or around it
     */
    public static List<Item> of(Plan plan) {
        Request request = plan.request();
        List<Item> items = new ArrayList<>();
        String name = lower(request.food().meat().name());
        int pieces = request.food().pieces();
        items.add(new Item(
                name
                        + (pieces > 1
                                ? PHRASES.say(
                                        "pieces-of",
                                        pieces,
                                        grams(request.food().pieceMass()))
                                : ""),
                request.food().mass(),
                both(request.food().mass())));
        plan.salting().soaking().ifPresent(soaking -> liquids(items, soaking.bath()));
        double salt = plan.salting().salt() + plan.salting().finish();
        if (salt > 0) {
            String spoons = SpoonWords.of(
                    SpoonedSalt.of(salt, request.salting().salt(), Measure.UnitSystem.US, Catalog.load()));
            items.add(new Item(
                    lower(request.salting().salt().name()), salt, PHRASES.say("by-the-spoon", both(salt), spoons)));
        }
        return List.copyOf(items);
    }

    private static void liquids(List<Item> items, Bath bath) {
        for (Bath.Portion portion : bath.portions()) {
            items.add(new Item(lower(portion.liquid().name()), portion.mass(), both(portion.mass())));
        }
        if (bath.addedSugar() > 0) {
            items.add(new Item(PHRASES.say("sugar"), bath.addedSugar(), both(bath.addedSugar())));
        }
    }

    /** A mass in both systems, such as {@code 880 g (1 lb 15 oz)}. */
    static String both(double kilograms) {
        return grams(kilograms) + " (" + QuantityFormat.mass(kilograms, KitchenUnits.US) + ")";
    }

    private static String grams(double kilograms) {
        return TextLayout.grams(kilograms);
    }

    private static String lower(String name) {
        return Phrases.within(name.substring(0, 1)) + name.substring(1);
    }
}
