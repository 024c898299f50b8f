package io.github.saltfront.app.export;

import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.trial.Allocation;
import io.github.saltfront.trial.HoldEqual;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.Serving;
import io.github.saltfront.trial.Sheet;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.trial.TrialRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The design of a trial, for the cook: it holds the key and must be kept from tasters. */
public final class TrialDesignText {
    private final TrialFile file;
    private final TrialDesign design;
    private final StringBuilder text = new StringBuilder();

    private TrialDesignText(TrialFile file, TrialDesign design) {
        this.file = file;
        this.design = design;
    }

    /**
     * Returns the text.
     *
     * @param file what was asked for
     * @param design the design
     * @return lines of at most 64 columns
     */
    public static String of(TrialFile file, TrialDesign design) {
        return new TrialDesignText(file, design).write();
    }

    private String write() {
        TrialRequest trial = file.trial();
        line(file.title());
        line(trial.protocol().title() + ": " + trial.tasters() + " tasters"
                + (trial.rounds() > 1 ? ", " + trial.rounds() + " rounds each" : "")
                + ", seed " + trial.seed());
        line("For the cook only: this page holds the key. Tasters see their sheets and nothing else.");
        head("WHAT IT CAN SHOW");
        power().forEach(this::line);
        head("PIECES, by lot");
        for (Allocation.Assignment assignment : design.allocation().assignments()) {
            row(assignment.piece().id(), trial.samples().get(assignment.treatment()));
        }
        for (int i = 0; i < design.portions().size(); i++) {
            line("Portions of " + trial.samples().get(i) + ": "
                    + design.portions().get(i) + ".");
        }
        head("PLATES, in the order of tasting");
        for (Sheet sheet : design.sheets()) {
            row(
                    "taster " + sheet.taster() + (trial.rounds() > 1 ? " round " + sheet.round() : ""),
                    sheet.servings().stream().map(this::serving).collect(Collectors.joining(";  ")));
        }
        line(balance());
        head("HOLD EQUAL");
        String when = "";
        for (HoldEqual rule : HoldEqual.load()) {
            if (!rule.when().equals(when)) {
                when = rule.when();
                line(Character.toUpperCase(when.charAt(0)) + when.substring(1) + ":");
            }
            text.append(TextLayout.wrapped("[ ] " + rule.text() + " " + rule.why(), "  ", "      "));
        }
        return text.toString();
    }

    private String serving(Serving serving) {
        String name = file.trial().samples().get(serving.sample());
        return (serving.code().equals(TrialDesign.REFERENCE) ? "reference" : serving.code()) + " " + name + " ("
                + serving.piece() + ")";
    }

    private List<String> power() {
        return power(file);
    }

    /** Sentences on the power of a trial; also for other outputs. */
    static List<String> power(TrialFile file) {
        TrialRequest trial = file.trial();
        // ratings of one taster in several rounds are no further tasters
        boolean rated = trial.protocol() instanceof RatingProtocol;
        int n = rated ? trial.tasters() : trial.tasters() * trial.rounds();
        List<String> sentences = new ArrayList<>();
        if (file.sought().isEmpty()) {
            sentences.add(
                    "The file does not say what effect to look for. Add look_for, or try \"trial power\", before you"
                            + " invite people: too few tasters can show nothing.");
            return sentences;
        }
        double power = file.sought().get().power(n, file.alpha());
        sentences.add(String.format(
                Locale.ROOT,
                "If %s, this trial finds it with a chance of %s.",
                file.sought().get().words(),
                TrialWords.chance(power)));
        if (power < 0.8) {
            sentences.add("That is low: a trial that finds nothing will then say little. For a chance of 80 % it takes "
                    + TrialWords.size(file.sought().get().size(file.alpha(), 0.8), rated ? "tasters" : "tastings")
                    + ".");
        }
        sentences.add("Where there is no difference, it finds one with a chance of at most "
                + TrialWords.chance(file.alpha()) + ".");
        if (trial.rounds() > 1) {
            sentences.add(
                    "Several rounds by the same people count as tastings for a difference, not for the claim that there"
                            + " is none.");
        }
        return sentences;
    }

    private String balance() {
        int more = design.tastersToBalance();
        int orders = design.orderCounts().size();
        return more == 0
                ? "Each of the " + orders + " serving orders is used equally often."
                : "The " + orders + " serving orders are used as equally as this number allows; with " + more
                        + " more taster" + (more == 1 ? "" : "s") + " they would be exactly.";
    }

    private void head(String words) {
        text.append('\n').append(words).append('\n');
    }

    private void line(String words) {
        text.append(TextLayout.wrapped(words, 0));
    }

    private void row(String name, String value) {
        text.append(TextLayout.wrapped(name + ": " + value, "  ", "      "));
    }
}
