package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.SaltForm;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.HandlingCaution;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Request.Assumption;
import io.github.saltfront.plan.Request.Treatment;
import io.github.saltfront.plan.SaltedAlready;
import io.github.saltfront.plan.Wish;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.QuantityParser;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Reads a request for a plan; everything but the cut and the mass has a stated default. */
public final class PlanFile {
    private static final Phrases PHRASES = Phrases.of(PlanFile.class);

    private final Catalog catalog;
    private final ZonedDateTime now;
    private final List<Assumption> assumptions = new ArrayList<>();

    PlanFile(Catalog catalog, ZonedDateTime now) {
        this.catalog = catalog;
        this.now = now;
    }

    /**
     * What all dishes of a meal have in common.
     *
     * @param timing when it is
     * @param guests who eats
     * @param equipment what the kitchen has
     */
    record Occasion(Request.Timing timing, Request.Guests guests, Request.Equipment equipment) {}

    /**
     * Reads a document.
     *
     * @param document the document
     * @param catalog the catalog
     * @param now present time, for requests that do not say when it is
     * @return the request
     * @throws io.github.saltfront.app.document.DocumentException with all problems of the file
     */
    public static Request read(Document document, Catalog catalog, ZonedDateTime now) {
        notebook(document);
        PlanFile file = new PlanFile(catalog, now);
        Request request = file.read(document.root(), file::readOccasion);
        document.requireNoErrors();
        return request;
    }

    /**
     * A kitchen whose notebook a request wants to use.
     *
     * @param profile name of the kitchen
     * @param butcher where the meat is from; may be empty
     */
    public record NotebookUse(String profile, String butcher) {}

    /**
     * Returns whose notebook a request wants to use.
     *
     * @param document the document
     * @return the kitchen, if the request names one; usable once the document has no errors
     */
    public static Optional<NotebookUse> notebook(Document document) {
        Node root = document.root();
        if (root.isGroup("notebook")) {
            Node node = root.child("notebook");
            return Optional.of(new NotebookUse(
                    node.text("profile"), node.findText("butcher").orElse("")));
        }
        return root.findText("notebook").map(profile -> new NotebookUse(profile, ""));
    }

    /** Reads when and for whom it is. */
    Occasion readOccasion(Node root) {
        Request.Timing timing = readTiming(root);
        Request.Guests guests = readGuests(root);
        return new Occasion(timing, guests, EquipmentReader.read(root, catalog));
    }

    /** Reads a dish; problems are left in the document. */
    Request read(Node root, Function<Node, Occasion> readOccasion) {
        Optional<Cut> cut = readCut(root);
        MeatModel meat = cut.map(MeatModel::of).orElseGet(() -> MeatModel.of(anyCut()));
        if (root.isGroup("meat")) {
            meat = SimulationFile.ownMeat(root.child("meat"), catalog, meat);
        }
        SaltedAlready label = SaltWishes.readLabel(root, cut, meat.nativeSalt());
        Request.Food food = readFood(root, cut, meat.labelled(label));
        Request.Salting salting = readSalting(root, label);
        Request.Cook cook = readCook(root);
        Request.Taste taste = readTaste(root);
        Occasion occasion = readOccasion.apply(root);
        return new Request(
                food, salting, cook, taste, occasion.timing(), occasion.guests(), occasion.equipment(), assumptions);
    }

    private Cut anyCut() {
        return catalog.cuts().get("chicken-breast-skinless");
    }

    private void assume(String field, String value, String reason) {
        assumptions.add(new Assumption(field, value, reason));
    }

    private Optional<Cut> readCut(Node root) {
        boolean own = root.isGroup("meat");
        Optional<String> text =
                own ? root.findText("cut") : Optional.of(root.parsed("cut", Words.aCut(), id -> id, ""));
        if (own && text.isPresent()) {
            root.problem("cut", PHRASES.say("got-a-cut-and-a"));
        }
        if (text.isEmpty() || text.get().isEmpty() || own) {
            return Optional.empty();
        }
        Optional<Cut> cut = catalog.findCut(text.get());
        if (cut.isEmpty()) {
            root.problem("cut", SimulationFile.unknownCut(text.get(), catalog));
        }
        return cut;
    }

