package io.github.saltfront.quality;

import io.github.saltfront.data.CsvTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Species factors of {@link JuiceLoss}, read from {@code juice_factors.csv}. */
public final class JuiceFactors {
    private final Map<String, JuiceFactor> factors;

    private JuiceFactors(Map<String, JuiceFactor> factors) {
        this.factors = factors;
    }

    /** Reads the table. */
    public static JuiceFactors load() {
        Map<String, JuiceFactor> read = new LinkedHashMap<>();
        for (CsvTable.Row row :
                CsvTable.load(JuiceFactors.class, "juice_factors.csv").rows()) {
            Band factor = new Band(row.number("factor_low"), row.number("factor"), row.number("factor_high"));
            read.put(row.text("id"), new JuiceFactor(row.text("id"), row.text("name"), factor, Provenance.of(row)));
        }
        return new JuiceFactors(read);
    }

    /**
     * Looks a class of meat up.
     *
     * @param id such as {@code poultry-white}
     * @return the factor, if there is one
     */
    public Optional<JuiceFactor> find(String id) {
        return Optional.ofNullable(factors.get(id));
    }

    /** Returns all classes in the order of the table. */
    public List<JuiceFactor> all() {
        return List.copyOf(factors.values());
    }

    /**
     * Factor of a class of meat.
     *
     * @param id key
     * @param name name
     * @param factor species factor [-]
     * @param provenance where it comes from
     */
    public record JuiceFactor(String id, String name, Band factor, Provenance provenance) {
        /** Returns the juice model with this factor. */
        public JuiceLoss model() {
            return new JuiceLoss(factor);
        }
    }
}
