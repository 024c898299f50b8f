package io.github.saltfront.verification;

import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SolidPiece;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.units.Temperature;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pieces with constant properties that cool from 100 to 0 degrees Celsius, for comparison with exact solutions. */
final class SolidCases {
    static final double HOT = Temperature.fromCelsius(100);
    static final double COLD = Temperature.fromCelsius(0);

    /** Error of a step that is accepted [K]. */
    static final double TOLERANCE = 2e-4;

    /** What steps may add up to, relative to the range of 100 K: ten tolerances, since errors decay like temperatures. */
    static final double TIME_ERROR = 10 * TOLERANCE / 100;

    /** Stands for an infinite coefficient: Biot numbers above 1e7 [W/(m2.K)]. */
    static final double INFINITE = 1e9;

    private static final Pattern INPUT = Pattern.compile("(\\w+)=(inf|[0-9.eE+-]+)");

    private SolidCases() {}

    static SolidSolver solver(SolidGrid grid, double conductivity, double diffusivity) {
        double density = 1000;
        double capacity = conductivity / (diffusivity * density);
        SolidPiece piece = new SolidPiece(
                new InitialState(HOT, 3, 0),
                HeatProperties.constant(density, capacity, conductivity, 3),
                new SaltProperties(1e-9, 0, 1, 1, 0),
                true);
        return new SolidSolver(grid, piece, SolverSettings.DEFAULT.withTolerances(TOLERANCE, 1e-6));
    }

    static FaceCondition cold(double coefficient) {
        return FaceCondition.convection(COLD, coefficient);
    }

    static double theta(double kelvin) {
        return (kelvin - COLD) / (HOT - COLD);
    }

    /** Reads inputs such as "a=0.02;h=20 W/m2K". */
    static Map<String, Double> inputs(String text) {
        Map<String, Double> result = new HashMap<>();
        Matcher matcher = INPUT.matcher(text);
        while (matcher.find()) {
            String value = matcher.group(2);
            result.putIfAbsent(matcher.group(1), value.equals("inf") ? INFINITE : Double.parseDouble(value));
        }
        return result;
    }
}