    private Request.Food readFood(Node root, Optional<Cut> cut, MeatModel meat) {
        int pieces = root.findInteger("pieces", 1, 500).orElseGet(() -> {
            assume("pieces", "1", PHRASES.say("not-said"));
            return 1;
        });
        double mass = root.quantityInRange("mass", Dimension.MASS, "5 g", "40 kg");
        OptionalDouble thickness = root.findQuantityInRange("thickness", Dimension.LENGTH, "2 mm", "400 mm");
        OptionalDouble start = root.findQuantityInRange("start_temperature", Dimension.TEMPERATURE, "-30 °C", "30 °C");
        double startTemperature = start.orElseGet(() -> {
            assume("start_temperature", "4 °C", PHRASES.say("from-the-refrigerator"));
            return Temperature.fromCelsius(4);
        });
        Shape shape = CookReader.among(root, readShape(root, cut, mass, thickness));
        double bone = cut.map(c -> c.traits().boneShare()).orElse(0.0);
        boolean usable = Double.isFinite(mass) && Double.isFinite(startTemperature);
        return new Request.Food(
                cut, meat, shape, pieces, usable ? mass : 0.2, 1 - bone, usable ? startTemperature : 277);
    }

    private Shape readShape(Node root, Optional<Cut> cut, double mass, OptionalDouble thickness) {
        Shape placeholder = new Shape.Slab(0.03);
        if (root.isGroup("shape")) {
            thickness.ifPresent(t -> root.problem("thickness", PHRASES.say("got-a-thickness-beside-a")));
            return ShapeReader.read(root, "shape");
        }
        if (cut.isEmpty() || !Double.isFinite(mass)) {
            if (root.isGroup("meat")) {
                root.child("shape");
            }
            return placeholder;
        }
        if (thickness.isEmpty()) {
            double usual = PieceShape.thickness(cut.get(), mass);
            assume(
                    "thickness",
                    QuantityFormat.length(usual, KitchenUnits.METRIC),
                    PHRASES.say("usual-for-this-cut-and"));
        }
        try {
            return PieceShape.of(cut.get(), mass, thickness);
        } catch (IllegalArgumentException e) {
            root.problem("thickness", Words.sentence(e));
            return placeholder;
        }
    }

    private Request.Salting readSalting(Node root, SaltedAlready label) {
        SaltForm salt = readSalt(root);
        Optional<Node> node = root.findChild("salting");
        Treatment treatment = Treatment.AUTO;
        OptionalDouble strength = OptionalDouble.empty();
        OptionalDouble time = OptionalDouble.empty();
        if (node.isPresent()) {
            Map<String, Treatment> choices = new LinkedHashMap<>();
            for (Treatment t : Treatment.values()) {
                choices.put(t.name().toLowerCase(Locale.ROOT).replace('_', '-'), t);
            }
            treatment = node.get().findChoice("treatment", choices).orElse(Treatment.AUTO);
            strength = readStrength(node.get());
            time = node.get().findQuantityInRange("time", Dimension.TIME, "1 min", "7 d");
            requireUse(node.get(), treatment);
        }
        if (treatment == Treatment.AUTO) {
            assume("salting.treatment", PHRASES.say("the-program-chooses"), PHRASES.say("not-said"));
        }
        Request.Liquor liquor = new SaltWishes(catalog, this::assume).readLiquor(root, node, treatment);
        double refrigerator = root.findQuantityInRange("refrigerator", Dimension.TEMPERATURE, "-1 °C", "8 °C")
                .orElseGet(() -> {
                    assume("refrigerator", "4 °C", PHRASES.say("the-official-limit"));
                    return Temperature.fromCelsius(4);
                });
        return new Request.Salting(
                treatment, salt, strength, time, liquor, Double.isFinite(refrigerator) ? refrigerator : 277, label);
    }

