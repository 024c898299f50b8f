package io.github.saltfront.trial;

import io.github.saltfront.data.CsvTable;
import java.util.List;

/**
 * One thing to hold equal between the samples, or to take care of.
 *
 * @param when before, cooking or tasting
 * @param text what to do, a whole sentence
 * @param why why it matters, a whole sentence
 */
public record HoldEqual(String when, String text, String why) {
    /** Returns the checklist, in the order of the day. */
    public static List<HoldEqual> load() {
        return CsvTable.load(HoldEqual.class, "hold_equal.csv").rows().stream()
                .map(r -> new HoldEqual(r.text("when"), r.words("text"), r.words("why")))
                .toList();
    }
}
