package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Provenance;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * A spoon, cup or other volume.
 *
 * @param id key
 * @param name plain name
 * @param aliases other words
 * @param system whose measure it is
 * @param volume volume [m3]
 * @param provenance where it comes from
 */
public record Measure(
        String id, String name, List<String> aliases, UnitSystem system, double volume, Provenance provenance)
        implements CatalogEntry {
    /** Copies the aliases and checks the volume. */
    public Measure {
        aliases = List.copyOf(aliases);
        Checks.requirePositive("volume of a measure", volume, "m3");
    }

    static Measure read(CsvTable.Row row) {
        return new Measure(
                row.text("id"),
                row.words("name"),
                Cells.aliases(row),
                Cells.constant(UnitSystem.class, row, "system"),
                Cells.milliliters(row, "volume_ml"),
                Provenance.of(row));
    }

    /** Systems of kitchen measures. */
    public enum UnitSystem {
        /** US customary. */
        US,
        /** Metric. */
        METRIC,
        /** What a US nutrition label means by a spoon or cup. */
        LABEL
    }
}
