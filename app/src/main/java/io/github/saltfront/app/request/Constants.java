package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Node;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.units.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Constants that replace models in a simulation; each one given replaces its model.
 *
 * @param density density of the meat [kg/m3]
 * @param heatCapacity heat capacity [J/(kg.K)]; there is then no ice
 * @param conductivity conductivity [W/(m.K)]; there is then no ice
 * @param saltDiffusivity diffusion coefficient of salt at any temperature [m2/s]
 * @param partition partition coefficient [-]
 * @param waterFixed whether water may not move
 */
record Constants(
        OptionalDouble density,
        OptionalDouble heatCapacity,
        OptionalDouble conductivity,
        OptionalDouble saltDiffusivity,
        OptionalDouble partition,
        boolean waterFixed) {

    static Constants read(Node piece) {
        Optional<Node> node = piece.findChild("constants");
        if (node.isEmpty()) {
            return new Constants(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    false);
        }
        Node n = node.get();
        return new Constants(
                n.findQuantityInRange("density", Dimension.DENSITY, "100 kg/m3", "5000 kg/m3"),
                n.findQuantityInRange("heat_capacity", Dimension.HEAT_CAPACITY, "100 J/(kg.K)", "10000 J/(kg.K)"),
                n.findQuantityInRange("conductivity", Dimension.CONDUCTIVITY, "0.001 W/(m.K)", "500 W/(m.K)"),
                n.findQuantityInRange("salt_diffusivity", Dimension.DIFFUSIVITY, "1e-13 m2/s", "1e-7 m2/s"),
                n.findNumber("partition", 0.05, 5),
                n.findChoice("water", Words.choices("fixed", true, "moving", false))
                        .orElse(false));
    }

    HeatProperties apply(HeatProperties model, double water, double salt) {
        HeatProperties result = model;
        double wet = 1 + water + salt;
        if (density.isPresent()) {
            result = result.withDryDensity(density.getAsDouble() / wet);
        }
        if (heatCapacity.isPresent()) {
            result = result.withConstantCapacity(heatCapacity.getAsDouble() * wet);
        }
        if (conductivity.isPresent()) {
            result = result.withConstantConductivity(conductivity.getAsDouble());
        }
        return result;
    }
}
