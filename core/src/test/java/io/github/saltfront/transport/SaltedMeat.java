package io.github.saltfront.transport;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.units.Temperature;

/** Invented salted meat from the refrigerator, with juice and one kind of kill. */
final class SaltedMeat {
    private static final Composition COMPOSITION = new Composition(0.72, 0.215, 0.05, 0.005, 0.01);

    private SaltedMeat() {}

    static Member member(double extent) {
        return new Member(
                extent,
                1,
                new InitialState(Temperature.fromCelsius(4), COMPOSITION.waterPerSolids(), 0.02),
                MeatHeat.of(COMPOSITION),
                new SaltProperties(3e-10, 25_000, 0.95, 1, 0),
                false);
    }

    static SolverSettings settings(double temperatureTolerance, double saltTolerance) {
        return SolverSettings.DEFAULT
                .withTolerances(temperatureTolerance, saltTolerance)
                .withKinetics(kelvin -> Math.pow(10, (kelvin - 333) / 6) / 60, new KajitaniJuice());
    }
}
