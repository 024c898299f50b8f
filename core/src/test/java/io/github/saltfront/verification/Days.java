package io.github.saltfront.verification;

import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Temperature;
import java.util.Collections;
import java.util.List;

/** Stages of a day: soak, dry dose, fridge, oven with radiation and a partly wet surface, rest. */
final class Days {
    static final double PRESSURE = 101_325;

    private Days() {}

    static FaceCondition air(TimeProfile kelvin, double h, double emissivity, double wet, double vapor) {
        return new FaceCondition(kelvin, TimeProfile.constant(h), emissivity, wet, vapor, PRESSURE);
    }

    static StageInput stage(int faces, FaceCondition face, SaltSource source, double duration) {
        return new StageInput(
                Collections.nCopies(faces, face), Collections.nCopies(faces, source), duration, StopRule.NEVER);
    }

    static SaltSource bath(double saltPerArea, double waterPerArea) {
        return new SaltSource.Bath(saltPerArea, waterPerArea, strength -> 0.6 * strength);
    }

    static List<StageInput> whole(int faces, double strength, double dose, double ovenC) {
        FaceCondition cold = FaceCondition.convection(Temperature.fromCelsius(4), 150);
        FaceCondition fridge = air(TimeProfile.constant(Temperature.fromCelsius(4)), 8, 0.9, 0.5, 600);
        FaceCondition oven = air(
                new TimeProfile.Ramp(Temperature.fromCelsius(60), Temperature.fromCelsius(ovenC), 600),
                20,
                0.9,
                0.2,
                3000);
        FaceCondition rest = air(TimeProfile.constant(Temperature.fromCelsius(21)), 6, 0.9, 0.2, 1200);
        return List.of(
                stage(faces, cold, bath(20 * strength, 20), 6 * 3600),
                stage(faces, cold, new SaltSource.Dose(dose, 0.36), 4 * 3600),
                stage(faces, fridge, SaltSource.NONE, 10 * 3600),
                stage(faces, oven, SaltSource.NONE, 2400),
                stage(faces, rest, SaltSource.NONE, 900));
    }
}
