package io.github.saltfront.app.request;

import io.github.saltfront.app.document.Node;
import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.matter.IapwsIf97Saturation;
import io.github.saltfront.matter.SaltSolubility;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.Bath;
import io.github.saltfront.plan.CookingMedium;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.NetMassGain;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityParser;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the stages of a simulation file. */
final class StageReader {
    private static final Phrases PHRASES = Phrases.of(StageReader.class);

    /** Wet share of a surface for {@code evaporation: on}, that of roasting models [-]. */
    private static final double USUAL_WET_SHARE = 0.15;

    private static final double LIQUID_COEFFICIENT = 100;
    private static final double AIR_COEFFICIENT = 5;
    private static final double PARTITION = 0.95;
    private static final String LONGEST = "30 d";

    /** Top of the range of the saturation equation [K], rounded down. */
    private static final double HOTTEST_SATURATED = 640;

    private enum Kind {
        SOAK,
        SOAK_OUT,
        DRY_SALT,
        AIR_DRY,
        THAW,
        TEMPER,
        HEAT,
        REST,
        HOLD,
        CHILL
    }

    private final MeatModel meat;
    private final Catalog catalog;
    private final double pressure;
    private final boolean waterFixed;

    StageReader(MeatModel meat, Catalog catalog, double pressure, boolean waterFixed) {
        this.meat = meat;
        this.catalog = catalog;
        this.pressure = pressure;
        this.waterFixed = waterFixed;
    }

    List<Stage> read(Node root) {
        List<Stage> stages = new ArrayList<>();
        List<Node> nodes = root.list("stages");
        for (Node node : nodes) {
            stages.add(stage(node));
        }
        return stages;
    }

    private Stage stage(Node node) {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        for (Kind kind : Kind.values()) {
            kinds.put(kind.name().toLowerCase(Locale.ROOT).replace('_', '-'), kind);
        }
        Kind kind = node.kind("kind", kinds);
        String name = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        SaltExchange salt = salt(node, kind);
        List<FaceCondition> faces = faces(node, kind);
        StopRule stop = until(node);
        double time = time(node);
        return new Stage(name, faces, salt, time, stop);
    }

    private static double time(Node node) {
        Optional<String> key = node.oneOf("time", "at_most");
        double value = key.isPresent() ? node.quantityInRange(key.get(), Dimension.TIME, "1 s", LONGEST) : 60;
        return Double.isFinite(value) ? value : 60;
    }

    private static StopRule until(Node node) {
        Optional<Node> until = node.findChild("until");
        if (until.isEmpty()) {
            return StopRule.NEVER;
        }
        Node n = until.get();
        List<StopRule> rules = new ArrayList<>();
        add(rules, StopRule.Kind.CORE_ABOVE, n.findQuantityInRange("core", Dimension.TEMPERATURE, "-30 °C", "150 °C"));
        add(
                rules,
                StopRule.Kind.CORE_BELOW,
                n.findQuantityInRange("core_below", Dimension.TEMPERATURE, "-30 °C", "150 °C"));
        add(
                rules,
                StopRule.Kind.SURFACE_ABOVE,
                n.findQuantityInRange("surface", Dimension.TEMPERATURE, "-30 °C", "300 °C"));
        add(
                rules,
                StopRule.Kind.MEAN_SALT_ABOVE,
                n.findQuantityInRange("mean_salt", Dimension.FRACTION, "0 %", "20 %"));
        add(
                rules,
                StopRule.Kind.CORE_SALT_ABOVE,
                n.findQuantityInRange("core_salt", Dimension.FRACTION, "0 %", "20 %"));
        add(rules, StopRule.Kind.KILL_ABOVE, n.findNumber("log_reduction", 0.01, 20));
        if (rules.size() != 1) {
            node.problem("until", PHRASES.say("got-goals-expected-one-of", rules.size()));
            return StopRule.NEVER;
        }
        return rules.get(0);
    }

    private static void add(List<StopRule> rules, StopRule.Kind kind, OptionalDouble threshold) {
        threshold.ifPresent(value -> rules.add(new StopRule(kind, Double.isFinite(value) ? value : 0)));
    }

    private SaltExchange salt(Node node, Kind kind) {
        return switch (kind) {
            case SOAK -> liquid(node).map(liquid -> mixed(node, liquid)).orElseGet(() -> bath(node, strength(node)));
            case SOAK_OUT -> bath(node, new SaltStrength(0));
            case DRY_SALT -> dose(node);
            default -> SaltExchange.KEEP;
        };
    }

