package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Checks;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Builds hold tables from the shipped official figures. */
final class OfficialHolds {
    private static final String GUIDELINE =
            "USDA FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-0014, 14 Dec 2021, ";
    private static final String FOOD_CODE =
            "FDA Food Code 3-401.11(B) as adopted in Washington Administrative Code 246-215-03400, 1 Mar 2022";
    private static final String FOOD_CODE_MINIMUM =
            "FDA Food Code 3-401.11(A)(1) as adopted in Washington Administrative Code 246-215-03400, 1 Mar 2022";
    private static final int HIGHEST_FAT_COLUMN = 12;
    private static final double POULTRY_LOG_REDUCTION = 7;

    private OfficialHolds() {}

    static HoldTable poultry(Bird bird, OptionalDouble fatFraction) {
        int column = fatColumn(fatFraction);
        Map<Double, Double> rows;
        String birds;
        String table;
        if (bird == Bird.OTHER) {
            rows = longer(rows("chicken", column), rows("turkey", column));
            birds = "Other poultry (longer of chicken and turkey)";
            table = "Tables 3 and 4 pp. 37-38";
        } else {
            String name = bird.name().toLowerCase(Locale.ROOT);
            rows = rows(name, column);
            birds = bird == Bird.CHICKEN ? "Chicken" : "Turkey";
            table = bird == Bird.CHICKEN ? "Table 3 p. 37" : "Table 4 p. 38";
        }
        return new HoldTable(
                birds + ", " + column + " % fat, 7-log10 Salmonella", GUIDELINE + table, POULTRY_LOG_REDUCTION, rows);
    }

    static HoldTable meat(String id) {
        Map<Double, Double> rows = new HashMap<>();
        double logReduction = 0;
        for (CsvTable.Row row : Tables.MEAT) {
            if (row.text("table").equals(id)) {
                rows.put(row.number("temperature_f"), row.number("hold_s"));
                logReduction = row.number("log10_reduction");
            }
        }
        return switch (id) {
            case "food-code-roast" ->
                new HoldTable("Whole meat roasts, food code chart", FOOD_CODE, logReduction, rows);
            case "meat-5-log" ->
                new HoldTable(
                        "Meat without poultry, 5-log10 Salmonella", GUIDELINE + "Table 6 p. 59", logReduction, rows);
            case "meat-7-log" ->
                new HoldTable(
                        "Meat without poultry, 7-log10 Salmonella", GUIDELINE + "Table 2 p. 35", logReduction, rows);
            default ->
                new HoldTable(
                        "Meat without poultry, 6.5-log10 Salmonella", GUIDELINE + "Table 2 p. 35", logReduction, rows);
        };
    }

    /** The one figure there is for fish: a temperature with its time, with no log reduction printed. */
    static HoldTable fish() {
        Map<Double, Double> rows = new HashMap<>();
        for (CsvTable.Row row :
                CsvTable.load(OfficialHolds.class, "food_code_minimums.csv").rows()) {
            if (row.text("class").equals(Meat.FISH.foodCodeClass())) {
                rows.put(row.number("temperature_f"), row.number("hold_s"));
            }
        }
        return new HoldTable("Fish, the one figure of the retail food code", FOOD_CODE_MINIMUM, 0, rows);
    }

    /** Returns the printed column that covers a fat content: the next higher one, the last one when not known. */
    static int fatColumn(OptionalDouble fatFraction) {
        if (fatFraction.isEmpty()) {
            return HIGHEST_FAT_COLUMN;
        }
        double percent = 100 * Checks.requireInRange("fat", fatFraction.getAsDouble(), 0, 1, "kg/kg");
        // 0.07 * 100 is a hair above 7 in binary; that must not ask for the 8 % column
        int column = (int) Math.ceil(percent - 1e-9);
        return Math.min(HIGHEST_FAT_COLUMN, Math.max(1, column));
    }

    private static Map<Double, Double> rows(String species, int column) {
        Map<Double, Double> rows = new HashMap<>();
        for (CsvTable.Row row : Tables.POULTRY) {
            if (row.text("species").equals(species) && row.number("fat_pct") == column) {
                rows.put(row.number("temperature_f"), row.number("hold_s"));
            }
        }
        return rows;
    }

    /** Takes the longer hold row by row, each table with the time it credits where it prints "under 10 s". */
    private static Map<Double, Double> longer(Map<Double, Double> first, Map<Double, Double> second) {
        double lastFirst = lastTimed(first);
        double lastSecond = lastTimed(second);
        Map<Double, Double> rows = new HashMap<>(first);
        rows.replaceAll((temperature, hold) -> {
            double other = second.getOrDefault(temperature, 0.0);
            boolean untimed = hold == 0 && other == 0;
            return untimed ? 0 : Math.max(hold == 0 ? lastFirst : hold, other == 0 ? lastSecond : other);
        });
        return rows;
    }

    private static double lastTimed(Map<Double, Double> rows) {
        return rows.values().stream()
                .mapToDouble(Double::doubleValue)
                .filter(hold -> hold > 0)
                .min()
                .orElseThrow();
    }

    /** The printed cells, read once when first needed. */
    private static final class Tables {
        static final List<CsvTable.Row> POULTRY =
                CsvTable.load(OfficialHolds.class, "poultry_holds.csv").rows();
        static final List<CsvTable.Row> MEAT =
                CsvTable.load(OfficialHolds.class, "meat_holds.csv").rows();

        private Tables() {}
    }
}
