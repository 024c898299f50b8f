package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.History;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.Piece;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.Simulation;
import io.github.saltfront.transport.SimulationOutput;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sun, Wang 2000, Int J Refrig 23:508-516 (abstract): cooked joints cannot be cooled from 74 to 10 °C in 2.5 h by air blast, immersion in
 * ice water or slow air, because conduction inside limits. Size of a joint: 2.5 kg and 100 mm, the largest of the guideline for
 * such cooling (from memory). Coefficients: the high end of each medium, so that the finding does not rest on a slow film.
 */
class JointCoolingTest {
    private static final double TWO_AND_A_HALF_HOURS = 2.5 * 3600;

    @ParameterizedTest
    @CsvSource({"slow air, 4, 11.3", "air blast, 0, 30", "ice water, 0, 1040", "no film at all, 0, 100000"})
    void aJointIsStillTooWarmAfterTwoAndAHalfHours(String name, double celsius, double coefficient) {
        // 100 mm thick, 160 x 150 mm: 2.5 kg
        Piece joint = new Piece(
                new Shape.Box(0.160, 0.150, 0.100),
                new InitialState(Temperature.fromCelsius(74), 0.70 / 0.30, 0),
                MeatHeat.of(new Composition(0.70, 0.23, 0.06, 0, 0.01)),
                new SaltProperties(1e-10, 0, 1, 0, 0),
                true,
                0);
        Stage chill = new Stage(
                "chill",
                List.of(FaceCondition.convection(Temperature.fromCelsius(celsius), coefficient)),
                SaltExchange.NONE,
                TWO_AND_A_HALF_HOURS,
                StopRule.NEVER);
        History history = Simulation.run(joint, List.of(chill), SolverSettings.DEFAULT, SimulationOutput.every(60));
        double core = history.at(History.Series.CORE_TEMPERATURE, TWO_AND_A_HALF_HOURS);
        assertThat(core).as(name).isGreaterThan(Temperature.fromCelsius(10));
    }
}
