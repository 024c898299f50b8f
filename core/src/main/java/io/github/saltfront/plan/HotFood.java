package io.github.saltfront.plan;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;

/**
 * Cooked food that is to be cooled, equally hot throughout at the start.
 *
 * @param kind solid, still or stirred
 * @param name plain name
 * @param composition what it is made of
 * @param shape its shape; that of a pot is the liquid in it
 * @param mass its mass [kg]
 * @param start temperature at the start, up to 373 K [K]; above 135 F (57.2 deg C), where the official clocks begin
 */
public record HotFood(Kind kind, String name, Composition composition, Shape shape, double mass, double start) {
    private static final Phrases PHRASES = Phrases.of(HotFood.class);

    /** How heat moves in it. */
    public enum Kind {
        /** Meat: by conduction. */
        SOLID,
        /** A liquid left alone. Taken as conducting only, as a thick soup or a jelled stock does; a thin one is faster. */
        STILL,
        /** A liquid stirred all the while: equally warm throughout. */
        STIRRED
    }

    /** Where the official clocks of cooling begin, 135 F [K]. */
    public static final double CLOCK_START = Temperature.fromFahrenheit(135);

    private static final double HOTTEST = Temperature.fromCelsius(100);

    /** Stock and thin soup: 95 % water; estimate. Conductivity and heat capacity follow from the composition. */
    private static final Composition STOCK = new Composition(0.95, 0.025, 0.015, 0, 0.01);

    /** Checks the values. */
    public HotFood {
        Checks.requireInRange("mass", mass, 0.01, 200, "kg");
        Checks.requireInRange("start temperature", start, CLOCK_START + 0.1, HOTTEST, "K");
    }

    /**
     * Returns a piece of meat.
     *
     * @param name plain name
     * @param composition its composition
     * @param shape its shape
     * @param mass its mass [kg]
     * @param start temperature [K]
     * @return the food
     */
    public static HotFood piece(String name, Composition composition, Shape shape, double mass, double start) {
        return new HotFood(Kind.SOLID, name, composition, shape, mass, start);
    }

    /**
     * Returns a round pot of stock or soup.
     *
     * @param mass mass of the liquid [kg]
     * @param depth depth of the liquid [m]
     * @param stirred whether it is stirred all the while
     * @param start temperature [K]
     * @return the food
     */
    public static HotFood pot(double mass, double depth, boolean stirred, double start) {
        Checks.requireInRange("depth of the liquid", depth, 0.005, 1, "m");
        HeatProperties heat = MeatHeat.of(STOCK);
        double area = mass / (heat.dryDensity() * (1 + heat.rawWater()) * depth);
        Shape liquid = new Shape.Cylinder(Math.sqrt(4 * area / Math.PI), depth);
        return new HotFood(
                stirred ? Kind.STIRRED : Kind.STILL, PHRASES.say("pot-of-stock"), STOCK, liquid, mass, start);
    }

    /**
     * Returns the same food in a layer, wide against its thickness: slices, flat bags, or a shallow pan.
     *
     * @param thickness thickness of the layer [m]
     * @return the food, left still
     */
    public HotFood layer(double thickness) {
        Kind still = kind == Kind.SOLID ? Kind.SOLID : Kind.STILL;
        return new HotFood(still, name, composition, new Shape.Slab(thickness), mass, start);
    }

    /** Returns the liquid stirred. */
    HotFood stirred() {
        return new HotFood(Kind.STIRRED, name, composition, shape, mass, start);
    }

    /** Returns the thickness that heat has to leave: twice the shortest way from the middle [m]. */
    public double thickness() {
        return 2 * shape.halfThickness();
    }

    /** Returns the shape that gives heat off alike on all sides. A pot whose top gives none is half of one twice as deep. */
    Shape shapeIn(CoolingMedium medium) {
        return kind != Kind.SOLID && !medium.coolsTop() && shape instanceof Shape.Cylinder pot
                ? new Shape.Cylinder(pot.diameter(), 2 * pot.length())
                : shape;
    }

    /** Returns the food with all lengths changed by a factor, for the error of a ruler. */
    HotFood thicker(double factor) {
        return new HotFood(kind, name, composition, thicker(shape, factor), mass, start);
    }

    private static Shape thicker(Shape shape, double f) {
        if (shape instanceof Shape.Slab s) {
            return new Shape.Slab(f * s.thickness());
        }
        if (shape instanceof Shape.Box s) {
            return new Shape.Box(f * s.length(), f * s.width(), f * s.thickness());
        }
        if (shape instanceof Shape.Ellipsoid s) {
            return new Shape.Ellipsoid(f * s.length(), f * s.width(), f * s.thickness());
        }
        if (shape instanceof Shape.Cylinder s) {
            return new Shape.Cylinder(f * s.diameter(), f * s.length());
        }
        if (shape instanceof Shape.LongCylinder s) {
            return new Shape.LongCylinder(f * s.diameter());
        }
        if (shape instanceof Shape.Sphere s) {
            return new Shape.Sphere(f * s.diameter());
        }
        throw new AssertionError(shape);
    }

    /** Returns the heat it gives off on the way to a temperature [J]. */
    public double heatAbove(double kelvin) {
        HeatProperties heat = MeatHeat.of(composition);
        double dry = mass / (1 + heat.rawWater());
        return dry
                * (heat.enthalpy(Temperature.toCelsius(start), heat.rawWater(), 0)
                        - heat.enthalpy(Temperature.toCelsius(kelvin), heat.rawWater(), 0));
    }
}
