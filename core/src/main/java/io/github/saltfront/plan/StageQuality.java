package io.github.saltfront.plan;

import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.LayerSolver;

/**
 * Protein changes and dryness of a member at the end of a stage.
 *
 * @param myosin changed share of myosin, mean by volume [-]
 * @param sarcoplasmic changed share of sarcoplasmic proteins and collagen, mean by volume [-]
 * @param actin changed share of actin, mean by volume [-]
 * @param coreActin changed share of actin in the middle [-]
 * @param skinWater water per dry solids in the outermost {@link #SKIN} [kg/kg]
 */
public record StageQuality(double myosin, double sarcoplasmic, double actin, double coreActin, double skinWater) {
    /** Depth of what is called the skin or the surface [m]; estimate: skin of a bird is 0.5 to 1 mm. */
    public static final double SKIN = 0.0005;

    static StageQuality of(LayerSolver solver, int member, double extent, boolean changing) {
        LayerGrid grid = solver.grid();
        return new StageQuality(
                changing ? mean(solver, member, KajitaniJuice.Reaction.MYOSIN) : 0,
                changing ? mean(solver, member, KajitaniJuice.Reaction.SARCOPLASMIC) : 0,
                changing ? mean(solver, member, KajitaniJuice.Reaction.ACTIN) : 0,
                changing ? solver.cellExtent(member, grid.middleCell(0), KajitaniJuice.Reaction.ACTIN.ordinal()) : 0,
                skinWater(solver, member, extent));
    }

    private static double mean(LayerSolver solver, int member, KajitaniJuice.Reaction reaction) {
        LayerGrid grid = solver.grid();
        double sum = 0;
        for (int i = 0; i < grid.cells(); i++) {
            sum += grid.volume(i) * solver.cellExtent(member, i, reaction.ordinal());
        }
        return sum / grid.totalVolume();
    }

    /** Mean by dry mass over the outermost layers of the first face. */
    private static double skinWater(LayerSolver solver, int member, double extent) {
        LayerGrid grid = solver.grid();
        double water = 0;
        double volume = 0;
        for (int i = grid.cells() - 1; i >= 0; i--) {
            double top = extent * (1 - grid.edge(i + 1));
            double bottom = extent * (1 - grid.edge(i));
            double share = Math.min(1, (SKIN - top) / (bottom - top));
            if (share <= 0) {
                break;
            }
            volume += share * grid.volume(i);
            water += share * grid.volume(i) * solver.cellWater(member, i);
        }
        return water / volume;
    }
}
