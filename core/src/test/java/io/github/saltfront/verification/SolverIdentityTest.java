package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.FrozenState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must be equal by reason alone: two faces and one, mirrored faces, a member alone and in a batch, a stage cut in two. */
class SolverIdentityTest {
    private static final SolverSettings KINETICS =
            SolverSettings.DEFAULT.withKinetics(TestKinetics::killRate, new TestKinetics());

    private static Member member(double extent, double start, boolean fixed) {
        return VariablePiece.member(extent, start, 0.002, fixed, FrozenState.NONE);
    }

    private static void run(LayerSolver solver, List<List<StageInput>> days) {
        for (int stage = 0; stage < days.get(0).size(); stage++) {
            List<StageInput> inputs = new ArrayList<>();
            for (List<StageInput> day : days) {
                inputs.add(day.get(stage));
            }
            solver.run(inputs, StepSink.NONE);
        }
    }

    @Test
    void twoEqualFacesEqualASymmetricPiece() {
        LayerSolver half =
                new LayerSolver(LayerGrid.symmetric(0, 30, 1.0 / 120), List.of(member(0.015, 5, false)), KINETICS);
        LayerSolver whole =
                new LayerSolver(LayerGrid.twoFaced(60, 1.0 / 240), List.of(member(0.03, 5, false)), KINETICS);
        run(half, List.of(Days.whole(1, 0.06, 0.2, 180)));
        run(whole, List.of(Days.whole(2, 0.06, 0.2, 180)));
        for (int i = 0; i < 30; i++) {
            assertThat(whole.cellTemperature(0, 30 + i)).isCloseTo(half.cellTemperature(0, i), within(1e-8));
            assertThat(whole.cellTemperature(0, 29 - i)).isCloseTo(half.cellTemperature(0, i), within(1e-8));
            assertThat(whole.cellSalt(0, 30 + i)).isCloseTo(half.cellSalt(0, i), within(1e-11));
            assertThat(whole.cellWater(0, 29 - i)).isCloseTo(half.cellWater(0, i), within(1e-10));
        }
        assertThat(whole.coreTemperature(0)).isCloseTo(half.coreTemperature(0), within(1e-8));
        assertThat(whole.massLoss(0)).isCloseTo(half.massLoss(0), within(1e-10));
    }

    @Test
    void exchangedFacesMirrorThePiece() {
        FaceCondition pan = FaceCondition.convection(Temperature.fromCelsius(200), 300);
        FaceCondition air = Days.air(TimeProfile.constant(Temperature.fromCelsius(21)), 8, 0.9, 0.3, 1200);
        SaltSource dose = new SaltSource.Dose(0.1, 0.36);
        LayerSolver a = new LayerSolver(
                LayerGrid.twoFaced(40, 1.0 / 160), List.of(member(0.03, 5, false)), SolverSettings.DEFAULT);
        LayerSolver b = new LayerSolver(
                LayerGrid.twoFaced(40, 1.0 / 160), List.of(member(0.03, 5, false)), SolverSettings.DEFAULT);
        a.run(
                List.of(new StageInput(List.of(pan, air), List.of(SaltSource.NONE, dose), 240, StopRule.NEVER)),
                StepSink.NONE);
        b.run(
                List.of(new StageInput(List.of(air, pan), List.of(dose, SaltSource.NONE), 240, StopRule.NEVER)),
                StepSink.NONE);
        for (int i = 0; i < 40; i++) {
            assertThat(a.cellTemperature(0, i)).isCloseTo(b.cellTemperature(0, 39 - i), within(1e-8));
            assertThat(a.cellSalt(0, i)).isCloseTo(b.cellSalt(0, 39 - i), within(1e-11));
            assertThat(a.cellWater(0, i)).isCloseTo(b.cellWater(0, 39 - i), within(1e-10));
        }
    }

