package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Provenance;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Optional;

/**
 * A liquid for brines and marinades, before anything is added. Fractions are of its mass.
 *
 * @param id key
 * @param name plain name
 * @param aliases other words
 * @param parts what it is made of
 * @param acid its acid
 * @param density density near room temperature [kg/m3]
 * @param allergens what it holds by its nature; a packet may hold more
 * @param provenance where it comes from
 */
public record Liquid(
        String id,
        String name,
        List<String> aliases,
        Parts parts,
        Acid acid,
        double density,
        List<Allergen> allergens,
        Provenance provenance)
        implements CatalogEntry {
    private static final Phrases PHRASES = Phrases.of(Liquid.class);

    /** Copies the lists and checks the density. */
    public Liquid {
        aliases = List.copyOf(aliases);
        allergens = List.copyOf(allergens);
        Checks.requireInRange("density of a liquid", density, 900, 1500, "kg/m3");
    }

    static Liquid read(CsvTable.Row row) {
        return new Liquid(
                row.text("id"),
                row.words("name"),
                Cells.aliases(row),
                new Parts(
                        Cells.percent(row, "water_pct"),
                        Cells.percent(row, "sugar_pct"),
                        Cells.percent(row, "protein_pct"),
                        Cells.percent(row, "fat_pct"),
                        Cells.percent(row, "salt_equivalent_pct"),
                        Cells.percent(row, "ethanol_pct")),
                new Acid(
                        row.text("acid"),
                        Cells.findRange(row, "acid_low_pct", "acid_high_pct", 0.01)
                                .orElseThrow(),
                        Cells.findRange(row, "ph_low", "ph_high", 1)),
                row.number("density_kg_per_l") * 1000,
                Cells.list(row, "allergens").stream()
                        .map(a -> Cells.constant(Allergen.class, a, PHRASES.say("liquids-csv-line", row.line())))
                        .toList(),
                Provenance.of(row));
    }

    /** Salt in the water of the liquid, which is what meat feels [kg/kg of water and salt]. */
    public double waterPhaseSalt() {
        return parts.salt() / (parts.water() + parts.salt());
    }

    /**
     * What a liquid is made of.
     *
     * @param water water [kg/kg]
     * @param sugar sugars [kg/kg]
     * @param protein protein [kg/kg]
     * @param fat fat [kg/kg]
     * @param salt sodium as sodium chloride [kg/kg]
     * @param ethanol ethanol [kg/kg]
     */
    public record Parts(double water, double sugar, double protein, double fat, double salt, double ethanol) {
        /** Checks that fractions lie in 0 to 1 and do not add up to more than about 1. */
        public Parts {
            Checks.requireInRange("water", water, 0, 1, "kg/kg");
            Checks.requireInRange("sugar", sugar, 0, 1, "kg/kg");
            Checks.requireInRange("protein", protein, 0, 1, "kg/kg");
            Checks.requireInRange("fat", fat, 0, 1, "kg/kg");
            Checks.requireInRange("salt", salt, 0, 0.3, "kg/kg");
            Checks.requireInRange("ethanol", ethanol, 0, 0.5, "kg/kg");
            Checks.requireInRange("sum of parts", water + sugar + protein + fat + salt + ethanol, 0, 1.02, "kg/kg");
        }
    }

    /**
     * Acid of a liquid.
     *
     * @param name main acid, empty if none counts
     * @param fraction acid, middle is the mean of the printed ends [kg/kg]
     * @param acidity pH range, if known [-]
     */
    public record Acid(String name, Band fraction, Optional<Band> acidity) {
        /** Tells whether soaks in it must be short: pH below 3.5 (common practice, no source). */
        public boolean isStrong() {
            return acidity.isPresent() && acidity.get().typical() < 3.5;
        }
    }

    /** Allergens a liquid holds by its nature (US and EU law). */
    public enum Allergen {
        /** Milk. */
        MILK,
        /** Soy. */
        SOY,
        /** Cereals with gluten. */
        GLUTEN,
        /** Fish. */
        FISH,
        /** Sulfites. */
        SULFITES
    }
}
