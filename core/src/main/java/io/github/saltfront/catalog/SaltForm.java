package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Provenance;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;

/**
 * A grain type of salt: what a level spoon of it weighs.
 *
 * @param id key
 * @param name plain name
 * @param aliases other words
 * @param bulkDensity mass per volume as spooned, voids included [kg/m3]
 * @param sodiumFraction sodium per mass of the salt as sold [kg/kg]
 * @param provenance where it comes from
 */
public record SaltForm(
        String id, String name, List<String> aliases, Band bulkDensity, double sodiumFraction, Provenance provenance)
        implements CatalogEntry {
    private static final Phrases PHRASES = Phrases.of(SaltForm.class);

    /** Sodium of pure sodium chloride [kg/kg] (IUPAC atomic weights: 22.9898/58.4428). */
    public static final double SODIUM_OF_PURE_SALT = 0.39337;

    /** Volume of the teaspoon of a US nutrition label [m3] (21 CFR 101.9(b)(5)(viii)). */
    private static final double LABEL_TEASPOON = 5e-6;

    /** Volume of the US teaspoon in which the table is given [m3]. */
    private static final double US_TEASPOON = 4.92892e-6;

    /** Declared grams are printed to a tenth. */
    private static final double HALF_TENTH_GRAM = 0.05e-3;

    /** Copies the aliases; bulk density lies below that of a solid crystal, 2165 kg/m3. */
    public SaltForm {
        aliases = List.copyOf(aliases);
        Checks.requireInRange("bulk density of salt", bulkDensity.low(), 100, 2165, "kg/m3");
        Checks.requireInRange("bulk density of salt", bulkDensity.high(), 100, 2165, "kg/m3");
        Checks.requireInRange("sodium fraction of salt", sodiumFraction, 0, 0.4, "kg/kg");
    }

    static SaltForm read(CsvTable.Row row) {
        return new SaltForm(
                row.text("id"),
                row.words("name"),
                Cells.aliases(row),
                new Band(
                                Cells.grams(row, "g_per_tsp_low"),
                                Cells.grams(row, "g_per_tsp"),
                                Cells.grams(row, "g_per_tsp_high"))
                        .times(1 / US_TEASPOON),
                row.number("sodium_fraction"),
                Provenance.of(row));
    }

    /**
     * Grain type from the sodium on its nutrition label.
     * <pre>bulk density = sodium / 0.39337 / volume</pre>
     * Declared sodium is rounded to 5 mg up to 140 mg and to 10 mg above (21 CFR 101.9(c)(4)); half of that step is the
     * band. Not for blends with potassium chloride, whose sodium says nothing about their mass.
     *
     * @param labelTeaspoons serving on the label in teaspoons, such as 0.25 [-]
     * @param sodium sodium of the serving as declared [kg]
     * @return the grain type, id {@code from-label}
     */
    public static SaltForm fromLabelSodium(double labelTeaspoons, double sodium) {
        Checks.requireInRange("serving", labelTeaspoons, 0.01, 100, "teaspoons");
        Checks.requireInRange("sodium of the serving", sodium, 5e-6, 1, "kg");
        double step = sodium <= 140e-6 ? 5e-6 : 10e-6;
        return fromLabel(
                labelTeaspoons, new Band(sodium - step / 2, sodium, sodium + step / 2).times(1 / SODIUM_OF_PURE_SALT));
    }

    /**
     * Grain type from the grams of a serving on its nutrition label. Grams are rounded to a tenth, so that
     * {@link #fromLabelSodium} is three to five times more precise.
     *
     * @param labelTeaspoons serving on the label in teaspoons [-]
     * @param mass mass of the serving as declared [kg]
     * @return the grain type, id {@code from-label}
     */
    public static SaltForm fromLabelMass(double labelTeaspoons, double mass) {
        Checks.requireInRange("serving", labelTeaspoons, 0.01, 100, "teaspoons");
        Checks.requireInRange("mass of the serving", mass, 2 * HALF_TENTH_GRAM, 1, "kg");
        return fromLabel(labelTeaspoons, new Band(mass - HALF_TENTH_GRAM, mass, mass + HALF_TENTH_GRAM));
    }

    private static SaltForm fromLabel(double labelTeaspoons, Band servingMass) {
        return new SaltForm(
                "from-label",
                PHRASES.say("salt-by-its-label"),
                List.of(),
                servingMass.times(1 / (labelTeaspoons * LABEL_TEASPOON)),
                SODIUM_OF_PURE_SALT,
                new Provenance(
                        List.of("cfr21-101-9"),
                        PHRASES.say("b-5-viii-c-4"),
                        Provenance.Confidence.READ_IN_SOURCE,
                        PHRASES.say("the-packet-s-own-label")));
    }

    /**
     * Mass of a volume of this salt [kg].
     *
     * @param volume volume as spooned, level [m3]
     * @return mass with its band [kg]
     */
    public Band massOf(double volume) {
        return bulkDensity.times(volume);
    }

    /**
     * Volume that holds a mass of this salt, at the typical bulk density [m3].
     *
     * @param mass mass [kg], not negative
     * @return volume [m3]
     */
    public double volumeOf(double mass) {
        Checks.requireInRange("mass of salt", mass, 0, 1e6, "kg");
        return mass / bulkDensity.typical();
    }
}
