package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.trial.ForcedChoice;
import io.github.saltfront.trial.Piece;
import io.github.saltfront.trial.PreferenceProtocol;
import io.github.saltfront.trial.Protocol;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.RightWrongProtocol;
import io.github.saltfront.trial.SampleCodes;
import io.github.saltfront.trial.SoughtEffect;
import io.github.saltfront.trial.TastingMethod;
import io.github.saltfront.trial.TrialRequest;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The file of a trial.
 *
 * @param title what it is about, for the cook
 * @param sheetTitle what stands on the tasters' sheets
 * @param trial the trial
 * @param alpha allowed probability of a finding where there is none [-]
 * @param sought the effect that should not be missed, if the file says
 */
public record TrialFile(
        String title, String sheetTitle, TrialRequest trial, double alpha, Optional<SoughtEffect> sought) {
    private static final Phrases PHRASES = Phrases.of(TrialFile.class);

    /** Expected of a method, for messages. */
    static String methods() {
        return PHRASES.say("methods");
    }

    private static final String NEUTRAL_TITLE = "Tasting";
    private static final double USUAL_ALPHA = 0.05;

    /**
     * Reads a file.
     *
     * @param document the file
     * @return the trial
     * @throws io.github.saltfront.app.document.DocumentException with everything that is wrong
     */
    public static TrialFile read(Document document) {
        Node root = document.root();
        String title = root.text("title");
        String sheetTitle = root.findText("sheet_title").orElse(NEUTRAL_TITLE);
        String attribute = root.findText("attribute").orElse("");
        Protocol protocol = root.parsed("method", methods(), id -> protocol(id, attribute), new PreferenceProtocol());
        List<String> samples = root.findTexts("samples");
        if (samples.size() < 2) {
            root.problem("samples", PHRASES.say("got", samples.size()));
        }
        for (String sample : samples) {
            if (sheetTitle.toLowerCase(Locale.ROOT).contains(sample.toLowerCase(Locale.ROOT))) {
                root.problem(
                        "sheet_title", PHRASES.say("got-which-gives-the-sample", sheetTitle, sample, NEUTRAL_TITLE));
            }
        }
        int tasters = root.integer("tasters", 1, SampleCodes.MOST);
        int rounds = root.findInteger("rounds", 1, TrialRequest.MOST_ROUNDS).orElse(1);
        int portions = root.integer("portions_per_piece", 1, 200);
        List<Piece> pieces = pieces(root);
        double alpha = root.findQuantityInRange("alpha", Dimension.FRACTION, "0.1 %", "20 %")
                .orElse(USUAL_ALPHA);
        Optional<SoughtEffect> sought = root.findChild("look_for").flatMap(n -> sought(n, protocol));
        long seed = root.findInteger("seed", 0, Integer.MAX_VALUE).orElse(1);
        document.requireNoErrors();
        try {
            TrialRequest trial = new TrialRequest(protocol, samples, pieces, portions, tasters, rounds, seed);
            return new TrialFile(title, sheetTitle, trial, alpha, sought);
        } catch (IllegalArgumentException e) {
            root.problem("samples", Words.sentence(e));
            document.requireNoErrors();
            throw e;
        }
    }

    private static Protocol protocol(String id, String attribute) {
        String plain = id.toLowerCase(Locale.ROOT);
        if (plain.equals("preference")) {
            return new PreferenceProtocol();
        }
        if (plain.equals("ratings")) {
            return new RatingProtocol();
        }
        TastingMethod method;
        try {
            method = TastingMethod.get(plain);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(PHRASES.say("got-expected-choose-one-of", id, methods()), e);
        }
        if (method instanceof ForcedChoice && attribute.isEmpty()) {
            throw new IllegalArgumentException(PHRASES.say("the-method-needs-an-attribute", plain));
        }
        return new RightWrongProtocol(method, attribute);
    }

    private static List<Piece> pieces(Node root) {
        List<Piece> pieces = new ArrayList<>();
        for (Node node : root.list("pieces")) {
            String block = node.findText("block").orElse("");
            int count = node.integer("count", 1, 100);
            for (int i = 1; i <= count; i++) {
                pieces.add(new Piece(block.isEmpty() ? "piece " + (pieces.size() + 1) : block + " no. " + i, block));
            }
        }
        if (pieces.stream().map(Piece::id).distinct().count() != pieces.size()) {
            root.problem("pieces", PHRASES.say("two-blocks-have-the-same"));
        }
        return pieces;
    }

    /** Which keys there are depends on the method, since a share of people means something else in each. */
    private static Optional<SoughtEffect> sought(Node node, Protocol protocol) {
        if (protocol instanceof RightWrongProtocol test) {
            Optional<String> key = node.oneOf("distance", "can_tell");
            OptionalDouble distance = node.findNumber("distance", 0.05, 10);
            OptionalDouble tell = node.findQuantityInRange("can_tell", Dimension.FRACTION, "1 %", "100 %");
            if (key.isEmpty()) {
                return Optional.empty();
            }
            if (distance.isPresent()) {
                return Optional.of(new SoughtEffect.Distance(test.method(), distance.getAsDouble()));
            }
            return tell.isPresent()
                    ? Optional.of(new SoughtEffect.Tellers(test.method(), tell.getAsDouble()))
                    : Optional.empty();
        }
        if (protocol instanceof PreferenceProtocol) {
            double share = node.quantityInRange("majority", Dimension.FRACTION, "51 %", "100 %");
            return Double.isNaN(share) ? Optional.empty() : Optional.of(new SoughtEffect.Majority(share));
        }
        double gap = node.number("gap", 0.05, 8);
        double spread = node.number("spread", 0.1, 8);
        return Double.isNaN(gap) || Double.isNaN(spread)
                ? Optional.empty()
                : Optional.of(new SoughtEffect.Gap(gap, spread));
    }
}
