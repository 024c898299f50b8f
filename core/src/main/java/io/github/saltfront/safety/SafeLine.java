package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Temperature;

/**
 * A first-order line on the safe side of an official hold table, for simulations that report log reductions without a declared
 * organism. It decides nothing: verdicts use {@link HoldTable}.
 */
public final class SafeLine {
    private static final double REFERENCE = Temperature.fromCelsius(60);
    private static final double SECONDS_PER_MINUTE = 60;

    private SafeLine() {}

    /**
     * Returns the line of a meat at unknown fat.
     *
     * @param meat the meat
     * @return decimal reduction time at 60 degrees Celsius and z value
     */
    public static FirstOrderKill of(Meat meat) {
        CsvTable.Row row = CsvTable.load(SafeLine.class, "safe_lines.csv").row("id", meat.name());
        return new FirstOrderKill(
                row.number("d_value_60c_min") * SECONDS_PER_MINUTE, REFERENCE, row.number("z_value_k"));
    }
}
