package io.github.saltfront.plan;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.data.DataException;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import java.util.List;

/**
 * What hot food is cooled in. Evaporation is left out: food is covered or bagged, and an open pan cools faster than predicted.
 *
 * @param id key
 * @param name plain name
 * @param temperature temperature it holds while the food is in it [K]
 * @param coefficient heat transfer coefficient, radiation included [W/(m2.K)]; its low end decides
 * @param coolsTop whether the top of a pot gives heat off too; not so in a bath, where it stands in the air of the room
 */
public record CoolingMedium(String id, String name, double temperature, Band coefficient, boolean coolsTop) {
    /** Key of the refrigerator. */
    public static final String REFRIGERATOR = "refrigerator";

    /** Key of the ice bath. */
    public static final String ICE_BATH = "ice-bath";

    /** Checks the values. */
    public CoolingMedium {
        Checks.requireInRange("temperature of the medium", temperature, 250, 300, "K");
        Checks.requirePositive("heat transfer coefficient", coefficient.low(), "W/(m2.K)");
    }

    /** Reads the table. */
    public static List<CoolingMedium> load() {
        return CsvTable.load(CoolingMedium.class, "cooling_media.csv").rows().stream()
                .map(row -> new CoolingMedium(
                        row.text("id"),
                        row.words("name"),
                        Temperature.fromCelsius(row.number("temperature_c")),
                        new Band(row.number("h_low_w_m2k"), row.number("h_typical_w_m2k"), row.number("h_high_w_m2k")),
                        row.text("cools_top").equals("yes")))
                .toList();
    }

    /**
     * Returns a medium of the table.
     *
     * @param id its key
     * @return the medium
     * @throws DataException if there is none
     */
    public static CoolingMedium get(String id) {
        return load().stream()
                .filter(medium -> medium.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new DataException("no cooling medium \"" + id + "\"; there are "
                        + load().stream().map(CoolingMedium::id).toList() + "."));
    }

    /**
     * Returns the medium at another temperature.
     *
     * @param kelvin temperature [K]
     * @return the medium
     */
    public CoolingMedium at(double kelvin) {
        return new CoolingMedium(id, name, kelvin, coefficient, coolsTop);
    }
}
