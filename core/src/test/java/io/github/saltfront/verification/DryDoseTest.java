package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.SaltSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A dose of dry salt, while it lasts, holds the face at saturation: the uptake of a semi-infinite solid with constant surface
 * is 2 c sqrt(D t / pi) (Crank 1975, eq. 3.15).
 *
 * <p>The solver's film is never quite saturated: at a remaining share r of the dose it has r / (r + 0.01) of saturation, 0.99
 * at first and 0.91 when a tenth is left. Uptake grows with the strength of the surface, so that it lies between the exact one
 * and that share of it at the end; this is not a last hundredth only.
 */
class DryDoseTest {
    private static final double WATER = 3;
    private static final double SATURATION = 0.36;
    private static final double FILM = 0.01;

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 0.5, 0.8, 0.9})
    void aDoseFeedsTheMeatAsASaturatedFaceButForItsThinFilm(double share) {
        double fourier = 0.02;
        // water of the meat per area times strength is what a full piece would hold
        double exact = SATURATION * 1060 / (1 + WATER) * WATER * 0.015 * 2 * Math.sqrt(fourier / Math.PI);
        double dose = exact / share;
        LayerSolver solver = SaltChecks.solver(Resolution.BASE, 0);
        SaltChecks.run(solver, new SaltSource.Dose(dose, SATURATION), fourier);
        double taken = solver.meanSalt(0) / (1 - solver.meanSalt(0)) * 1060 * 0.015;
        double remaining = 1 - taken / dose;
        // 1e-3: twice the error of uptake at this time in the group DIF
        assertThat(taken / exact).isBetween(remaining / (remaining + FILM) - 1e-3, 1 + 1e-3);
    }
}
