package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Mean salt against time; the piece and the dose are invented. */
class SaltCurveTest {
    private static final double COLD = Temperature.fromCelsius(4);
    private static final double DOSE = 0.0075;
    private static final MeatModel MEAT = MeatModel.of(Catalog.load().cuts().get("beef-ribeye-steak"));

    /** The solver counts the salt of the raw meat on top of a unit of water and solids [kg/kg]. */
    private static final double START = MEAT.nativeSalt() / (1 + MEAT.nativeSalt());

    private static SaltCurve curve(double... hours) {
        List<DayEnsemble.StageFor> stages = java.util.Arrays.stream(hours)
                .mapToObj(h -> (DayEnsemble.StageFor) draw -> new Stage(
                        "dry-salt",
                        List.of(FaceCondition.convection(COLD, 10)),
                        h == hours[0] ? new SaltExchange.Dose(DOSE, 0.357) : SaltExchange.NONE,
                        3600 * h,
                        StopRule.NEVER))
                .toList();
        return new DayEnsemble(MEAT, new Shape.Slab(0.03), COLD, List.of(Draw.MEDIAN), SolverSettings.DEFAULT)
                .saltCurves(stages, Runnable::run)
                .get(0);
    }

    @Test
    void aStageOfNoTimeLeavesTheSaltAsItWas() {
        assertThat(curve(0).at(0)).isCloseTo(START, within(1e-12));
        assertThat(curve(0).at(7200)).isCloseTo(START, within(1e-12));
    }

    @Test
    void theDoseIsInAtTheEndAndTheEndHoldsOn() {
        SaltCurve curve = curve(24, 5);
        assertThat(curve.at(0)).isCloseTo(START, within(1e-12));
        // all of the dose, per mass of the salted meat; nothing evaporates
        double whole = (START + DOSE) / (1 + DOSE);
        // never more than the dose; a trace stays in the film on the face
        assertThat(curve.at(29 * 3600)).isBetween(0.99 * whole, whole * (1 + 1e-9));
        assertThat(curve.at(60 * 3600)).isEqualTo(curve.at(29 * 3600));
        assertThat(curve.at(3600)).isBetween(START, whole);
    }
}
