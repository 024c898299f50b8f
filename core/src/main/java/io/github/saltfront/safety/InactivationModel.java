package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * D and z of one organism in one food from a paper, for information. It stands beside the official verdict and never replaces it.
 *
 * @param id key in the table
 * @param family {@code salmonella}, {@code listeria} or {@code e-coli}
 * @param organism organism as named in the source
 * @param food food as named in the source
 * @param kill D and z
 * @param lowest lowest temperature studied [K]
 * @param highest highest temperature studied [K]
 * @param sourceId key into the bibliography
 */
public record InactivationModel(
        String id,
        String family,
        String organism,
        String food,
        FirstOrderKill kill,
        double lowest,
        double highest,
        String sourceId) {
    private static final Phrases PHRASES = Phrases.of(InactivationModel.class);

    /** Above this many decades a figure is arithmetic, not biology. */
    private static final double HIGHEST_SHOWN = 7;

    /**
     * Reads all models of a family.
     *
     * @param family {@code salmonella}, {@code listeria} or {@code e-coli}
     * @return the models, in the order of the table
     */
    public static List<InactivationModel> all(String family) {
        List<InactivationModel> models = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.load(InactivationModel.class, "inactivation_models.csv")
                .rows()) {
            if (row.text("family").equals(family)) {
                models.add(read(row));
            }
        }
        return List.copyOf(models);
    }

    private static InactivationModel read(CsvTable.Row row) {
        return new InactivationModel(
                row.text("id"),
                row.text("family"),
                row.text("organism"),
                row.text("matrix"),
                new FirstOrderKill(
                        60 * row.number("d_min"),
                        Temperature.fromCelsius(row.number("temperature_c")),
                        row.number("z_k")),
                Temperature.fromCelsius(row.number("range_low_c")),
                Temperature.fromCelsius(row.number("range_high_c")),
                row.text("source_id"));
    }

    /**
     * Returns the decimal reductions along a history, crediting nothing below the range studied and no more than its upper end above
     * it.
     *
     * @param history temperature of the coldest place
     * @return log10 reductions, not negative [-]
     */
    public double logReduction(TemperatureHistory history) {
        return history.integrate(new PiecewiseExponential(
                new double[] {lowest, highest}, new double[] {kill.rate(lowest), kill.rate(highest)}));
    }

    /**
     * Returns the span over the papers of a family that cover the highest temperature of a history, for people.
     *
     * @param family {@code salmonella}, {@code listeria} or {@code e-coli}
     * @param history temperature of the coldest place
     * @return such as {@code "2.1 to 7 or more decades in 4 studies"}
     */
    public static String spread(String family, TemperatureHistory history) {
        double highest = Crossings.highest(history);
        double[] logs = all(family).stream()
                .filter(model -> model.lowest <= highest)
                .mapToDouble(model -> model.logReduction(history))
                .sorted()
                .toArray();
        if (logs.length == 0) {
            return PHRASES.say("no-study-covers-these-temperatures");
        }
        String least = shown(logs[0]);
        String most = shown(logs[logs.length - 1]);
        String span = least.equals(most) ? least : PHRASES.say("from-to", least, most);
        return PHRASES.say(logs.length == 1 ? "decades-in-one" : "decades-in", span, logs.length);
    }

    private static String shown(double logs) {
        if (logs >= HIGHEST_SHOWN) {
            return PHRASES.say("7-or-more");
        }
        return String.format(Locale.ROOT, "%.1f", Math.floor(10 * logs) / 10);
    }
}
