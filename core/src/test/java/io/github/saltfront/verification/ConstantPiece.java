package io.github.saltfront.verification;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.units.Temperature;
import java.util.List;

/**
 * A piece with constant properties of about those of meat, to which dimensionless problems are mapped: U = 0 at the start,
 * U = 1 a hundred kelvin above.
 */
final class ConstantPiece {
    static final double EXTENT = 0.015;
    static final double CONDUCTIVITY = 0.5;
    static final double DENSITY = 1000;
    static final double CAPACITY = 4000;
    static final double WATER = 3;
    static final double START = Temperature.fromCelsius(5);
    static final double RISE = 100;

    /** Stands for an infinite Biot number; changes the result by about its inverse. */
    private static final double LARGE = 1e9;

    private ConstantPiece() {}

    static LayerSolver solver(Resolution resolution, double exponent) {
        Member member = new Member(
                EXTENT,
                1,
                new InitialState(START, WATER, 0),
                HeatProperties.constant(DENSITY, CAPACITY, CONDUCTIVITY, WATER),
                new SaltProperties(3e-10, 0, 1, 0, 0),
                true);
        return new LayerSolver(resolution.grid(exponent), List.of(member), resolution.settings());
    }

    static double seconds(double fourier) {
        return fourier * EXTENT * EXTENT * DENSITY * CAPACITY / CONDUCTIVITY;
    }

    static double fourier(double seconds) {
        return seconds / seconds(1);
    }

    static double coefficient(double biot) {
        return Math.min(biot, LARGE) * CONDUCTIVITY / EXTENT;
    }

    static FaceCondition medium(double biot, double u) {
        return FaceCondition.convection(kelvin(u), coefficient(biot));
    }

    static double kelvin(double u) {
        return START + RISE * u;
    }

    static double u(double kelvin) {
        return (kelvin - START) / RISE;
    }

    /** Temperature at a distance from the middle, relative to the extent, by a cubic through the nearest nodes and the face. */
    static double local(LayerSolver solver, double place) {
        LayerGrid grid = solver.grid();
        int n = grid.cells();
        double[] x = new double[n + 1];
        double[] t = new double[n + 1];
        for (int i = 0; i < n; i++) {
            x[i] = grid.node(i);
            t[i] = solver.cellTemperature(0, i);
        }
        x[n] = 1;
        t[n] = solver.faceTemperature(0, 0);
        int first = 0;
        while (first < n - 3 && x[first + 2] < place) {
            first++;
        }
        double sum = 0;
        for (int i = first; i < first + 4; i++) {
            double weight = 1;
            for (int j = first; j < first + 4; j++) {
                if (j != i) {
                    weight *= (place - x[j]) / (x[i] - x[j]);
                }
            }
            sum += weight * t[i];
        }
        return sum;
    }
}
