package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Node;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Dimension;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads a shape: {@code {kind: slab, thickness: 30 mm}} and the like. */
final class ShapeReader {
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
                case BOX -> new Shape.Box(length(node, "length"), length(node, "width"), length(node, "thickness"));
                case ELLIPSOID ->
                    new Shape.Ellipsoid(length(node, "length"), length(node, "width"), length(node, "thickness"));
            };
        } catch (IllegalArgumentException e) {
            if (node.has("kind") && !String.valueOf(e.getMessage()).contains("NaN")) {
                parent.problem(key, String.valueOf(e.getMessage()));
            }
            return placeholder;
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
