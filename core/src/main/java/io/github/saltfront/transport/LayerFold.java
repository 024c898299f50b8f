package io.github.saltfront.transport;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Checks;
import java.util.List;
import java.util.stream.Stream;

/**
 * Carries pieces over between a symmetric grid and the slab with two faces that it unfolds to ({@link LayerGrid#unfolded}), so
 * that two faces are computed only while they meet different things. Layers answer one to one and hold the same share of the
 * mass: unfolding copies the state of each layer to either side of the middle, to the last bit; folding takes the mean of the
 * two and of their kill the lesser. Salt, water and enthalpy are conserved both ways, in the piece and on its faces.
 *
 * <p>A finite piece has more face for its mass than the slab, by m + 1 with the exponent m of its grid; what lies on a face or went
 * through it is spread over the area there is. A slab's layers keep their depths, those of other pieces lie deeper by up to that
 * factor. The crust keeps its thickness.
 */
public final class LayerFold {
    private LayerFold() {}

    /**
     * Returns a solver with two faces that goes on where one of a symmetric grid is.
     *
     * @param half the solver between two stages; not modified
     * @param members the same members for a grid with two faces: twice the extent
     * @param settings tolerances and kinetics
     * @return the solver
     */
    public static LayerSolver unfolded(LayerSolver half, List<Member> members, SolverSettings settings) {
        LayerSolver whole = new LayerSolver(half.grid().unfolded(), members, settings);
        double perFace = half.grid().exponent() + 1;
        int cells = half.block.cells;
        for (int i = 0; i < cells; i++) {
            copyCell(half.block, i, whole.block, cells + i);
            copyCell(half.block, i, whole.block, cells - 1 - i);
        }
        for (int f = 0; f < 2; f++) {
            for (int l = 0; l < half.members(); l++) {
                copyFace(half, 0, whole, f, l, perFace);
            }
        }
        takeAccounts(half, whole);
        return whole;
    }

    /**
     * Returns a solver of a symmetric grid that goes on where one with two faces is.
     *
     * @param whole the solver between two stages; not modified
     * @param grid the symmetric grid from which it was unfolded
     * @param members the same members for that grid
     * @param settings tolerances and kinetics
     * @return the solver
     */
    public static LayerSolver folded(LayerSolver whole, LayerGrid grid, List<Member> members, SolverSettings settings) {
        Checks.require(
                whole.grid().isTwoFaced() && whole.grid().cells() == 2 * grid.cells() && !grid.isTwoFaced(),
                "a grid of " + whole.grid().cells() + " layers cannot be folded to one of " + grid.cells() + ".");
        LayerSolver half = new LayerSolver(grid, members, settings);
        int cells = grid.cells();
        for (int i = 0; i < cells; i++) {
            meanOfCells(whole.block, cells + i, cells - 1 - i, half.block, i);
        }
        for (int l = 0; l < half.members(); l++) {
            joinFaces(whole, half, l, grid.exponent() + 1);
        }
        takeAccounts(whole, half);
        half.refreshTemperatures();
        return half;
    }

    private static Stream<double[][]> perCell(LaneBlock block) {
        Stream<double[][]> state =
                Stream.of(block.enthalpy, block.temperature, block.capacity, block.water, block.expelled);
        return Stream.concat(state, Stream.of(block.extents));
    }

    private static void copyCell(LaneBlock from, int cell, LaneBlock to, int target) {
        List<double[][]> source =
                Stream.concat(perCell(from), Stream.of(from.kill)).toList();
        List<double[][]> copy = Stream.concat(perCell(to), Stream.of(to.kill)).toList();
        for (int k = 0; k < source.size(); k++) {
            System.arraycopy(source.get(k)[cell], 0, copy.get(k)[target], 0, from.lanes);
        }
        System.arraycopy(from.slotSalt[cell + 1], 0, to.slotSalt[target + 1], 0, from.lanes);
    }

