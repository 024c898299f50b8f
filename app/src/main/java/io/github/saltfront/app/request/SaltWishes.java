package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Node;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Request.Treatment;
import io.github.saltfront.plan.SaltedAlready;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.plan.Vessel;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityException;
import io.github.saltfront.units.QuantityParser;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads what a request says of the meat's label, the liquid and vessel of a soak, and a limit on sodium. */
final class SaltWishes {
    private static final Phrases PHRASES = Phrases.of(SaltWishes.class);

    private static final Set<String> VESSELS = Set.of("bag", "tub", "bird-in-pot");
    private static final String NARROWEST = "5 cm";
    private static final String WIDEST = "2 m";
    private static final double HUNDRED_GRAMS = 0.1;
    private static final double LEAST_LIQUID = 0.2;
    private static final double MOST_LIQUID = 20;
    private static final double LOWEST_LIMIT = 20e-6;
    private static final double HIGHEST_LIMIT = 2e-3;

    private final Catalog catalog;
    private final Assume assume;

    SaltWishes(Catalog catalog, Assume assume) {
        this.catalog = catalog;
        this.assume = assume;
    }

    /** Notes what is assumed. */
    @FunctionalInterface
    interface Assume {
        void note(String field, String value, String reason);
    }

    /** Reads {@code label: {solution: 12 %, sodium: 173 mg, kosher: yes}}; sodium is that of 100 g. */
    static SaltedAlready readLabel(Node root, Optional<Cut> cut, double nativeSalt) {
        SaltedAlready.Label label = root.findChild("label")
                .map(node -> new SaltedAlready.Label(
                        finite(node.findQuantityInRange("solution", Dimension.FRACTION, "0 %", "50 %"), 1),
                        finite(node.findQuantityInRange("sodium", Dimension.MASS, "5 mg", "3 g"), 1 / HUNDRED_GRAMS),
                        node.findFlag("kosher").orElse(false)))
                .orElse(SaltedAlready.Label.NONE);
        return SaltedAlready.of(cut, nativeSalt, label);
    }

    private static OptionalDouble finite(OptionalDouble value, double factor) {
        return value.isPresent() && Double.isFinite(value.getAsDouble())
                ? OptionalDouble.of(factor * value.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Reads {@code sodium: low} or the most a cooked serving may hold, such as {@code sodium: 300 mg}. */
    static OptionalDouble readSodium(Node taste) {
        Optional<Double> limit = taste.findParsed("sodium", PHRASES.say("low-or-a-limit-for"), text -> {
            if (text.strip().equalsIgnoreCase("low")) {
                return Sodium.LOW;
            }
            double read = QuantityParser.parse(text, Dimension.MASS);
            if (!(read >= LOWEST_LIMIT && read <= HIGHEST_LIMIT)) {
                throw new IllegalArgumentException(PHRASES.say("got-expected-low-or-from", text));
            }
            return read;
        });
        return limit.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    Request.Liquor readLiquor(Node root, Optional<Node> salting, Treatment treatment) {
        Optional<Liquid> liquid = readLiquid(root);
        if (liquid.isEmpty()) {
            assume.note(
                    "liquid",
                    switch (treatment) {
                        case DAIRY -> "buttermilk";
                        case MARINADE -> PHRASES.say("soy-sauce-thinned-with-water");
                        default -> PHRASES.say("water-where-the-meat-is");
                    },
                    PHRASES.say("not-said"));
        }
        Optional<Vessel> vessel = readVessel(root);
        Optional<Double> ratio = root.findParsed(
                "liquid_per_meat",
                PHRASES.say("1-kg-per-kg-meat"),
                text -> Words.perMeat(text, LEAST_LIQUID, MOST_LIQUID));
        if (vessel.isEmpty() && ratio.isEmpty()) {
            assume.note("vessel", PHRASES.say("a-tub-a-bag-for"), PHRASES.say("not-said-common-practice"));
        }
        double sugar = salting.map(node -> node.findQuantityInRange("sugar", Dimension.FRACTION, "0 %", "100 %"))
                .map(s -> finite(s, 1).orElse(0))
                .orElse(0.0);
        return new Request.Liquor(liquid, vessel, ratio.map(OptionalDouble::of).orElse(OptionalDouble.empty()), sugar);
    }

    private Optional<Liquid> readLiquid(Node root) {
        Optional<String> text = root.findText("liquid");
        Optional<Liquid> liquid = text.flatMap(catalog.liquids()::find);
        if (text.isPresent() && liquid.isEmpty()) {
            root.problem("liquid", unknownLiquid(text.get(), catalog));
        }
        return liquid;
    }

    static String unknownLiquid(String text, Catalog catalog) {
        List<String> near =
                catalog.liquids().nearest(text, 3).stream().map(Liquid::id).toList();
        return Words.unknown(
                text, PHRASES.say("a-liquid-of-the-catalog"), near, PHRASES.say("the-command-catalog-liquids-lists"));
    }

    private static Optional<Vessel> readVessel(Node root) {
        if (root.isGroup("vessel")) {
            Node node = root.child("vessel");
            double width = node.quantityInRange("width", Dimension.LENGTH, NARROWEST, WIDEST);
            OptionalDouble length = finite(node.findQuantityInRange("length", Dimension.LENGTH, "5 cm", "3 m"), 1);
            if (!Double.isFinite(width)) {
                return Optional.empty();
            }
            return Optional.of(
                    length.isPresent() ? new Vessel.Tub(length.getAsDouble(), width) : new Vessel.Pot(width));
        }
        return root.findParsed("vessel", PHRASES.say("bag-tub-bird-in-pot"), text -> {
            if (VESSELS.contains(text.strip())) {
                return new Vessel.Unmeasured(text.strip());
            }
            return new Vessel.Pot(potWidth(text));
        });
    }

    private static double potWidth(String text) {
        double width;
        try {
            width = QuantityParser.parse(text, Dimension.LENGTH);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(PHRASES.say("got-expected-bag-tub-bird", text), e);
        }
        if (!(QuantityParser.parse(NARROWEST, Dimension.LENGTH) <= width
                && width <= QuantityParser.parse(WIDEST, Dimension.LENGTH))) {
            throw new IllegalArgumentException(PHRASES.say("got-expected-a-width-from", text, NARROWEST, WIDEST));
        }
        return width;
    }
}
