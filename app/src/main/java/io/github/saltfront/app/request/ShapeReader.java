package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Node;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads a shape: {@code {kind: slab, thickness: 30 mm}} and the like. */
final class ShapeReader {
    private static final Phrases PHRASES = Phrases.of(ShapeReader.class);

    private static final String SMALLEST = "1 mm";
    private static final String LARGEST = "2 m";

    private enum Kind {
        SLAB,
        CYLINDER,
        SPHERE,
        BOX,
        ELLIPSOID
    }

    private ShapeReader() {}

    static Shape read(Node parent, String key) {
        Node node = parent.child(key);
        Map<String, Kind> kinds = new LinkedHashMap<>();
        for (Kind kind : Kind.values()) {
            kinds.put(kind.name().toLowerCase(java.util.Locale.ROOT), kind);
        }
        Shape placeholder = new Shape.Slab(0.03);
        try {
            return switch (node.kind("kind", kinds)) {
                case SLAB -> new Shape.Slab(length(node, "thickness"));
                case SPHERE -> new Shape.Sphere(length(node, "diameter"));
                case CYLINDER -> cylinder(node);
                case BOX -> {
                    Sides sides = Sides.read(node);
                    yield new Shape.Box(sides.length, sides.width, sides.thickness);
                }
                case ELLIPSOID -> {
                    Sides sides = Sides.read(node);
                    yield new Shape.Ellipsoid(sides.length, sides.width, sides.thickness);
                }
            };
        } catch (IllegalArgumentException e) {
            // a length that could not be read is NaN here and has its message already
            if (node.has("kind") && !String.valueOf(e.getMessage()).contains("NaN")) {
                parent.problem(key, Words.sentence(e));
            }
            return placeholder;
        }
    }

    /** Three lengths in falling order, said in the user's units where they are not. */
    private record Sides(double length, double width, double thickness) {
        static Sides read(Node node) {
            Sides sides = new Sides(
                    ShapeReader.length(node, "length"),
                    ShapeReader.length(node, "width"),
                    ShapeReader.length(node, "thickness"));
            if (sides.thickness > sides.width || sides.width > sides.length) {
                throw new IllegalArgumentException(PHRASES.say(
                        "got-a-thickness-of-a", shown(sides.thickness), shown(sides.width), shown(sides.length)));
            }
            return sides;
        }

        private static String shown(double length) {
            return QuantityFormat.length(length, KitchenUnits.METRIC);
        }
    }

    private static Shape cylinder(Node node) {
        double diameter = length(node, "diameter");
        OptionalDouble length = node.findQuantityInRange("length", Dimension.LENGTH, SMALLEST, LARGEST);
        return length.isPresent()
                ? new Shape.Cylinder(diameter, length.getAsDouble())
                : new Shape.LongCylinder(diameter);
    }

    private static double length(Node node, String key) {
        return node.quantityInRange(key, Dimension.LENGTH, SMALLEST, LARGEST);
    }
}