    /** A wish that the treatment has no use for is an error: it would be dropped without a word. */
    private static void requireUse(Node node, Treatment treatment) {
        boolean bath = treatment.isSoak() && treatment != Treatment.EQUILIBRIUM || treatment == Treatment.AUTO;
        boolean ahead = bath || treatment == Treatment.EQUILIBRIUM || treatment == Treatment.DRY_SALT;
        if (!bath && node.has("strength")) {
            node.problem("strength", PHRASES.say("got-a-strength-that-the"));
        }
        if (!ahead && node.has("time")) {
            node.problem("time", PHRASES.say("got-a-time-without-salting"));
        }
    }

    private static OptionalDouble readStrength(Node node) {
        double cold = SimulationFile.coldRoom();
        Optional<SaltStrength> strength =
                node.findParsed("strength", Words.strengthForms(), text -> Words.strength(text, cold));
        return strength.map(s -> OptionalDouble.of(s.saltPerWater())).orElse(OptionalDouble.empty());
    }

    private SaltForm readSalt(Node root) {
        SaltForm usual = catalog.salts().get("table-salt-fine");
        if (root.isGroup("salt")) {
            Node label = root.child("salt");
            double sodium = label.quantityInRange("sodium", Dimension.MASS, "5 mg", "10 g");
            double serving = label.number("serving_teaspoons", 0.05, 10);
            return Double.isFinite(sodium) && Double.isFinite(serving)
                    ? SaltForm.fromLabelSodium(serving, sodium)
                    : usual;
        }
        Optional<String> id = root.findText("salt");
        if (id.isPresent() && HandlingCaution.isCuringSalt(id.get())) {
            root.problem("salt", HandlingCaution.of("pink-salt").text());
            return usual;
        }
        if (id.isEmpty()) {
            assume("salt", usual.name(), PHRASES.say("not-said-weigh-it-and"));
            return usual;
        }
        Optional<SaltForm> salt = catalog.salts().find(id.get());
        if (salt.isEmpty()) {
            List<String> near = catalog.salts().nearest(id.get(), 3).stream()
                    .map(SaltForm::id)
                    .toList();
            root.problem(
                    "salt",
                    Words.unknown(
                            id.get(),
                            PHRASES.say("a-salt-of-the-catalog"),
                            near,
                            PHRASES.say("or-give-its-label-sodium")));
        }
        return salt.orElse(usual);
    }

    private Request.Cook readCook(Node root) {
        Appliance usual = catalog.appliances().get("oven-conventional");
        if (!root.has("appliance")) {
            assume("appliance", usual.name(), PHRASES.say("not-said"));
        }
        CookReader reader = new CookReader(catalog);
        Appliance appliance = CookReader.tuned(root, reader.appliance(root).orElse(usual));
        double setting = root.findQuantityInRange("setting", Dimension.TEMPERATURE, "40 °C", "400 °C")
                .orElseGet(() -> {
                    double typical = appliance.temperature().typical();
                    assume(
                            "setting",
                            QuantityFormat.temperature(typical, KitchenUnits.METRIC),
                            PHRASES.say("usual-for-it"));
                    return typical;
                });
        double altitude = root.findQuantityInRange(
                        "altitude", Dimension.LENGTH, SimulationFile.SEA_LEVEL, SimulationFile.HIGHEST)
                .orElseGet(() -> {
                    assume("altitude", "0 m", PHRASES.say("not-said"));
                    return 0;
                });
        boolean usable = Double.isFinite(setting) && Double.isFinite(altitude);
        return new Request.Cook(appliance, usable ? setting : 433, usable ? altitude : 0, reader.sequence(root));
    }

