package io.github.saltfront.matter;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Temperature;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * Density, heat capacity and thermal conductivity of the components of food as quadratics of temperature.
 *
 * <pre>value = a0 + a1 t + a2 t^2, t in degrees Celsius</pre>
 *
 * <p>Validity: -40 to 150 degrees Celsius; ice and supercooled water -40 to 0; heat capacity of water 0 to 150.
 *
 * <p>Misprints that circulate: heat capacity of water with the constant 4.1289 (here 4.1762, which agrees with steam
 * tables), and conductivity of fat with the slope -2.7604e-3 (here -2.7604e-4; the other turns negative above 65 degrees).
 *
 * @see "choi1986, pp 93-101; reprinted in ashrae2006, chapter 9, Tables 1 and 2"
 */
public final class ChoiOkos1986 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "choi1986";

    /** Components of food. */
    public enum Component {
        /** Liquid water; the heat capacity holds from 0 degrees Celsius up. */
        WATER,
        /** Liquid water below 0 degrees Celsius; only a heat capacity is printed. */
        SUPERCOOLED_WATER,
        /** Ice. */
        ICE,
        /** Protein. */
        PROTEIN,
        /** Fat; the latent heat of melting is not in its heat capacity. */
        FAT,
        /** Carbohydrate without fiber. */
        CARBOHYDRATE,
        /** Dietary fiber. */
        FIBER,
        /** Ash (minerals). */
        ASH
    }

    /** Properties, in SI units. */
    public enum Property {
        /** Density [kg/m3]. */
        DENSITY("kg/m3", 1),
        /** Specific heat capacity [J/(kg.K)]. */
        SPECIFIC_HEAT("kJ/(kg K)", 1000),
        /** Thermal conductivity [W/(m.K)]. */
        THERMAL_CONDUCTIVITY("W/(m K)", 1);

        private final String printedUnit;
        private final double factor;

        Property(String printedUnit, double factor) {
            this.printedUnit = printedUnit;
            this.factor = factor;
        }
    }

    private static final Map<Component, Map<Property, QuadraticInCelsius>> TABLE = read();

    private ChoiOkos1986() {}

    /**
     * Returns a property of a component.
     *
     * @param component the component
     * @param property the property
     * @return its polynomial, in SI units
     * @throws IllegalArgumentException if the source prints none (density and conductivity of supercooled water)
     */
    public static QuadraticInCelsius of(Component component, Property property) {
        QuadraticInCelsius found = TABLE.getOrDefault(component, Map.of()).get(property);
        if (found == null) {
            throw new IllegalArgumentException("choi_okos.csv holds no " + property + " of " + component
                    + "; use WATER, whose density and conductivity hold from -40 degrees Celsius.");
        }
        return found;
    }

    private static Map<Component, Map<Property, QuadraticInCelsius>> read() {
        Map<Component, Map<Property, QuadraticInCelsius>> table = new EnumMap<>(Component.class);
        for (CsvTable.Row row :
                CsvTable.load(ChoiOkos1986.class, "choi_okos.csv").rows()) {
            Component component = Component.valueOf(row.text("component").toUpperCase(Locale.ROOT));
            Property property = Property.valueOf(row.text("property").toUpperCase(Locale.ROOT));
            if (!row.text("unit").equals(property.printedUnit)) {
                throw new IllegalStateException("choi_okos.csv, line " + row.line() + ": expected unit "
                        + property.printedUnit + ", found " + row.text("unit") + ".");
            }
            table.computeIfAbsent(component, c -> new EnumMap<>(Property.class))
                    .put(
                            property,
                            new QuadraticInCelsius(
                                    property.factor * row.number("a0"),
                                    property.factor * row.number("a1"),
                                    property.factor * row.number("a2"),
                                    Temperature.fromCelsius(row.number("t_min_c")),
                                    Temperature.fromCelsius(row.number("t_max_c"))));
        }
        return table;
    }
}