    private static SaltStrength strength(Node node) {
        double cold = SimulationFile.coldRoom();
        return node.parsed("strength", Words.strengthForms(), text -> Words.strength(text, cold), new SaltStrength(0));
    }

    /** The liquid of a soak, if one other than water is named. */
    private Optional<Liquid> liquid(Node node) {
        Optional<String> text = node.findText("liquid");
        Optional<Liquid> liquid = text.flatMap(catalog.liquids()::find);
        if (text.isPresent() && liquid.isEmpty()) {
            node.problem("liquid", SaltWishes.unknownLiquid(text.get(), catalog));
        }
        return liquid.filter(l -> l.parts().water() < 1);
    }

    /** A liquid of the catalog, as it is or salted to a strength that counts the salt it brings. */
    private SaltExchange mixed(Node node, Liquid liquid) {
        Bath bath = Bath.of(liquid, ratio(node), 0, 0);
        if (node.has("strength")) {
            SaltStrength strength = strength(node);
            if (strength.saltFraction() < bath.strength().saltFraction()) {
                node.problem(
                        "strength",
                        PHRASES.say(
                                "got-a-strength-below-that",
                                liquid.name(),
                                100 * bath.strength().saltFraction()));
            } else {
                bath = bath.withStrength(strength);
            }
        }
        return new SaltExchange.Bath(bath.salt(), bath.water(), swelling());
    }

    private SaltExchange bath(Node node, SaltStrength strength) {
        return SaltExchange.Bath.of(strength.saltFraction(), ratio(node), swelling());
    }

    private static double ratio(Node node) {
        return node.findParsed("solution", PHRASES.say("2-kg-per-kg-meat"), text -> Words.perMeat(text, 0.05, 10_000))
                .orElse(1.0);
    }

    private SaltSource.Swelling swelling() {
        return waterFixed
                ? SaltSource.Swelling.NONE
                : NetMassGain.load().swelling(meat.composition().water(), meat.nativeSalt(), PARTITION, 0);
    }

    private static SaltExchange dose(Node node) {
        double dose = node.quantityInRange("dose", Dimension.FRACTION, "0.01 %", "10 %");
        double saturated = SaltSolubility.saturation(SimulationFile.coldRoom());
        return new SaltExchange.Dose(Double.isFinite(dose) ? dose : 0.01, saturated / (1 - saturated));
    }

    private List<FaceCondition> faces(Node node, Kind kind) {
        if (node.has("appliance")) {
            return appliance(node);
        }
        FaceCondition first = face(node, kind);
        Optional<Node> second = node.findChild("second_face");
        OptionalDouble turn = node.findQuantityInRange("turn_every", Dimension.TIME, "5 s", "1 d");
        if (second.isEmpty()) {
            turn.ifPresent(t -> node.problem("turn_every", PHRASES.say("got-a-turn-without-a")));
            return List.of(first);
        }
        FaceCondition other = face(second.get(), kind);
        if (turn.isEmpty() || !Double.isFinite(turn.getAsDouble())) {
            return List.of(first, other);
        }
        return List.of(turning(first, other, turn.getAsDouble()), turning(other, first, turn.getAsDouble()));
    }

    private static FaceCondition turning(FaceCondition first, FaceCondition other, double interval) {
        return new FaceCondition(
                new TimeProfile.Alternating(
                        first.mediumTemperature().at(0),
                        other.mediumTemperature().at(0),
                        interval),
                new TimeProfile.Alternating(
                        first.coefficient().at(0), other.coefficient().at(0), interval),
                Math.max(first.emissivity(), other.emissivity()),
                Math.max(first.wetShare(), other.wetShare()),
                Math.max(first.vaporPressure(), other.vaporPressure()),
                first.totalPressure());
    }

    private List<FaceCondition> appliance(Node node) {
        String id = node.parsed("appliance", Words.anAppliance(), text -> text, "");
        Optional<Appliance> appliance = catalog.appliances().find(id);
        if (appliance.isEmpty()) {
            List<String> near = catalog.appliances().nearest(id, 3).stream()
                    .map(Appliance::id)
                    .toList();
            node.problem("appliance", Words.unknown(id, Words.anAppliance(), near, SimulationFile.listAppliances()));
        }
        double usual = appliance.map(a -> a.temperature().typical()).orElse(293.0);
        double setting = node.findQuantityInRange("setting", Dimension.TEMPERATURE, "-30 °C", "400 °C")
                .orElse(usual);
        if (appliance.isEmpty() || !Double.isFinite(setting)) {
            return List.of(FaceCondition.convection(293, 10));
        }
        return new CookingMedium(appliance.get(), setting, pressure, meat.hasSkin()).faces(Draw.MEDIAN, false);
    }