    private static void meanOfCells(LaneBlock from, int first, int second, LaneBlock to, int target) {
        List<double[][]> source = perCell(from).toList();
        List<double[][]> mean = perCell(to).toList();
        for (int l = 0; l < from.lanes; l++) {
            for (int k = 0; k < source.size(); k++) {
                mean.get(k)[target][l] = 0.5 * (source.get(k)[first][l] + source.get(k)[second][l]);
            }
            to.slotSalt[target + 1][l] = 0.5 * (from.slotSalt[first + 1][l] + from.slotSalt[second + 1][l]);
            for (int k = 0; k < from.kill.length; k++) {
                to.kill[k][target][l] = Math.min(from.kill[k][first][l], from.kill[k][second][l]);
            }
        }
    }

    private static void copyFace(LayerSolver from, int face, LayerSolver to, int target, int lane, double factor) {
        LaneBlock a = from.block;
        LaneBlock b = to.block;
        b.filmWater[target][lane] = factor * a.filmWater[face][lane];
        b.juiceRate[target][lane] = factor * a.juiceRate[face][lane];
        b.unfed[target][lane] = factor * a.unfed[face][lane];
        b.feedTime[target][lane] = a.feedTime[face][lane];
        b.filmSalt[target][lane] = factor * a.filmSalt[face][lane];
        b.heatIn[target][lane] = factor * a.heatIn[face][lane];
        b.evaporated[target][lane] = factor * a.evaporated[face][lane];
        b.boiled[target][lane] = a.boiled[face][lane];
        b.reservoirWater[target][lane] = factor * a.reservoirWater[face][lane];
        b.slotSalt[b.faceSlot(target)][lane] = factor * a.slotSalt[a.faceSlot(face)][lane];
        to.stepper.salt.setSource(
                target, lane, from.stepper.salt.source(face, lane).times(factor));
    }

    /** Spreads what lies on two faces over the one of a finite piece. */
    private static void joinFaces(LayerSolver from, LayerSolver to, int lane, double perFace) {
        double share = 0.5 / perFace;
        LaneBlock a = from.block;
        LaneBlock b = to.block;
        b.filmWater[0][lane] = share * (a.filmWater[0][lane] + a.filmWater[1][lane]);
        b.juiceRate[0][lane] = share * (a.juiceRate[0][lane] + a.juiceRate[1][lane]);
        b.unfed[0][lane] = share * (a.unfed[0][lane] + a.unfed[1][lane]);
        b.feedTime[0][lane] = Math.max(a.feedTime[0][lane], a.feedTime[1][lane]);
        b.filmSalt[0][lane] = share * (a.filmSalt[0][lane] + a.filmSalt[1][lane]);
        b.heatIn[0][lane] = share * (a.heatIn[0][lane] + a.heatIn[1][lane]);
        b.evaporated[0][lane] = share * (a.evaporated[0][lane] + a.evaporated[1][lane]);
        b.boiled[0][lane] = 0.5 * (a.boiled[0][lane] + a.boiled[1][lane]);
        b.reservoirWater[0][lane] = share * (a.reservoirWater[0][lane] + a.reservoirWater[1][lane]);
        b.slotSalt[b.faceSlot(0)][lane] = share * (a.slotSalt[a.faceSlot(0)][lane] + a.slotSalt[a.faceSlot(1)][lane]);
        to.stepper.salt.setSource(0, lane, from.stepper.salt.source(0, lane).times(1 / perFace));
    }

    private static void takeAccounts(LayerSolver from, LayerSolver to) {
        double[] factor = new double[from.members()];
        for (int l = 0; l < factor.length; l++) {
            factor[l] = to.block.dryPerArea[l]
                    * to.grid().totalVolume()
                    / (from.block.dryPerArea[l] * from.grid().totalVolume());
            to.block.dripWater[l] = factor[l] * from.block.dripWater[l];
            to.block.dripSalt[l] = factor[l] * from.block.dripSalt[l];
            to.block.dripEnthalpy[l] = factor[l] * from.block.dripEnthalpy[l];
            to.steps[l] = from.steps[l];
            to.rejected[l] = from.rejected[l];
        }
        to.balance.takeOver(from.balance, factor);
    }
}
