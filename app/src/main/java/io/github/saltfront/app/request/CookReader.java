package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Node;
import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.CookSequence;
import io.github.saltfront.plan.CookingMedium;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads how a piece is cooked: the appliance with what an expert knows of it, what comes before and after, how pieces lie. */
final class CookReader {
    private static final Phrases PHRASES = Phrases.of(CookReader.class);

    private final Catalog catalog;

    CookReader(Catalog catalog) {
        this.catalog = catalog;
    }

    /** The appliance named, with measured figures in place of the table's; empty if it is not known or not named. */
    Optional<Appliance> appliance(Node node) {
        Optional<String> id = node.findText("appliance");
        Optional<Appliance> found = id.flatMap(catalog.appliances()::find);
        if (id.isPresent() && found.isEmpty()) {
            List<String> near = catalog.appliances().nearest(id.get(), 3).stream()
                    .map(Appliance::id)
                    .toList();
            node.problem(
                    "appliance", Words.unknown(id.get(), Words.anAppliance(), near, SimulationFile.listAppliances()));
        }
        return found;
    }

    /** An appliance with what the group {@code expert} beside it says. */
    static Appliance tuned(Node node, Appliance appliance) {
        Optional<Node> expert = node.findChild("expert");
        if (expert.isEmpty()) {
            return appliance;
        }
        Node e = expert.get();
        OptionalDouble coefficient = e.findQuantityInRange(
                "coefficient", Dimension.HEAT_TRANSFER_COEFFICIENT, "1 W/(m2.K)", "20000 W/(m2.K)");
        OptionalDouble emissivity = e.findNumber("emissivity", 0, 1);
        OptionalDouble humidity = e.findQuantityInRange("humidity", Dimension.FRACTION, "0 %", "100 %");
        if (isUnusable(coefficient) || isUnusable(emissivity) || isUnusable(humidity)) {
            return appliance;
        }
        try {
            return appliance.with(coefficient, emissivity, humidity);
        } catch (IllegalArgumentException problem) {
            node.problem("expert", Words.sentence(problem));
            return appliance;
        }
    }

    private static boolean isUnusable(OptionalDouble value) {
        return value.isPresent() && !Double.isFinite(value.getAsDouble());
    }

    /** What comes before and after the stage that the thermometer ends. */
    CookSequence sequence(Node root) {
        return new CookSequence(
                steps(root, "before"),
                steps(root, "after"),
                turn(root),
                usable(root.findQuantityInRange("warm_up", Dimension.TIME, "0 s", "2 h"), 0),
                root.findChild("rest").map(CookReader::rest).orElse(CookSequence.Rest.USUAL));
    }

    private static CookSequence.Rest rest(Node node) {
        OptionalDouble time = node.findQuantityInRange("time", Dimension.TIME, "0 s", "2 h");
        boolean foil = node.findFlag("foil").orElse(false);
        return new CookSequence.Rest(foil, isUnusable(time) ? OptionalDouble.empty() : time);
    }

    private static double turn(Node node) {
        return usable(
                node.findQuantityInRange("turn_every", Dimension.TIME, "5 s", "1 d"), CookingMedium.TURN_INTERVAL);
    }

    private static double usable(OptionalDouble value, double otherwise) {
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? value.getAsDouble() : otherwise;
    }

    private List<CookSequence.Step> steps(Node root, String key) {
        List<CookSequence.Step> steps = new ArrayList<>();
        if (!root.has(key)) {
            return steps;
        }
        for (Node node : root.list(key)) {
            Optional<Appliance> named = appliance(node);
            if (named.isEmpty() && !node.has("appliance")) {
                node.problem("appliance", PHRASES.say("got-none-expected-name-it", Words.anAppliance()));
            }
            double time = node.quantityInRange("time", Dimension.TIME, "1 s", "1 d");
            Appliance appliance = named.orElseGet(() -> catalog.appliances().get("oven-conventional"));
            double setting = usable(
                    node.findQuantityInRange("setting", Dimension.TEMPERATURE, "0 °C", "400 °C"),
                    appliance.temperature().typical());
            steps.add(new CookSequence.Step(
                    tuned(node, appliance), setting, Double.isFinite(time) ? time : 60, turn(node)));
        }
        return steps;
    }

    /** The shape that heat sees in a piece, as it lies among others. */
    static Shape among(Node root, Shape shape) {
        Map<String, PieceShape.Arrangement> choices = new LinkedHashMap<>();
        for (PieceShape.Arrangement arrangement : PieceShape.Arrangement.values()) {
            choices.put(arrangement.name().toLowerCase(Locale.ROOT), arrangement);
        }
        return PieceShape.among(shape, root.findChoice("arrangement", choices).orElse(PieceShape.Arrangement.APART));
    }
}