    private FaceCondition face(Node node, Kind kind) {
        boolean liquid = kind == Kind.SOAK || kind == Kind.SOAK_OUT;
        TimeProfile medium = medium(node, liquid || kind == Kind.DRY_SALT ? "temperature" : "medium");
        double coefficient = node.findQuantityInRange(
                        "coefficient", Dimension.HEAT_TRANSFER_COEFFICIENT, "0 W/(m2.K)", "1000000000 W/(m2.K)")
                .orElse(liquid ? LIQUID_COEFFICIENT : AIR_COEFFICIENT);
        double emissivity = node.findNumber("emissivity", 0, 1).orElse(liquid ? 0 : 0.9);
        double wet = liquid ? 0 : wetShare(node);
        double vapor = liquid ? 0 : vaporPressure(node, medium.at(0));
        if (!Double.isFinite(coefficient + emissivity + wet + vapor)) {
            return FaceCondition.convection(293, 10);
        }
        return new FaceCondition(medium, TimeProfile.constant(coefficient), emissivity, wet, vapor, pressure);
    }

    private static double wetShare(Node node) {
        return node.findParsed("evaporation", PHRASES.say("off-on-or-the-wet"), text -> {
                    String word = text.strip().toLowerCase(Locale.ROOT);
                    return switch (word) {
                        case "off", "no", "false" -> 0.0;
                        case "on", "yes", "true" -> USUAL_WET_SHARE;
                        default -> share(text);
                    };
                })
                .orElse(USUAL_WET_SHARE);
    }

    private static double share(String text) {
        double share = QuantityParser.parse(text, Dimension.FRACTION);
        if (!(share <= 1)) {
            throw new IllegalArgumentException(PHRASES.say("got-expected-off-on-or", text));
        }
        return share;
    }

    private double vaporPressure(Node node, double temperature) {
        OptionalDouble given = node.findQuantityInRange("vapor_pressure", Dimension.PRESSURE, "0 Pa", "60 kPa");
        OptionalDouble humidity = node.findQuantityInRange("humidity", Dimension.FRACTION, "0 %", "100 %");
        double saturated = IapwsIf97Saturation.pressure(Math.min(Math.max(temperature, 273.16), HOTTEST_SATURATED));
        if (given.isPresent() && humidity.isPresent()) {
            node.problem("humidity", PHRASES.say("got-a-vapor-pressure-and"));
        }
        if (given.isPresent()) {
            return requireVapor(node, "vapor_pressure", given.getAsDouble());
        }
        if (humidity.isPresent()) {
            return requireVapor(node, "humidity", humidity.getAsDouble() * saturated);
        }
        return Math.min(1500, 0.5 * saturated);
    }

    /** Air must remain beside the vapor: the evaporation relation has no value in pure steam. */
    private double requireVapor(Node node, String key, double vapor) {
        double most = Math.min(60_000, 0.9 * pressure);
        if (Double.isFinite(vapor) && vapor > most) {
            node.problem(key, PHRASES.say("got-kpa-of-vapor-in", vapor / 1000, most / 1000, pressure / 1000));
            return most;
        }
        return vapor;
    }

    private static TimeProfile medium(Node node, String key) {
        if (!node.isGroup(key)) {
            double constant = temperature(node, key);
            return TimeProfile.constant(constant);
        }
        Node n = node.child(key);
        Optional<String> form = n.oneOf("time_constant", "ramp", "period");
        double time = form.map(f -> n.quantityInRange(f, Dimension.TIME, "1 s", "1 d"))
                .filter(Double::isFinite)
                .orElse(600.0);
        if (form.isPresent() && form.get().equals("period")) {
            double swing = n.quantityInRange("swing", Dimension.TEMPERATURE_DIFFERENCE, "0 K", "100 K");
            return new TimeProfile.Cycling(temperature(n, "mean"), Double.isFinite(swing) ? swing : 0, time);
        }
        double start = temperature(n, "start");
        double end = temperature(n, "end");
        return form.isPresent() && form.get().equals("ramp")
                ? new TimeProfile.Ramp(start, end, time)
                : new TimeProfile.Approach(start, end, time);
    }

    private static double temperature(Node node, String key) {
        double value = node.quantityInRange(key, Dimension.TEMPERATURE, "-40 °C", "600 °C");
        return Double.isFinite(value) ? value : 293;
    }
}
