package io.github.saltfront.app.document;

import io.github.saltfront.units.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a small request in the way a command does, so that the tests see the reader through a whole file. */
record SampleRequest(
        Shape shape,
        double size,
        String meat,
        double startTemperature,
        OptionalDouble density,
        int pieces,
        List<SampleStage> stages,
        Solver solver,
        Optional<String> servingTime) {

    enum Shape {
        SLAB,
        CYLINDER,
        SPHERE
    }

    enum Solver {
        ONE_D,
        THREE_D
    }

    enum StageKind {
        SOAK,
        HEAT
    }

    record SampleStage(
            StageKind kind, double medium, double coefficient, double emissivity, boolean evaporation, double time) {}

    static SampleRequest read(Document document) {
        Node root = document.root();
        Node piece = root.child("piece");
        Node shapeNode = piece.child("shape");
        Map<String, Shape> shapes = new LinkedHashMap<>();
        shapes.put("slab", Shape.SLAB);
        shapes.put("cylinder", Shape.CYLINDER);
        shapes.put("sphere", Shape.SPHERE);
        Shape shape = shapeNode.kind("kind", shapes);
        String sizeKey = shape == Shape.SLAB ? "thickness" : "diameter";
        double size = shapeNode.quantityInRange(sizeKey, Dimension.LENGTH, "1 mm", "500 mm");
        String meat = piece.isGroup("meat") ? meat(piece.child("meat")) : piece.text("meat");
        double start = piece.quantity("start_temperature", Dimension.TEMPERATURE);
        OptionalDouble density = piece.findChild("constants")
                .map(c -> c.findQuantity("density", Dimension.DENSITY))
                .orElse(OptionalDouble.empty());
        List<SampleStage> stages =
                root.list("stages").stream().map(SampleRequest::stage).toList();
        SampleRequest request = new SampleRequest(
                shape,
                size,
                meat,
                start,
                density,
                root.findInteger("pieces", 1, 100).orElse(1),
                stages,
                root.findChoice("solver", Map.of("1d", Solver.ONE_D, "3d", Solver.THREE_D))
                        .orElse(Solver.ONE_D),
                root.findText("serving_time"));
        root.findTexts("guests");
        document.requireNoErrors();
        return request;
    }

    private static String meat(Node meat) {
        double water = meat.quantity("water", Dimension.FRACTION);
        double protein = meat.quantity("protein", Dimension.FRACTION);
        if (water + protein > 1) {
            meat.problem(
                    "water", "Water and protein add up to more than 100 %, expected at most 100 %; lower one of them.");
        }
        return "mixture";
    }

    private static SampleStage stage(Node node) {
        Map<String, StageKind> kinds = new LinkedHashMap<>();
        kinds.put("soak", StageKind.SOAK);
        kinds.put("heat", StageKind.HEAT);
        StageKind kind = node.kind("kind", kinds);
        if (kind == StageKind.SOAK) {
            double strength = node.quantityInRange("strength", Dimension.FRACTION, "0 %", "26 %");
            return new SampleStage(kind, strength, 0, 0, false, time(node));
        }
        return new SampleStage(
                kind,
                node.quantity("medium", Dimension.TEMPERATURE),
                node.quantity("coefficient", Dimension.HEAT_TRANSFER_COEFFICIENT),
                node.number("emissivity", 0, 1),
                node.flag("evaporation"),
                time(node));
    }

    private static double time(Node node) {
        return node.oneOf("time", "at_most")
                .map(key -> node.quantity(key, Dimension.TIME))
                .orElse(Double.NaN);
    }
}
