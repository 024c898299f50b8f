package io.github.saltfront.plan;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;

/**
 * What an acid liquid does to the outer millimeters of meat. There is a valley: mild acid brings them to pH 5.2-4.6, where meat
 * holds least water; only strong acid, below about 4.3, makes them swell, and it toughens the face of lean meat in hours.
 */
public enum AcidAdvice {
    /** Not acid enough to matter. */
    NONE("not-acid-enough-to-change"),
    /** Mild acid, such as cultured milk: into the valley. */
    VALLEY("mild-acid-brings-the-outer"),
    /** Between valley and swelling. */
    EDGE("acid-of-this-strength-lies"),
    /** Strong acid. */
    STRONG("strong-acid-swells-and-softens");

    private static final Phrases PHRASES = Phrases.of(AcidAdvice.class);

    private static final double MILD = 5.3;
    private static final double SWELLING = 4.4;
    private static final double STRONG_BELOW = 3.9;

    /** Share of the swelling or shrinking that is left where the meat holds 1 % salt or more [-]; judgement. */
    private static final double WITH_SALT = 0.5;

    private final String words;

    AcidAdvice(String words) {
        this.words = words;
    }

    /**
     * Returns the advice for a liquid.
     *
     * @param acidity pH of the liquid [-], 1 to 12
     * @return the advice
     */
    public static AcidAdvice of(double acidity) {
        Checks.requireInRange("pH", acidity, 1, 12, "-");
        if (acidity >= MILD) {
            return NONE;
        }
        if (acidity >= SWELLING) {
            return VALLEY;
        }
        // meat pulls the liquid's pH up: cultured milk of pH 4.2 leaves the meat in the valley too
        return acidity >= STRONG_BELOW ? EDGE : STRONG;
    }

    /** Returns the advice in plain words. */
    public String words() {
        return PHRASES.say(words);
    }

    /**
     * Returns the mass of the layer reached by acid over its mass before, by straight lines between the rows of
     * acid_response.csv; the first and last row hold beyond the table.
     *
     * @param acidity pH of that layer [-]
     * @param salted true if it holds 1 % salt or more
     * @return factor with its band [-]
     */
    public static Band massFactor(double acidity, boolean salted) {
        Checks.requireInRange("pH of the meat", acidity, 2, 8, "-");
        List<CsvTable.Row> rows =
                CsvTable.load(AcidAdvice.class, "acid_response.csv").rows();
        double highest = rows.get(0).number("ph");
        double lowest = rows.get(rows.size() - 1).number("ph");
        double at = Math.max(lowest, Math.min(highest, acidity));
        int i = 1;
        while (i < rows.size() - 1 && at < rows.get(i).number("ph")) {
            i++;
        }
        CsvTable.Row from = rows.get(i - 1);
        CsvTable.Row to = rows.get(i);
        double share = (at - from.number("ph")) / (to.number("ph") - from.number("ph"));
        double scale = salted ? WITH_SALT : 1;
        return new Band(
                between(from, to, "mass_factor_low", share, scale),
                between(from, to, "mass_factor", share, scale),
                between(from, to, "mass_factor_high", share, scale));
    }

    private static double between(CsvTable.Row from, CsvTable.Row to, String column, double share, double scale) {
        double factor = from.number(column) + share * (to.number(column) - from.number(column));
        return 1 + scale * (factor - 1);
    }
}
