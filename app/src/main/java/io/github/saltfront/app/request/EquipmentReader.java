package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Node;
import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads what the kitchen has. */
final class EquipmentReader {
    private EquipmentReader() {}

    /**
     * Reads the group "equipment".
     *
     * @param root the group that may hold it
     * @param catalog the catalog
     * @return the equipment; the usual one if there is no such group
     */
    static Request.Equipment read(Node root, Catalog catalog) {
        Optional<Node> group = root.findChild("equipment");
        if (group.isEmpty()) {
            return Request.Equipment.USUAL;
        }
        Node node = group.get();
        boolean scale = node.findFlag("scale").orElse(true);
        boolean thermometer = node.findFlag("thermometer").orElse(true);
        OptionalInt load = node.findInteger("load", 1, 500);
        List<Appliance> others = new ArrayList<>();
        for (String name : node.findTexts("appliances")) {
            Optional<Appliance> found = catalog.appliances().find(name);
            if (found.isEmpty()) {
                node.problem(
                        "appliances",
                        Words.unknown(
                                name,
                                Words.anAppliance(),
                                catalog.appliances().nearest(name, 3).stream()
                                        .map(Appliance::id)
                                        .toList(),
                                SimulationFile.listAppliances()));
            }
            found.ifPresent(others::add);
        }
        return new Request.Equipment(scale, thermometer, load, others);
    }
}
