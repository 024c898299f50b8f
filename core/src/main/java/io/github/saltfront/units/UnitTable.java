package io.github.saltfront.units;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The units that can be read. A table in code, since this package is below the one that reads files. Factors are exact by
 * definition unless a comment says otherwise.
 *
 * @see "nist811, appendix B.8; cfr21-101-9, (b)(5)(viii), for the spoons and cups of nutrition labels"
 */
final class UnitTable {
    private static final Exponents MASS = Dimension.MASS.exponents();
    private static final Exponents LENGTH = Dimension.LENGTH.exponents();
    private static final Exponents TIME = Dimension.TIME.exponents();
    private static final Exponents TEMPERATURE = Dimension.TEMPERATURE.exponents();
    private static final Exponents VOLUME = Dimension.VOLUME.exponents();
    private static final Exponents ENERGY = Dimension.ENERGY.exponents();
    private static final Exponents POWER = Dimension.POWER.exponents();
    private static final Exponents PRESSURE = Dimension.PRESSURE.exponents();
    private static final Exponents AMOUNT = new Exponents(0, 0, 0, 0, 1);

    private static final double POUND = 0.45359237;
    private static final double INCH = 0.0254;
    /** International Table Btu [J]. */
    private static final double BTU = 1055.05585262;
    /** Thermochemical calorie [J]. */
    private static final double CALORIE = 4.184;
    /** Standard acceleration of gravity [m/s2], for pound-force. */
    private static final double GRAVITY = 9.80665;

    private static final Map<String, Unit> EXACT = new HashMap<>();
    private static final Map<String, Unit> ANY_CASE = new HashMap<>();

    static {
        addMasses();
        addLengths();
        addTimes();
        addVolumes();
        addSpoons("", SpoonSystem.US);
        addSpoons("us_", SpoonSystem.US);
        addSpoons("metric_", SpoonSystem.METRIC);
        addSpoons("label_", SpoonSystem.LABEL);
        addTemperatures();
        addEnergies();
        addShares();
    }

    private UnitTable() {}

    private static void addMasses() {
        anyCase(1e-3, MASS, "g gm gms gram grams");
        anyCase(1, MASS, "kg kgs kilo kilos kilogram kilograms");
        exact(1e-6, MASS, "mg milligram milligrams");
        exact(1e-9, MASS, "ug mcg");
        anyCase(POUND, MASS, "lb lbs pound pounds");
        anyCase(POUND / 16, MASS, "oz ounce ounces");
        exact(1, AMOUNT, "mol");
        exact(1e3, AMOUNT, "kmol");
    }

    private static void addLengths() {
        anyCase(1, LENGTH, "m meter meters metre metres");
        anyCase(1e-1, LENGTH, "dm");
        anyCase(1e-2, LENGTH, "cm centimeter centimeters centimetre centimetres");
        anyCase(1e-3, LENGTH, "mm millimeter millimeters millimetre millimetres");
        exact(1e-6, LENGTH, "um");
        exact(1e3, LENGTH, "km");
        anyCase(INCH, LENGTH, "in inch inches \"");
        anyCase(12 * INCH, LENGTH, "ft foot feet '");
    }

    private static void addTimes() {
        anyCase(1, TIME, "s sec secs second seconds");
        exact(1e-3, TIME, "ms");
        anyCase(60, TIME, "min mins minute minutes");
        anyCase(3600, TIME, "h hr hrs hour hours");
        anyCase(86400, TIME, "d day days");
    }

    private static void addVolumes() {
        anyCase(1e-3, VOLUME, "l liter liters litre litres");
        anyCase(1e-4, VOLUME, "dl");
        anyCase(1e-5, VOLUME, "cl");
        anyCase(1e-6, VOLUME, "ml cc milliliter milliliters millilitre millilitres");
        exact(1e-9, VOLUME, "uL ul");
        anyCase(SpoonSystem.US.cup() / 8, VOLUME, "floz");
        anyCase(SpoonSystem.US.cup() * 2, VOLUME, "pt pint pints");
        anyCase(SpoonSystem.US.cup() * 4, VOLUME, "qt qts quart quarts");
        anyCase(SpoonSystem.US.cup() * 16, VOLUME, "gal gallon gallons");
    }

