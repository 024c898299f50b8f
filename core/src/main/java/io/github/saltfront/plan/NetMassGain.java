package io.github.saltfront.plan;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * How much heavier or lighter lean meat becomes in brine of a strength, when given time, by straight lines between the rows of
 * net_mass_gain.csv. The table is a judgement through few published points; its band is wide and must be shown.
 *
 * <p>The solver wants the water alone. A kg of raw meat holds the water x, the salt s0 and the dry solids 1 - x - s0. It gains
 * the mass g = water gained v plus salt gained. At equilibrium with a brine of r salt per water, the salt of the meat is
 * {@code K r (x + v)}, hence
 *
 * <pre>
 * g = v + K r (x + v) - s0
 * v = (g + s0 - K r x) / (1 + K r)
 * excess water per dry solids = v / (1 - x - s0)
 * </pre>
 *
 * <p>The soluble protein lost is part of g but is left out of the balance: v is low by it, below one point of the raw mass. In
 * strong brine v is negative although salt still goes in.
 *
 * <p>Validity: strength 0 to 0.26 kg/kg; above it, up to saturation at the boiling point, the last line is carried on
 * ({@link #isTabulatedAt}).
 */
public final class NetMassGain {
    private static final double HIGHEST = 0.2846;

    private final List<Row> rows;

    private NetMassGain(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    /** Reads the table. */
    public static NetMassGain load() {
        return new NetMassGain(CsvTable.load(NetMassGain.class, "net_mass_gain.csv").rows().stream()
                .map(r -> new Row(
                        r.number("brine_pct") / 100,
                        new Band(
                                r.number("gain_low_pct") / 100,
                                r.number("gain_pct") / 100,
                                r.number("gain_high_pct") / 100)))
                .toList());
    }

    /**
     * Returns the net gain with its band, per raw mass [kg/kg]; negative if the meat becomes lighter.
     *
     * @param saltFraction salt per mass of solution [kg/kg], 0 to 0.2846
     * @return the gain
     */
    public Band at(double saltFraction) {
        return new Band(gain(saltFraction, -1), gain(saltFraction, 0), gain(saltFraction, 1));
    }

    /**
     * Returns the net gain at a place in its band, per raw mass [kg/kg].
     *
     * @param saltFraction salt per mass of solution [kg/kg], 0 to 0.2846
     * @param bandPosition -1 for the low end, 0 for the central value, 1 for the high end; straight lines between [-]
     * @return the gain
     */
    public double gain(double saltFraction, double bandPosition) {
        Checks.requireInRange("salt mass fraction", saltFraction, 0, HIGHEST, "kg/kg");
        Checks.requireInRange("place in the band", bandPosition, -1, 1, "-");
        int i = 1;
        while (i < rows.size() - 1 && saltFraction > rows.get(i).strength()) {
            i++;
        }
        Row below = rows.get(i - 1);
        Row above = rows.get(i);
        double share = (saltFraction - below.strength()) / (above.strength() - below.strength());
        double from = below.at(bandPosition);
        return from + share * (above.at(bandPosition) - from);
    }

    /**
     * Tells whether the strength lies within the table.
     *
     * @param saltFraction salt per mass of solution [kg/kg]
     * @return true inside
     */
    public boolean isTabulatedAt(double saltFraction) {
        return saltFraction >= 0 && saltFraction <= rows.get(rows.size() - 1).strength();
    }

    /**
     * Returns the water gained at equilibrium, v of the class comment, per raw mass [kg/kg].
     *
     * @param saltPerWater salt per water of the brine, r [kg/kg]
     * @param water water of the raw meat, x [kg/kg]
     * @param nativeSalt salt of the raw meat, s0 [kg/kg]
     * @param partition K [-]
     * @param bandPosition -1 to 1, see {@link #gain} [-]
     * @return water gained; negative if lost
     */
    public double waterGain(
            double saltPerWater, double water, double nativeSalt, double partition, double bandPosition) {
        Checks.requireInRange("salt per water", saltPerWater, 0, HIGHEST / (1 - HIGHEST), "kg/kg");
        double gain = gain(saltPerWater / (1 + saltPerWater), bandPosition);
        double inMeat = partition * saltPerWater;
        return (gain + nativeSalt - inMeat * water) / (1 + inMeat);
    }

    /**
     * Returns the swelling for the solver.
     *
     * @param water water of the raw meat, x [kg/kg]
     * @param nativeSalt salt of the raw meat, s0 [kg/kg]
     * @param partition K [-]
     * @param bandPosition -1 to 1, see {@link #gain} [-]
     * @return excess water per dry solids against salt per water of the brine
     */
    public SaltSource.Swelling swelling(double water, double nativeSalt, double partition, double bandPosition) {
        Checks.requireInRange("water of the meat", water, 0.05, 0.95, "kg/kg");
        Checks.requireInRange("salt of the meat", nativeSalt, 0, 0.15, "kg/kg");
        Checks.requireInRange("partition coefficient", partition, 0.1, 2, "-");
        Checks.requireInRange("place in the band", bandPosition, -1, 1, "-");
        double solids = Checks.requirePositive("dry solids of the meat", 1 - water - nativeSalt, "kg/kg");
        double highest = HIGHEST / (1 - HIGHEST);
        // a step that is tried and rejected may leave the physical range by a little
        return saltPerWater ->
                waterGain(Math.max(0, Math.min(highest, saltPerWater)), water, nativeSalt, partition, bandPosition)
                        / solids;
    }

    private record Row(double strength, Band gain) {
        double at(double position) {
            double end = position < 0 ? gain.low() : gain.high();
            return gain.typical() + Math.abs(position) * (end - gain.typical());
        }
    }
}
