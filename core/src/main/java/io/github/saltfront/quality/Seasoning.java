package io.github.saltfront.quality;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Checks;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How salty meat tastes: targets, the band judged just right, the difference that can be tasted, and the salt kept on
 * cooking. All fractions are mass fractions [kg/kg]; levels come from {@code seasoning.csv}.
 */
public final class Seasoning {
    private final Map<String, Level> levels;

    private Seasoning(Map<String, Level> levels) {
        this.levels = levels;
    }

    /** Reads the table; percent become fractions. */
    public static Seasoning load() {
        Map<String, Level> read = new LinkedHashMap<>();
        for (CsvTable.Row row : CsvTable.load(Seasoning.class, "seasoning.csv").rows()) {
            double unit = row.text("unit").startsWith("%") ? 0.01 : 1;
            Band band = new Band(
                    row.number("value_low") * unit, row.number("value") * unit, row.number("value_high") * unit);
            read.put(row.text("id"), new Level(row.text("id"), row.text("name"), band, Provenance.of(row)));
        }
        return new Seasoning(read);
    }

    /**
     * A level or factor of the table.
     *
     * @param id such as {@code target-raw}
     * @return the level with its source
     */
    public Level level(String id) {
        Level level = levels.get(id);
        if (level == null) {
            throw new IllegalArgumentException("No seasoning level \"" + id + "\"; there are " + levels.keySet() + ".");
        }
        return level;
    }

    /** Mean salt to aim at in raw lean meat, native salt included [kg/kg of raw mass]. */
    public Band targetRaw() {
        return level("target-raw").band();
    }

    /** Mean salt of cooked lean meat judged just right [kg/kg of cooked mass]. */
    public Band targetCooked() {
        return level("target-cooked").band();
    }

    /** Share of the salt by which two samples must differ to be told apart [-]. */
    public Band differenceThreshold() {
        return level("difference-threshold").band();
    }

    /**
     * Share of the salt that stays in the meat on cooking [-].
     *
     * @param wetOrPan true for braising, simmering and pan-broiling; false for roasting, grilling and broiling
     * @return the share
     */
    public Band saltKept(boolean wetOrPan) {
        return level(wetOrPan ? "kept-wet-or-pan" : "kept-dry-heat").band();
    }

    /**
     * Salt to aim at in the raw meat for a wanted salt of the cooked meat, {@code raw = cooked yield / kept}.
     *
     * @param cookedSalt wanted salt of the cooked meat [kg/kg]
     * @param cookingYield cooked mass over raw mass [-]
     * @param kept share of the salt that stays [-]
     * @return salt of the raw meat [kg/kg]
     */
    public static double rawSaltFor(double cookedSalt, double cookingYield, double kept) {
        Checks.requireInRange("salt of the cooked meat", cookedSalt, 0, 0.3, "kg/kg");
        Checks.requireInRange("cooking yield", cookingYield, 0.1, 1.5, "-");
        Checks.requireInRange("share of salt kept", kept, 0.1, 1.2, "-");
        return cookedSalt * cookingYield / kept;
    }

    /**
     * Tells whether most people would taste the difference of two samples side by side, by the typical threshold taken on
     * the saltier one.
     *
     * @param first salt of one sample [kg/kg]
     * @param second salt of the other [kg/kg]
     * @return true if it can be tasted
     */
    public boolean isTellable(double first, double second) {
        Checks.requireInRange("salt of the first sample", first, 0, 1, "kg/kg");
        Checks.requireInRange("salt of the second sample", second, 0, 1, "kg/kg");
        double larger = Math.max(first, second);
        return Math.abs(first - second) >= differenceThreshold().typical() * larger
                && larger >= level("detection").band().typical();
    }

    /**
     * What most people would say of cooked meat.
     *
     * @param cookedSalt mean salt of the cooked meat, native salt included [kg/kg]
     * @return the word
     */
    public Taste tasteOf(double cookedSalt) {
        Checks.requireInRange("salt of the cooked meat", cookedSalt, 0, 1, "kg/kg");
        if (cookedSalt < targetCooked().low()) {
            return Taste.UNDER;
        }
        if (cookedSalt <= targetCooked().high()) {
            return Taste.JUST_RIGHT;
        }
        if (cookedSalt <= level("warn-cooked").band().typical()) {
            return Taste.FIRM;
        }
        return cookedSalt <= level("ham-like-cooked").band().typical() ? Taste.TOO_SALTY : Taste.HAM_LIKE;
    }

    /** How seasoned meat tastes. */
    public enum Taste {
        /** Less than most want. */
        UNDER,
        /** In the band most call just right. */
        JUST_RIGHT,
        /** Salty, still liked by many. */
        FIRM,
        /** Too salty for many. */
        TOO_SALTY,
        /** As salty as ham or sausage. */
        HAM_LIKE
    }

    /**
     * A level or factor with its source.
     *
     * @param id key
     * @param name what it is
     * @param band the values, fractions [-]
     * @param provenance where they come from
     */
    public record Level(String id, String name, Band band, Provenance provenance) {}
}
