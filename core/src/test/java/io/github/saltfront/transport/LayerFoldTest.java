package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A piece carried over between a symmetric grid and its slab with two faces: nothing is lost and nothing moves by it. */
class LayerFoldTest {
    private static final Composition MEAT = new Composition(0.74, 0.215, 0.03, 0.005, 0.01);
    private static final FaceCondition COLD = FaceCondition.convection(Temperature.fromCelsius(4), 8);
    private static final FaceCondition OVEN = new FaceCondition(
            TimeProfile.constant(Temperature.fromCelsius(150)), TimeProfile.constant(15), 0.9, 0.15, 2000, 101_325);
    private static final FaceCondition METAL = FaceCondition.boiling(
            TimeProfile.constant(Temperature.fromCelsius(200)),
            TimeProfile.constant(300),
            101_325,
            Temperature.fromCelsius(100));
    private static final FaceCondition AIR = FaceCondition.convection(Temperature.fromCelsius(40), 10);
    private static final SolverSettings SETTINGS =
            SolverSettings.DEFAULT.withKinetics(kelvin -> Math.pow(10, (kelvin - 333) / 6) / 60, new KajitaniJuice());
    private static final double HALF = 0.015;

    private static List<Member> members(double extent) {
        return List.of(member(extent), member(1.1 * extent));
    }

    private static Member member(double extent) {
        return new Member(
                extent,
                1,
                new InitialState(Temperature.fromCelsius(4), MEAT.waterPerSolids(), 0.004),
                MeatHeat.of(MEAT),
                new SaltProperties(3e-10, 25_000, 0.95, 1, 0),
                false);
    }

    /** Dry-salted for two hours with some salt left on the face, then half cooked in an oven. */
    private static LayerSolver half(double exponent) {
        LayerSolver solver = new LayerSolver(LayerGrid.symmetric(exponent, 20, 0.01), members(HALF), SETTINGS);
        run(solver, List.of(COLD), new SaltExchange.Dose(0.02, 0.35), 2 * 3600);
        run(solver, List.of(OVEN), SaltExchange.KEEP, 900);
        return solver;
    }

    private static void run(LayerSolver solver, List<FaceCondition> faces, SaltExchange salt, double time) {
        List<StageInput> inputs = java.util.stream.IntStream.range(0, solver.members())
                .mapToObj(l -> {
                    double mass = solver.massPerArea(l) / faces.size();
                    List<SaltSource> sources = java.util.stream.IntStream.range(0, faces.size())
                            .mapToObj(f -> salt.perFace(mass, solver.source(f, l), solver.reservoirStrength(f, l)))
                            .toList();
                    return new StageInput(faces, sources, time, StopRule.NEVER);
                })
                .toList();
        solver.run(inputs, (s, member, start, end) -> {});
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.6, 1.7})
    void eachLayerIsFoundOnEitherSideOfTheMiddle(double exponent) {
        LayerSolver half = half(exponent);
        LayerSolver whole = LayerFold.unfolded(half, members(2 * HALF), SETTINGS);
        for (int l = 0; l < 2; l++) {
            for (int i = 0; i < 20; i++) {
                for (int cell : List.of(20 + i, 19 - i)) {
                    assertThat(whole.cellTemperature(l, cell)).isEqualTo(half.cellTemperature(l, i));
                    assertThat(whole.cellWater(l, cell)).isEqualTo(half.cellWater(l, i));
                    assertThat(whole.cellSalt(l, cell)).isEqualTo(half.cellSalt(l, i));
                    assertThat(whole.cellKill(l, cell)).isEqualTo(half.cellKill(l, i));
                    assertThat(whole.cellExtent(l, cell, 0)).isEqualTo(half.cellExtent(l, i, 0));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.6, 1.7})
    void nothingIsLostInUnfoldingAndFoldingBack(double exponent) {
        LayerSolver half = half(exponent);
        LayerSolver whole = LayerFold.unfolded(half, members(2 * HALF), SETTINGS);
        LayerSolver back = LayerFold.folded(whole, half.grid(), members(HALF), SETTINGS);
        for (int l = 0; l < 2; l++) {
            for (LayerSolver other : List.of(whole, back)) {
                assertThat(other.meanSalt(l)).isCloseTo(half.meanSalt(l), within(1e-15));
                assertThat(other.meanTemperature(l)).isCloseTo(half.meanTemperature(l), within(1e-11));
                assertThat(other.massLoss(l)).isCloseTo(half.massLoss(l), within(1e-14));
                assertThat(other.evaporatedShare(l)).isCloseTo(half.evaporatedShare(l), within(1e-15));
                assertThat(other.drippedSaltShare(l)).isCloseTo(half.drippedSaltShare(l), within(1e-15));
                assertThat(other.leastKill(l)).isEqualTo(half.leastKill(l));
                assertThat(other.reservoirStrength(0, l))
                        .isGreaterThan(0)
                        .isCloseTo(half.reservoirStrength(0, l), within(1e-12));
            }
            assertThat(back.massPerArea(l)).isCloseTo(half.massPerArea(l), within(1e-12));
        }
    }

    /** Heat, salt and water are still accounted for after a pan on one side and an oven all around. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.6, 1.7})
    void balancesCloseOverUnfoldingAndFolding(double exponent) {
        LayerSolver half = half(exponent);
        LayerSolver whole = LayerFold.unfolded(half, members(2 * HALF), SETTINGS);
        run(whole, List.of(METAL, AIR), SaltExchange.KEEP, 180);
        LayerSolver back = LayerFold.folded(whole, half.grid(), members(HALF), SETTINGS);
        run(back, List.of(OVEN), SaltExchange.KEEP, 300);
        for (int l = 0; l < 2; l++) {
            BalanceError error = back.balanceError(l);
            assertThat(error.energy()).isLessThan(1e-12);
            assertThat(error.salt()).isLessThan(1e-12);
            assertThat(error.water()).isLessThan(1e-12);
        }
    }

    /** A slab with the same medium on both faces goes the same way in either grid, but for the last bits of its sums. */
    @Test
    void slabWithLikeFacesGoesOnAsItWouldHaveInTheSymmetricGrid() {
        LayerSolver half = half(0);
        LayerSolver whole = LayerFold.unfolded(half, members(2 * HALF), SETTINGS);
        run(whole, List.of(OVEN, OVEN), SaltExchange.KEEP, 600);
        run(half, List.of(OVEN), SaltExchange.KEEP, 600);
        for (int l = 0; l < 2; l++) {
            for (int i = 0; i < 20; i++) {
                for (int cell : List.of(20 + i, 19 - i)) {
                    assertThat(whole.cellTemperature(l, cell)).isCloseTo(half.cellTemperature(l, i), within(1e-9));
                    assertThat(whole.cellWater(l, cell)).isCloseTo(half.cellWater(l, i), within(1e-12));
                    assertThat(whole.cellSalt(l, cell)).isCloseTo(half.cellSalt(l, i), within(1e-12));
                }
            }
        }
    }
}
