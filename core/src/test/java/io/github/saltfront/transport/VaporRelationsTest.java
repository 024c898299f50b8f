package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.matter.WaterVapor;
import io.github.saltfront.units.Temperature;
import org.junit.jupiter.api.Test;

class VaporRelationsTest {
    /** The cubic stands for a relation that itself agrees with steam tables within 0.4 kJ/kg; it may add as much. */
    @Test
    void cubicAddsNoMoreErrorThanTheRelationItselfHas() {
        for (double t = 0; t <= 150; t += 1) {
            assertThat(VaporRelations.latentHeat(t))
                    .isCloseTo(WaterVapor.latentHeat(Temperature.fromCelsius(t)), within(400.0));
        }
    }

    @Test
    void saturationPressureIsContinuousAtTheIcePointAndBoundedAbove() {
        assertThat(VaporRelations.saturationPressure(-1e-9))
                .isCloseTo(VaporRelations.saturationPressure(0), within(0.1));
        assertThat(VaporRelations.saturationPressure(900)).isEqualTo(VaporRelations.saturationPressure(370));
    }
}