    private static void addSpoons(String prefix, SpoonSystem system) {
        if (system == SpoonSystem.METRIC) {
            exact(system.teaspoon(), VOLUME, "TL");
            exact(system.tablespoon(), VOLUME, "EL");
        }
        for (String name : "tsp tsps teaspoon teaspoons".split(" ", -1)) {
            anyCase(system.teaspoon(), VOLUME, prefix + name);
        }
        for (String name : "tbsp tbsps tbs tablespoon tablespoons".split(" ", -1)) {
            anyCase(system.tablespoon(), VOLUME, prefix + name);
        }
        for (String name : "cup cups".split(" ", -1)) {
            anyCase(system.cup(), VOLUME, prefix + name);
        }
    }

    private static void addTemperatures() {
        exact(1, TEMPERATURE, "K kelvin");
        EXACT.put("degC", new Unit("degC", 1, TEMPERATURE));
        EXACT.put("C", new Unit("degC", 1, TEMPERATURE));
        EXACT.put("degF", new Unit("degF", 1 / 1.8, TEMPERATURE));
        EXACT.put("F", new Unit("degF", 1 / 1.8, TEMPERATURE));
    }

    private static void addEnergies() {
        exact(1, ENERGY, "J");
        exact(1e3, ENERGY, "kJ");
        exact(1e6, ENERGY, "MJ");
        exact(CALORIE, ENERGY, "cal");
        exact(1e3 * CALORIE, ENERGY, "kcal");
        exact(3600, ENERGY, "Wh");
        exact(3.6e6, ENERGY, "kWh");
        exact(BTU, ENERGY, "BTU Btu");
        exact(1, POWER, "W");
        exact(1e3, POWER, "kW");
        exact(1e-3, POWER, "mW");
        exact(1, PRESSURE, "Pa");
        exact(1e2, PRESSURE, "hPa mbar");
        exact(1e3, PRESSURE, "kPa");
        exact(1e5, PRESSURE, "bar");
        exact(1e6, PRESSURE, "MPa");
        exact(PhysicalConstants.STANDARD_ATMOSPHERE, PRESSURE, "atm");
        exact(133.322387415, PRESSURE, "mmHg"); // conventional millimeter of mercury, printed to these digits
        exact(POUND * GRAVITY / (INCH * INCH), PRESSURE, "psi");
    }

    private static void addShares() {
        anyCase(1e-2, Exponents.NONE, "% percent pct");
        exact(1e-6, Exponents.NONE, "ppm");
    }

    private static void exact(double factor, Exponents exponents, String names) {
        for (String name : names.split(" ", -1)) {
            EXACT.put(name, new Unit(name, factor, exponents));
        }
    }

    private static void anyCase(double factor, Exponents exponents, String names) {
        for (String name : names.split(" ", -1)) {
            EXACT.put(name, new Unit(name, factor, exponents));
            ANY_CASE.put(name, new Unit(name, factor, exponents));
        }
    }

    /**
     * Looks a unit up. Letters that mean different things in different places ("c", "m") are read as what was asked for.
     */
    static Optional<Unit> find(String name, Dimension asked) {
        if (asked == Dimension.VOLUME && name.equalsIgnoreCase("c")) {
            return Optional.ofNullable(EXACT.get("cup"));
        }
        if (asked == Dimension.TIME && name.equalsIgnoreCase("m")) {
            return Optional.ofNullable(EXACT.get("min"));
        }
        Unit exact = EXACT.get(name);
        if (exact != null) {
            return Optional.of(exact);
        }
        return Optional.ofNullable(ANY_CASE.get(name.toLowerCase(Locale.ROOT)));
    }

    /** Returns the names of all units of a kind, for suggestions. */
    static Set<String> names(Dimension dimension) {
        Set<String> names = new TreeSet<>();
        EXACT.forEach((name, unit) -> {
            if (unit.exponents().equals(dimension.exponents()) && !name.contains("_")) {
                names.add(name.replace("deg", "°").replace("floz", "fl oz"));
            }
        });
        return names;
    }
}
