package io.github.saltfront.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes the polynomials of {@link HeatProperties}, so that another program can solve the same problem. */
public final class PropertyTable {
    private PropertyTable() {}

    /** Returns the header of the rows. */
    public static String header() {
        return "case,dry_density_kg_m3,water_kg_kg,c0_J_kgK,c1_J_kgK2,c2_J_kgK3,k0_W_mK,k1_W_mK2,k2_W_mK3"
                + ",water_activity";
    }

    /**
     * Returns the row of a material whose water and salt do not change.
     *
     * @param name name of the case
     * @param heat the properties
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return the row, heat capacities per dry solids
     */
    public static String row(String name, HeatProperties heat, double water, double salt) {
        StringBuilder row = new StringBuilder(name);
        add(row, heat.dryDensity());
        add(row, water);
        for (int k = 0; k < 3; k++) {
            add(row, heat.dryCapacity(k) + water * heat.waterCapacity(k) + salt * heat.saltCapacity(k));
        }
        for (int k = 0; k < 3; k++) {
            double byWater = k < 2 ? heat.conductivityOfWater(k) : 0;
            add(row, heat.conductivity(k) + (water - heat.rawWater()) * byWater);
        }
        add(row, SurfaceBalance.waterActivity(water, salt));
        return row.toString();
    }

    /** Returns points of the latent heat, which is a cubic in the solver, as CSV. */
    public static List<String> latentHeat() {
        List<String> lines = new ArrayList<>();
        lines.add("celsius,latent_heat_J_kg");
        for (int t = 0; t <= 150; t += 50) {
            lines.add(String.format(Locale.ROOT, "%d,%.17g", t, VaporRelations.latentHeat(t)));
        }
        return lines;
    }

    private static void add(StringBuilder row, double value) {
        row.append(String.format(Locale.ROOT, ",%.17g", value));
    }
}