    private Request.Taste readTaste(Node root) {
        double usual = io.github.saltfront.quality.Seasoning.load().targetRaw().typical();
        Optional<Node> node = root.findChild("taste");
        Optional<Double> salt = node.flatMap(n -> n.findParsed("salt", PHRASES.say("light-usual-strong-or-0"), text -> {
            return switch (text.strip().toLowerCase(Locale.ROOT)) {
                case "light" -> 0.8 * usual;
                case "usual" -> usual;
                case "strong" -> 1.2 * usual;
                default -> rawSalt(text);
            };
        }));
        OptionalDouble core = node.map(n -> n.findQuantityInRange("core", Dimension.TEMPERATURE, "40 °C", "98 °C"))
                .orElse(OptionalDouble.empty());
        if (salt.isEmpty()) {
            assume("taste.salt", PHRASES.say("0-75-of-the-raw"), PHRASES.say("judged-just-right-by-most"));
        }
        if (core.isEmpty()) {
            assume("taste.core", PHRASES.say("usual-for-the-cut"), PHRASES.say("common-practice-no-source"));
        }
        OptionalDouble sodium = node.map(SaltWishes::readSodium).orElse(OptionalDouble.empty());
        return new Request.Taste(salt.orElse(usual), core, sodium, readRank(root));
    }

    private static List<Wish> readRank(Node root) {
        Map<String, Wish> choices = new LinkedHashMap<>();
        for (Wish wish : Wish.values()) {
            choices.put(wish.key(), wish);
        }
        List<Wish> wishes = new ArrayList<>();
        for (String text : root.findTexts("rank")) {
            Wish wish = choices.get(text.strip().toLowerCase(Locale.ROOT).replace(' ', '-'));
            if (wish == null) {
                root.problem(
                        "rank",
                        Words.unknown(
                                text,
                                PHRASES.say("a-wish"),
                                List.of(),
                                PHRASES.say("wishes-are", String.join(", ", choices.keySet()))));
            } else if (!wishes.contains(wish)) {
                wishes.add(wish);
            }
        }
        return wishes;
    }

    private static double rawSalt(String text) {
        double share = QuantityParser.parse(text, Dimension.FRACTION);
        if (!(share >= 0.002 && share <= 0.025)) {
            throw new IllegalArgumentException(PHRASES.say("got-expected-light-usual-strong", text));
        }
        return share;
    }

    private Request.Timing readTiming(Node root) {
        Optional<ZonedDateTime> given = time(root, "now");
        ZonedDateTime start = given.orElse(now.truncatedTo(ChronoUnit.MINUTES));
        Optional<String> serve = root.findText("serve");
        if (serve.isEmpty() || serve.get().equals("as soon as possible")) {
            if (serve.isEmpty()) {
                assume("serve", PHRASES.say("as-soon-as-possible"), PHRASES.say("not-said"));
            }
            return new Request.Timing(start, Optional.empty());
        }
        Optional<ZonedDateTime> at = time(root, "serve");
        if (at.isPresent() && !at.get().isAfter(start)) {
            root.problem(
                    "serve", PHRASES.say("got-which-is-in-the", at.get().toLocalDateTime(), start.toLocalDateTime()));
        }
        return new Request.Timing(start, at);
    }

    private Optional<ZonedDateTime> time(Node root, String key) {
        return root.findParsed(key, PHRASES.say("a-time-such-as-2026"), text -> {
            try {
                return text.contains("+") || text.endsWith("Z") || text.contains("[")
                        ? ZonedDateTime.parse(text)
                        : LocalDateTime.parse(text.replace(' ', 'T')).atZone(now.getZone());
            } catch (DateTimeParseException e) {
                throw new IllegalArgumentException(PHRASES.say("got-expected-a-time-of", text), e);
            }
        });
    }

    private Request.Guests readGuests(Node root) {
        Optional<Node> node = root.findChild("guests");
        int count = node.map(n -> n.findInteger("count", 1, 2000).orElse(2)).orElse(2);
        Optional<Boolean> vulnerable = node.flatMap(n -> n.findFlag("vulnerable"));
        if (vulnerable.isEmpty()) {
            assume("guests.vulnerable", "no", PHRASES.say("say-yes-for-pregnant-very"));
        }
        Map<String, Kitchen> kitchens = new LinkedHashMap<>();
        for (Kitchen kitchen : Kitchen.values()) {
            kitchens.put(kitchen.name().toLowerCase(Locale.ROOT), kitchen);
        }
        Kitchen kitchen = root.findChoice("kitchen", kitchens).orElse(Kitchen.HOME);
        return new Request.Guests(count, vulnerable.orElse(false), kitchen);
    }
}
