package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.matter.Composition;
import io.github.saltfront.matter.StandardAtmosphere;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.safety.FirstOrderKill;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.safety.SafeLine;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.Denaturation;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.Piece;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SimulationOutput;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A simulation file: a piece, its stages, and what to record. See the JSON Schema {@code simulation.schema.json}.
 *
 * @param piece the piece
 * @param stages its stages
 * @param settings kinetics: first kind of kill log reductions of the organism, second the share of the official hold
 * @param output what to record
 * @param organism the organism of the log reductions
 * @param organismDeclared whether the file declares it
 * @param rule what the official rules ask of this meat
 * @param threeDimensional whether the three-dimensional solver is asked for
 * @param cells cells of its grid; 0 to choose them
 */
public record SimulationFile(
        Piece piece,
        List<Stage> stages,
        SolverSettings settings,
        SimulationOutput output,
        FirstOrderKill organism,
        boolean organismDeclared,
        SafetyRule rule,
        boolean threeDimensional,
        int cells) {
    private static final Phrases PHRASES = Phrases.of(SimulationFile.class);

    static final String SEA_LEVEL = "0 m";
    static final String HIGHEST = "5000 m";

    static String listAppliances() {
        return PHRASES.say("list-appliances");
    }

    /** Most samples of a history; a day by the second, and about as much as memory holds in text. */
    private static final double MOST_SAMPLES = 100_000;

    /** Salt beyond that of the raw meat from which it counts as salted [kg/kg]. */
    private static final double SALTED = 0.001;

    /**
     * Reads a document; problems are recorded in it, and {@link Document#requireNoErrors} is called at the end.
     *
     * @param document the document
     * @param catalog the catalog
     * @return the simulation
     * @throws io.github.saltfront.app.document.DocumentException with all problems of the file
     */
    public static SimulationFile read(Document document, Catalog catalog) {
        Node root = document.root();
        Node pieceNode = root.child("piece");
        Shape shape = ShapeReader.read(pieceNode, "shape");
        MeatModel meat = readMeat(pieceNode, catalog);
        double start = pieceNode.quantityInRange("start_temperature", Dimension.TEMPERATURE, "-40 °C", "100 °C");
        boolean ofCatalog = !pieceNode.isGroup("meat");
        double salt = pieceNode
                .findQuantityInRange("salt", Dimension.FRACTION, "0 %", "10 %")
                .orElse(ofCatalog ? meat.nativeSalt() : 0);
        Constants constants = Constants.read(pieceNode);
        double altitude = root.findQuantityInRange("altitude", Dimension.LENGTH, SEA_LEVEL, HIGHEST)
                .orElse(0);
        double pressure = StandardAtmosphere.pressure(Double.isFinite(altitude) ? altitude : 0);
        List<Stage> stages = new StageReader(meat, catalog, pressure, constants.waterFixed()).read(root);
        Optional<FirstOrderKill> declared = root.findChild("organism").map(SimulationFile::readOrganism);
        boolean solid = root.findChoice("solver", Words.choices("1d", false, "3d", true))
                .orElse(false);
        SimulationOutput output = readOutput(root, solid);
        int cells = readCells(root, solid);
        requireFewSamples(root, stages, output);
        document.requireNoErrors();
        if (solid && !SolidGrid.covers(shape)) {
            root.problem("solver", PHRASES.say("3d-needs-a-piece-with"));
        }
        document.requireNoErrors();

        Piece piece = piece(meat, shape, start, salt, constants);
        FirstOrderKill organism = declared.orElseGet(() -> SafeLine.of(meat.safety()));
        SafetyRule rule = new SafetyRule(
                meat.safety(),
                OptionalDouble.of(meat.composition().fat()),
                false,
                Kitchen.HOME,
                isSalted(stages, salt, meat.nativeSalt()));
        Denaturation denaturation = constants.waterFixed() ? Denaturation.NONE : new KajitaniJuice();
        SolverSettings settings =
                SolverSettings.DEFAULT.withKinetics(List.of(organism::rate, rule.officialTable()::rate), denaturation);
        return new SimulationFile(piece, stages, settings, output, organism, declared.isPresent(), rule, solid, cells);
    }

    private static boolean isSalted(List<Stage> stages, double salt, double nativeSalt) {
        return salt > nativeSalt + SALTED
                || stages.stream()
                        .map(Stage::salt)
                        .anyMatch(exchange -> exchange != SaltExchange.NONE && exchange != SaltExchange.KEEP);
    }

    static MeatModel readMeat(Node node, Catalog catalog) {
        MeatModel placeholder = MeatModel.of(catalog.cuts().get("chicken-breast-skinless"));
        if (!node.has("meat")) {
            node.parsed("meat", PHRASES.say("or-a-meat-of-your", Words.aCut()), text -> text, "");
            return placeholder;
        }
        if (node.isGroup("meat")) {
            return ownMeat(node.child("meat"), catalog, placeholder);
        }
        String id = node.text("meat");
        Optional<Cut> cut = catalog.findCut(id);
        if (cut.isEmpty()) {
            node.problem("meat", unknownCut(id, catalog));
            return placeholder;
        }
        return MeatModel.of(cut.get());
    }

    static String unknownCut(String id, Catalog catalog) {
        List<String> near = catalog.nearestCuts(id, 3).stream().map(Cut::id).toList();
        return Words.unknown(id, Words.aCut(), near, PHRASES.say("the-command-catalog-cuts-lists"));
    }

    static MeatModel ownMeat(Node node, Catalog catalog, MeatModel placeholder) {
        double water = node.quantityInRange("water", Dimension.FRACTION, "20 %", "90 %");
        double protein = node.quantityInRange("protein", Dimension.FRACTION, "1 %", "40 %");
        double fat = node.quantityInRange("fat", Dimension.FRACTION, "0 %", "70 %");
        double ash = node.findQuantityInRange("ash", Dimension.FRACTION, "0 %", "5 %")
                .orElse(0.01);
        double carbohydrate = node.findQuantityInRange("carbohydrate", Dimension.FRACTION, "0 %", "10 %")
                .orElse(0);
        String species = node.findText("species").orElse("chicken");
        List<String> known =
                catalog.cuts().all().stream().map(Cut::species).distinct().toList();
        if (!known.contains(species)) {
            node.problem(
                    "species",
                    Words.unknown(
                            species,
                            PHRASES.say("one-of", String.join(", ", known)),
                            List.of(),
                            PHRASES.say("choose-one")));
            return placeholder;
        }
        double sum = water + protein + fat + carbohydrate + ash;
        if (!Double.isFinite(sum)) {
            return placeholder;
        }
        if (!(Composition.LOWEST_PRINTED_SUM <= sum && sum <= Composition.HIGHEST_PRINTED_SUM)) {
            node.problem("water", PHRASES.say("the-parts-of-the-meat", QuantityFormat.percent(sum)));
            return placeholder;
        }
        return MeatModel.of(Composition.ofPrinted(water, protein, fat, carbohydrate, ash), species, catalog);
    }

    private static FirstOrderKill readOrganism(Node node) {
        double d = node.quantityInRange("d_value", Dimension.TIME, "0.001 s", "100 d");
        double reference = node.quantityInRange("reference_temperature", Dimension.TEMPERATURE, "20 °C", "150 °C");
        double z = node.quantityInRange("z_value", Dimension.TEMPERATURE_DIFFERENCE, "1 K", "50 K");
        boolean complete = Double.isFinite(d) && Double.isFinite(reference) && Double.isFinite(z);
        return complete ? new FirstOrderKill(d, reference, z) : new FirstOrderKill(60, 333, 6);
    }

    private static int readCells(Node root, boolean solid) {
        Optional<Node> node = root.findChild("output").filter(output -> output.has("cells"));
        if (node.isEmpty()) {
            return 0;
        }
        int cells = node.get().findInteger("cells", 4000, 1_000_000).orElse(0);
        if (!solid) {
            node.get().problem("cells", PHRASES.say("cells-are-those-of-solver"));
        }
        return cells;
    }

    private static SimulationOutput readOutput(Node root, boolean solid) {
        Optional<Node> node = root.findChild("output");
        if (node.isEmpty()) {
            return SimulationOutput.every(60);
        }
        double every = node.get()
                .findQuantityInRange("every", Dimension.TIME, "1 s", "1 d")
                .orElse(60);
        boolean field = node.get().findFlag("field").orElse(false);
        int layers = node.get().findInteger("layers", 8, 2000).orElse(0);
        if (solid && node.get().has("layers")) {
            node.get().problem("layers", PHRASES.say("layers-are-those-of-solver"));
        }
        return new SimulationOutput(Double.isFinite(every) ? every : 60, field, layers % 2 == 0 ? layers : layers + 1);
    }

    private static void requireFewSamples(Node root, List<Stage> stages, SimulationOutput output) {
        double whole = stages.stream().mapToDouble(Stage::duration).sum();
        if (!(whole / output.every() <= MOST_SAMPLES)) {
            root.problem(
                    "output",
                    PHRASES.say(
                            "got-of-stages-with-a", QuantityFormat.time(whole), QuantityFormat.time(output.every())));
        }
    }

    private static Piece piece(MeatModel meat, Shape shape, double start, double salt, Constants constants) {
        Composition composition = meat.composition();
        double water = composition.waterPerSolids();
        double saltPerDry = salt * (1 + water) / (1 - salt);
        HeatProperties heat = constants.apply(MeatHeat.of(composition), water, saltPerDry);
        double diffusivity =
                constants.saltDiffusivity().orElse(meat.diffusivity().medianAt5C());
        SaltProperties motion = new SaltProperties(
                diffusivity,
                constants.saltDiffusivity().isPresent()
                        ? 0
                        : meat.diffusivity().activationEnergy().typical(),
                constants.partition().orElse(0.95),
                1,
                0);
        return new Piece(
                shape,
                new InitialState(start, water, saltPerDry),
                heat,
                motion,
                constants.waterFixed(),
                meat.juiceFactor().typical());
    }

    /** Temperature for messages and checks of salt in a bath. */
    static double coldRoom() {
        return Temperature.fromCelsius(4);
    }
}
