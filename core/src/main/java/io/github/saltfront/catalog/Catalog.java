package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.JuiceFactors;
import io.github.saltfront.words.Language;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * All tables of what a kitchen holds: cuts, salts, liquids, appliances, measures and the rules of treatment. Immutable;
 * load it once and hand it on.
 */
public final class Catalog {
    private static final Map<Language, Catalog> CATALOGS = new ConcurrentHashMap<>();

    private final NamedTable<Cut> cuts;
    private final NamedTable<SaltForm> salts;
    private final NamedTable<Liquid> liquids;
    private final NamedTable<Appliance> appliances;
    private final NamedTable<Measure> measures;
    private final List<SaltDiffusivity> diffusivities;
    private final TreatmentRules treatments;

    private Catalog() {
        diffusivities = rows("salt_diffusivity.csv", SaltDiffusivity::read);
        JuiceFactors juices = JuiceFactors.load();
        cuts = new NamedTable<>("cut", rows("cuts.csv", row -> Cut.read(row, diffusivities, juices)));
        salts = new NamedTable<>("salt", rows("salt_forms.csv", SaltForm::read));
        liquids = new NamedTable<>("liquid", rows("liquids.csv", Liquid::read));
        appliances = new NamedTable<>("appliance", rows("appliances.csv", Appliance::read));
        measures = new NamedTable<>("measure", rows("measures.csv", Measure::read));
        treatments = TreatmentRules.load();
    }

    /**
     * Returns the catalog in the language that is spoken, read from the class path when it is first asked for. It never changes, so
     * all share one of each language.
     *
     * @return the catalog
     * @throws io.github.saltfront.data.DataException if a table is missing or malformed; it says which and where
     */
    public static Catalog load() {
        return CATALOGS.computeIfAbsent(Language.spoken(), language -> new Catalog());
    }

    private static <T> List<T> rows(String resource, Function<CsvTable.Row, T> read) {
        return CsvTable.load(Catalog.class, resource).rows().stream().map(read).toList();
    }

    /** Returns the cuts. */
    public NamedTable<Cut> cuts() {
        return cuts;
    }

    /** Returns the grain types of salt. */
    public NamedTable<SaltForm> salts() {
        return salts;
    }

    /** Returns the liquids. */
    public NamedTable<Liquid> liquids() {
        return liquids;
    }

    /** Returns the ways to heat, rest and chill. */
    public NamedTable<Appliance> appliances() {
        return appliances;
    }

    /** Returns spoons, cups and their like. */
    public NamedTable<Measure> measures() {
        return measures;
    }

    /** Returns the classes of salt diffusivity. */
    public List<SaltDiffusivity> diffusivities() {
        return diffusivities;
    }

    /** Returns the rules of treatment. */
    public TreatmentRules treatments() {
        return treatments;
    }

    /**
     * Finds a cut by id, name or alias.
     *
     * @param text what was asked for
     * @return the cut, if these words name one
     */
    public Optional<Cut> findCut(String text) {
        return cuts.find(text);
    }

    /**
     * The cuts whose words are nearest to a text, best first.
     *
     * @param text what was asked for
     * @param count how many at most
     * @return the cuts
     */
    public List<Cut> nearestCuts(String text, int count) {
        return cuts.nearest(text, count);
    }

    /**
     * The rule of treatment for a cut.
     *
     * @param cut the cut
     * @param cook way of cooking, such as {@code any} or {@code fry-or-grill}
     * @return the rule
     * @throws IllegalArgumentException if the cut's class has no rule
     */
    public TreatmentRules.Rule treatmentOf(Cut cut, String cook) {
        return treatments
                .find(cut.treatmentClass(), cook)
                .orElseThrow(() -> new IllegalArgumentException(
                        "No rule of treatment for class \"" + cut.treatmentClass() + "\" of cut " + cut.id() + "."));
    }
}
