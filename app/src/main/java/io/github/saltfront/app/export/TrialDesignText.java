package io.github.saltfront.app.export;

import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.trial.Allocation;
import io.github.saltfront.trial.HoldEqual;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.Serving;
import io.github.saltfront.trial.Sheet;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.trial.TrialRequest;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The design of a trial, for the cook: it holds the key and must be kept from tasters. */
public final class TrialDesignText {
    private static final Phrases PHRASES = Phrases.of(TrialDesignText.class);

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
        line(PHRASES.say(
                "tasters-seed",
                trial.protocol().title(),
                trial.tasters(),
                (trial.rounds() > 1 ? PHRASES.say("rounds-each", trial.rounds()) : ""),
                trial.seed()));
        line(PHRASES.say("for-the-cook-only-this"));
        head(PHRASES.say("what-it-can-show"));
        power().forEach(this::line);
        head(PHRASES.say("pieces-by-lot"));
        for (Allocation.Assignment assignment : design.allocation().assignments()) {
            row(assignment.piece().id(), trial.samples().get(assignment.treatment()));
        }
        for (int i = 0; i < design.portions().size(); i++) {
            line(PHRASES.say(
                    "portions-of", trial.samples().get(i), design.portions().get(i)));
        }
        head(PHRASES.say("plates-in-the-order-of"));
        for (Sheet sheet : design.sheets()) {
            row(
                    trial.rounds() > 1
                            ? PHRASES.say("taster-round", sheet.taster(), sheet.round())
                            : PHRASES.say("taster", sheet.taster()),
                    sheet.servings().stream().map(this::serving).collect(Collectors.joining(";  ")));
        }
        line(balance());
        head(PHRASES.say("hold-equal"));
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
        return (serving.code().equals(TrialDesign.REFERENCE) ? PHRASES.say("reference") : serving.code()) + " " + name
                + " (" + serving.piece() + ")";
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
            sentences.add(PHRASES.say("the-file-does-not-say"));
            return sentences;
        }
        double power = file.sought().get().power(n, file.alpha());
        sentences.add(PHRASES.say("if-this-trial-finds-it", file.sought().get().words(), TrialWords.chance(power)));
        if (power < 0.8) {
            sentences.add(PHRASES.say(
                    "that-is-low-a-trial",
                    TrialWords.size(
                            file.sought().get().size(file.alpha(), 0.8),
                            rated ? PHRASES.say("tasters") : PHRASES.say("tastings"))));
        }
        sentences.add(PHRASES.say("where-there-is-no-difference", TrialWords.chance(file.alpha())));
        if (trial.rounds() > 1) {
            sentences.add(PHRASES.say("several-rounds-by-the-same"));
        }
        return sentences;
    }

    private String balance() {
        int more = design.tastersToBalance();
        int orders = design.orderCounts().size();
        return more == 0
                ? PHRASES.say("each-of-the-serving-orders", orders)
                : PHRASES.say("the-serving-orders-are-used", orders, more, (more == 1 ? "" : "s"));
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
