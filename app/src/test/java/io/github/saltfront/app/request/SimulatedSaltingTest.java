package io.github.saltfront.app.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.transport.History;
import io.github.saltfront.transport.Simulation;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Stages of salting in a simulation file. */
class SimulatedSaltingTest {
    private static final double FILM = 0.01;

    // buttermilk: 0.48 % salt and 90.13 % water, so 2 kg of it are 1.8026 kg of water with 9.6 g of salt
    @Test
    void buttermilkSaltsAsTheWaterAndTheSaltItHolds() {
        double buttermilk =
                salt("- {kind: soak, liquid: buttermilk, solution: 2 kg per kg meat, temperature: 4 C, time: 6 h}");
        double solution = 1.8026 + 0.0096;
        double water =
                salt(("- {kind: soak, strength: %.8f %% of solution, solution: %.4f kg per kg meat, temperature: 4 C,"
                                + " time: 6 h}")
                        .formatted(100 * 0.0096 / solution, solution));
        assertThat(buttermilk).isCloseTo(water, within(1e-6));
    }

    @Test
    void saltThatIsLeftGoesOnDissolvingInTheNextStage() {
        String dose = "- {kind: dry-salt, dose: 6 %%, temperature: 4 C, evaporation: off, time: %s}";
        String dry = "- {kind: air-dry, medium: 4 C, evaporation: off, time: 5 h}";
        double first = salt(dose.formatted("1 h"));
        double split = salt(dose.formatted("1 h") + "\n" + dry);
        double straight = salt(dose.formatted("6 h"));
        assertThat(straight).as("salt must be left after an hour").isGreaterThan(1.5 * first);
        // the film is rebuilt on what is left: its strength differs by a hundredth of saturation over what is left at
        // the end
        double left = 1 - straight * 1.06 / 0.06;
        assertThat(split).isCloseTo(straight, within(FILM / Math.max(0.1, left) * straight));
    }

    @Test
    void allOfTheDoseGoesInAtLast() {
        String stages = "- {kind: dry-salt, dose: 1 %, temperature: 4 C, evaporation: off, time: 10 min}\n"
                + "- {kind: air-dry, medium: 4 C, evaporation: off, time: 30 h}";
        // native 0.114 %: (0.00114 + 0.01) / 1.01
        assertThat(salt(stages)).isCloseTo((0.00114 + 0.01) / 1.01, within(2e-5));
    }

    @Test
    void bathWashesTheRestAway() {
        String stages = "- {kind: dry-salt, dose: 3 %, temperature: 4 C, evaporation: off, time: 10 min}\n"
                + "- {kind: soak-out, solution: 20 kg per kg meat, temperature: 4 C, time: 5 h}";
        assertThat(salt(stages)).isLessThan(0.01);
    }

    private static double salt(String stages) {
        String yaml = "piece:\n  shape: {kind: slab, thickness: 30 mm}\n  meat: chicken-breast-skinless\n"
                + "  start_temperature: 4 C\nstages:\n" + stages.indent(2) + "output: {every: 1 h, layers: 80}\n";
        SimulationFile file = SimulationFile.read(
                DocumentReader.read("simulation.yaml", yaml.getBytes(StandardCharsets.UTF_8), DocumentFormat.YAML),
                Catalog.load());
        History history = Simulation.run(file.piece(), file.stages(), file.settings(), file.output());
        return history.value(History.Series.MEAN_SALT, history.size() - 1);
    }
}