    /** Alone and in a batch, to the last bit, over a day in which the members end their stages at different times. */
    @Test
    void aMemberOfABatchEqualsItselfAloneToTheLastBit() {
        LayerGrid grid = LayerGrid.symmetric(0.7, 24, 1.0 / 96);
        List<Member> members = List.of(member(0.012, 5, false), member(0.03, 2, false), member(0.02, 8, false));
        List<List<StageInput>> days = new ArrayList<>();
        for (int l = 0; l < 3; l++) {
            List<StageInput> day = new ArrayList<>(Days.whole(1, 0.03 * (l + 1), 0.1 + 0.1 * l, 150 + 40 * l));
            day.set(3, day.get(3).until(new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(55 + 5 * l))));
            days.add(day);
        }
        LayerSolver batch = new LayerSolver(grid, members, KINETICS);
        run(batch, days);
        for (int l = 0; l < 3; l++) {
            LayerSolver alone = new LayerSolver(grid, List.of(members.get(l)), KINETICS);
            run(alone, List.of(days.get(l)));
            assertThat(fingerprint(batch, l)).containsExactly(fingerprint(alone, 0));
        }
    }

    private static double[] fingerprint(LayerSolver solver, int member) {
        int cells = solver.grid().cells();
        double[] values = new double[4 * cells + 8];
        for (int i = 0; i < cells; i++) {
            values[4 * i] = solver.cellTemperature(member, i);
            values[4 * i + 1] = solver.cellSalt(member, i);
            values[4 * i + 2] = solver.cellWater(member, i);
            values[4 * i + 3] = solver.cellKill(member, i);
        }
        int k = 4 * cells;
        values[k] = solver.steps(member);
        values[k + 1] = solver.rejectedSteps(member);
        values[k + 2] = solver.stageTime(member);
        values[k + 3] = solver.massLoss(member);
        values[k + 4] = solver.evaporatedShare(member);
        values[k + 5] = solver.coreTemperature(member);
        values[k + 6] = solver.faceTemperature(0, member);
        values[k + 7] = solver.reservoirStrength(0, member);
        return values;
    }

    @Test
    void aStageCutInTwoEqualsTheWholeWithinTheTolerance() {
        StageInput whole = Days.whole(1, 0.06, 0.2, 180).get(3);
        Resolution tight = new Resolution(40, 1.0 / 160, 1e-4, 1e-7);
        double[] once = coreAndMean(tight, List.of(whole.duration()));
        double[] twice = coreAndMean(tight, List.of(whole.duration() * 0.37, whole.duration() * 0.63));
        assertThat(twice[0]).isCloseTo(once[0], within(20 * tight.temperature()));
        assertThat(twice[1]).isCloseTo(once[1], within(20 * tight.temperature()));
    }

    private static double[] coreAndMean(Resolution resolution, List<Double> durations) {
        LayerSolver solver =
                new LayerSolver(resolution.grid(1), List.of(member(0.02, 5, false)), resolution.settings());
        FaceCondition oven = Days.air(TimeProfile.constant(Temperature.fromCelsius(180)), 20, 0.9, 0.2, 3000);
        for (double duration : durations) {
            solver.run(List.of(StageInput.of(oven, duration)), StepSink.NONE);
        }
        return new double[] {solver.coreTemperature(0), solver.meanTemperature(0)};
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.8, 1, 2})
    void energySaltAndWaterAreKeptToRoundOffOverADay(double exponent) {
        assertBalanced(LayerGrid.symmetric(exponent, 40, 1.0 / 160), 1, 5, FrozenState.NONE);
    }

    @Test
    void balancesHoldWithTwoFaces() {
        assertBalanced(LayerGrid.twoFaced(40, 1.0 / 160), 2, 5, FrozenState.NONE);
    }

    @Test
    void balancesHoldFromAFrozenStart() {
        assertBalanced(LayerGrid.symmetric(1, 40, 1.0 / 160), 1, -18, new RoundIce());
    }

    private static void assertBalanced(LayerGrid grid, int faces, double startC, FrozenState ice) {
        Member member = VariablePiece.member(0.02, startC, 0.002, false, ice);
        LayerSolver solver = new LayerSolver(grid, List.of(member), KINETICS);
        run(solver, List.of(Days.whole(faces, 0.06, 0.2, 180)));
        assertThat(solver.balanceError(0).energy()).isLessThan(1e-12);
        assertThat(solver.balanceError(0).salt()).isLessThan(1e-12);
        assertThat(solver.balanceError(0).water()).isLessThan(1e-12);
        double[] values = fingerprint(solver, 0);
        assertThat(Arrays.stream(values).allMatch(Double::isFinite)).isTrue();
    }

    /** A medium that jumps, as in turning a steak, must not cost more than a restart at each turn. */
    @Test
    void turnsCostNoMoreStepsThanSeparateStages() {
        LayerSolver turned = VariablePiece.solver(LayerGrid.symmetric(0, 40, 1.0 / 160), SolverSettings.DEFAULT);
        TimeProfile alternating =
                new TimeProfile.Alternating(Temperature.fromCelsius(180), Temperature.fromCelsius(30), 60);
        turned.run(List.of(StageInput.of(FaceCondition.convection(alternating, 200), 600)), StepSink.NONE);
        LayerSolver separate = VariablePiece.solver(LayerGrid.symmetric(0, 40, 1.0 / 160), SolverSettings.DEFAULT);
        for (int i = 0; i < 10; i++) {
            double kelvin = Temperature.fromCelsius(i % 2 == 0 ? 180 : 30);
            separate.run(List.of(StageInput.of(FaceCondition.convection(kelvin, 200), 60)), StepSink.NONE);
        }
        // each restart may cost the growth from a small first step
        assertThat(turned.steps(0) + turned.rejectedSteps(0))
                .isLessThan(2 * (separate.steps(0) + separate.rejectedSteps(0)));
        for (int i = 0; i < 40; i++) {
            assertThat(turned.cellTemperature(0, i)).isCloseTo(separate.cellTemperature(0, i), within(0.02));
        }
    }
}
