package io.github.saltfront.app.cli;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.CutComposition;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.catalog.SaltForm;
import io.github.saltfront.matter.SaltSolubility;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.BrineOrder;
import io.github.saltfront.plan.HandlingCaution;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.plan.SaltedAlready;
import io.github.saltfront.plan.StrengthBasis;
import io.github.saltfront.plan.Vessel;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Seasoning;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** Options of {@code brine} and their reading into an order. Nothing is decided here but defaults. */
final class BrineOptions {
    private static final double PERCENT = 0.01;
    private static final double DEFAULT_DENSITY = 1060;
    private static final double DEFAULT_FAT = 0.02;
    private static final double DEFAULT_ASH = 0.011;
    private static final double DEFAULT_NATIVE = 0.0015;
    private static final double PER_HUNDRED_GRAMS = 10;
    private static final String DEFAULT_CLASS = "R02";

    @Option(names = "--cut", description = "Cut of the catalog, e.g. chicken-breast-skinless.")
    private Optional<String> cut = Optional.empty();

    @Option(names = "--meat-water", description = "Water of the meat, e.g. \"75 %%\", if no cut is named.")
    private Optional<String> meatWater = Optional.empty();

    @Option(names = "--mass", required = true, description = "Mass of all the meat as bought, e.g. \"1.2 kg\".")
    private String mass = "";

    @Option(names = "--pieces", description = "How many pieces. Default: as many as the cut's usual mass makes.")
    private Optional<Integer> pieces = Optional.empty();

    @Option(names = "--thickness", description = "Thickness of a piece, e.g. \"25 mm\". Default: usual for the cut.")
    private Optional<String> thickness = Optional.empty();

    @Option(names = "--meat-solution", description = "\"Contains x %% solution\" of the meat's label, e.g. \"12 %%\".")
    private Optional<String> meatSolution = Optional.empty();

    @Option(names = "--meat-sodium", description = "Sodium of 100 g of the meat by its label, e.g. \"173 mg\".")
    private Optional<String> meatSodium = Optional.empty();

    @Option(names = "--kosher", description = "The meat was salted at the plant.")
    private boolean kosher;

    @Option(names = "--liquid", defaultValue = "water", description = "Liquid of the catalog. Default: water.")
    private String liquid = "water";

    @Option(
            names = {"--water", "--liquid-amount"},
            description = "Amount of the liquid, e.g. \"1 kg\" or \"1 L\". Default: what covers the meat in --vessel.")
    private Optional<String> amount = Optional.empty();

    @Option(
            names = "--vessel",
            description = "bag, tub, bird-in-pot, or the inner width of a round pot such as \"24 cm\". Default: tub.")
    private Optional<String> vessel = Optional.empty();

    @Option(names = "--strength", description = "Strength, e.g. \"6 %%\" or, with --basis liter, \"60 g/L\".")
    private Optional<String> strength = Optional.empty();

    @Option(
            names = "--basis",
            defaultValue = "solution",
            description = "What --strength is a part of: solution, water, liter (of water), liter-of-brine, saturation,"
                    + " salometer, density. Default: solution.")
    private String basis = "solution";

    @Option(
            names = "--target",
            description = "Salt of the raw meat to end at, e.g. \"0.75 %%\". Without --strength: equilibrium dosing.")
    private Optional<String> target = Optional.empty();

    @Option(
            names = "--mend",
            description =
                    "Meat that is salted wrong: the salt it holds, e.g. \"1.8 %%\", or with --strength how long it lay,"
                            + " e.g. \"20 h\". --water is then the plain water to soak it in.")
    private Optional<String> mend = Optional.empty();

    @Option(names = "--sugar", description = "Sugar to add, e.g. \"40 g\"; at most as much as the salt.")
    private Optional<String> sugar = Optional.empty();

    @Option(names = "--salt", defaultValue = "table-salt", description = "Salt of the catalog. Default: table-salt.")
    private String salt = "table-salt";

    @Option(names = "--label-sodium", description = "Sodium of a serving by the salt's label, e.g. \"590 mg\".")
    private Optional<String> labelSodium = Optional.empty();

    @Option(
            names = "--label-teaspoon",
            defaultValue = "0.25",
            description = "Serving of that label in teaspoons. Default: 0.25.")
    private double labelTeaspoon = 0.25;

    @Option(names = "--refrigerator", defaultValue = "4 C", description = "Temperature of the soak. Default: 4 C.")
    private String refrigerator = "4 C";

    private final Catalog catalog = Catalog.load();

    Optional<String> mend() {
        return mend;
    }

    Catalog catalog() {
        return catalog;
    }

    /** Reads all options; the order is there only if nothing is wrong. */
    Optional<BrineOrder> read(InputErrors errors) {
        double temperature = errors.within(
                "--refrigerator",
                refrigerator,
                Dimension.TEMPERATURE,
                Temperature.fromCelsius(0),
                Temperature.fromCelsius(30),
                "0 and 30 C");
        Optional<Cut> found = cut.flatMap(c -> errors.get(
                "--cut", Optional.<Cut>empty(), () -> Optional.of(catalog.cuts().get(c))));
        if (cut.isPresent() == meatWater.isPresent()) {
            errors.add("--cut", "name a cut, or give --meat-water, but not both.");
        }
        double total = errors.within("--mass", mass, Dimension.MASS, 0.002, 50, "2 g and 50 kg");
        Optional<Liquid> base = errors.get(
                "--liquid",
                Optional.<Liquid>empty(),
                () -> Optional.of(catalog.liquids().get(liquid)));
        SaltForm form = salt(errors);
        double sweet =
                sugar.map(s -> errors.quantity("--sugar", s, Dimension.MASS, 0)).orElse(0.0);
        BrineOrder.Goal goal = goal(errors, temperature);
        Band levels = levels(errors);
        OptionalDouble thick = thickness
                .map(t -> OptionalDouble.of(
                        errors.within("--thickness", t, Dimension.LENGTH, 0.002, 0.4, "2 and 400 mm")))
                .orElse(OptionalDouble.empty());
        CutComposition composition = composition(errors, found);
        SaltedAlready label = label(errors, found, composition.nativeSalt());
        if (!errors.isEmpty() || base.isEmpty()) {
            return Optional.empty();
        }
        Optional<Shape> shape = Optional.ofNullable(
                errors.<Shape>get("--thickness", new Shape.Slab(0.025), () -> shape(found, total, thick, composition)));
        double liquidMass = liquidMass(errors, base.get(), total, composition, found, shape.orElseThrow());
        if (!errors.isEmpty()) {
            return Optional.empty();
        }
        double bone = found.map(c -> c.traits().boneShare()).orElse(0.0);
        BrineOrder.Food food = new BrineOrder.Food(
                found.map(Cut::name).orElse("meat of " + QuantityFormat.percent(composition.water()) + " water"),
                composition,
                total * (1 - bone),
                shape.orElseThrow(),
                found.map(Cut::saltDiffusivity).orElseGet(this::defaultDiffusivity),
                found.map(c -> c.traits().hasSkin()).orElse(false),
                label);
        return Optional.of(new BrineOrder(
                food, new BrineOrder.Mix(base.get(), liquidMass, sweet, form), goal, levels, temperature));
    }

    private SaltDiffusivity defaultDiffusivity() {
        return catalog.diffusivities().stream()
                .filter(d -> d.id().equals(DEFAULT_CLASS))
                .findFirst()
                .orElseThrow();
    }

    private SaltForm salt(InputErrors errors) {
        SaltForm table = catalog.salts().get("table-salt");
        if (HandlingCaution.isCuringSalt(salt)) {
            errors.add("--salt", HandlingCaution.of("pink-salt").text());
            return table;
        }
        if (labelSodium.isPresent()) {
            double sodium = errors.quantity("--label-sodium", labelSodium.get(), Dimension.MASS, 590e-6);
            return errors.get("--label-sodium", table, () -> SaltForm.fromLabelSodium(labelTeaspoon, sodium));
        }
        return errors.get("--salt", table, () -> catalog.salts().get(salt));
    }

    private BrineOrder.Goal goal(InputErrors errors, double temperature) {
        if (strength.isEmpty()) {
            if (target.isEmpty() && mend.isEmpty()) {
                errors.add("--strength", "give a strength such as \"6 %\", or --target for an equilibrium dose.");
            }
            return new BrineOrder.Equilibrium();
        }
        Optional<StrengthBasis> found = Arrays.stream(StrengthBasis.values())
                .filter(b -> b.id().equals(basis.toLowerCase(Locale.ROOT).strip()))
                .findFirst();
        if (found.isEmpty()) {
            errors.add(
                    "--basis",
                    "must be one of "
                            + Arrays.stream(StrengthBasis.values())
                                    .map(StrengthBasis::id)
                                    .toList()
                            + ", got \"" + basis + "\".");
            return new BrineOrder.Equilibrium();
        }
        return errors.get(
                "--strength",
                new BrineOrder.Equilibrium(),
                () -> new BrineOrder.Strength(strength(found.get(), strength.get(), temperature)));
    }

    private static SaltStrength strength(StrengthBasis basis, String text, double temperature) {
        double value = BrineNumbers.strength(basis, text);
        double saturation = SaltSolubility.saturation(temperature);
        // beyond what dissolves even hot the core refuses in its own units; say it in the user's first
        boolean beyond = (basis == StrengthBasis.OF_SOLUTION && value > saturation)
                || (basis == StrengthBasis.OF_WATER && value > saturation / (1 - saturation));
        if (!beyond) {
            SaltStrength read = basis.read(value, temperature);
            if (read.saltFraction() <= saturation) {
                return read;
            }
        }
        throw new IllegalArgumentException("water at " + BrineNumbers.celsius(temperature) + " holds at most "
                + QuantityFormat.percent(saturation) + " salt of the solution ("
                + QuantityFormat.percent(saturation / (1 - saturation)) + " of the water's weight), got \"" + text
                + "\"; the rest would stay as crystals. Use less salt.");
    }

    private Band levels(InputErrors errors) {
        Seasoning seasoning = Seasoning.load();
        if (target.isEmpty()) {
            return seasoning.targetRaw();
        }
        double wanted = errors.within("--target", target.get(), Dimension.FRACTION, 0.001, 0.03, "0.1 and 3 %");
        double step = seasoning.differenceThreshold().typical();
        return new Band(wanted * (1 - step), wanted, wanted * (1 + step));
    }

    private CutComposition composition(InputErrors errors, Optional<Cut> found) {
        if (found.isPresent() || meatWater.isEmpty()) {
            return found.map(Cut::composition).orElseGet(() -> ofWater(0.75));
        }
        return ofWater(errors.within("--meat-water", meatWater.get(), Dimension.FRACTION, 0.3, 0.85, "30 and 85 %"));
    }

    private static CutComposition ofWater(double water) {
        double protein = 1 - water - DEFAULT_FAT - DEFAULT_ASH;
        return new CutComposition(water, protein, DEFAULT_FAT, 0, DEFAULT_ASH, DEFAULT_NATIVE, DEFAULT_DENSITY);
    }

    private SaltedAlready label(InputErrors errors, Optional<Cut> found, double nativeSalt) {
        OptionalDouble solution = meatSolution
                .map(s -> OptionalDouble.of(
                        errors.within("--meat-solution", s, Dimension.FRACTION, 0, 50 * PERCENT, "0 and 50 %")))
                .orElse(OptionalDouble.empty());
        OptionalDouble sodium = meatSodium
                .map(s -> OptionalDouble.of(PER_HUNDRED_GRAMS
                        * errors.within("--meat-sodium", s, Dimension.MASS, 0, 0.003, "0 and 3 g in 100 g")))
                .orElse(OptionalDouble.empty());
        return SaltedAlready.of(found, nativeSalt, new SaltedAlready.Label(solution, sodium, kosher));
    }

    private Shape shape(Optional<Cut> found, double total, OptionalDouble thick, CutComposition composition) {
        if (found.isPresent()) {
            double usual = found.get().size().mass().typical();
            int count = pieces.orElse((int) Math.max(1, Math.round(total / usual)));
            return PieceShape.of(found.get(), total / count, thick);
        }
        double depth = thick.orElseThrow(
                () -> new IllegalArgumentException("is needed where no cut is named, such as \"25 mm\"."));
        return PieceShape.ofThickness(total / pieces.orElse(1), depth, composition.density());
    }

    private double liquidMass(
            InputErrors errors,
            Liquid base,
            double total,
            CutComposition composition,
            Optional<Cut> found,
            Shape shape) {
        if (amount.isPresent()) {
            double read = BrineNumbers.massOrVolume(errors, "--water", amount.get(), base.density());
            if (!(read >= 0.01 && read <= 200)) {
                errors.add("--water", "must be between 10 g and 200 kg, got \"" + amount.get() + "\".");
            }
            return read;
        }
        String kind = vessel.orElse(found.map(c -> c.size().isHollow()).orElse(false) ? "bird-in-pot" : "tub");
        return errors.get("--vessel", 1.0, () -> {
            boolean named = kind.equals("bag") || kind.equals("tub") || kind.equals("bird-in-pot");
            Vessel chosen = named
                    ? new Vessel.Unmeasured(kind)
                    : new Vessel.Pot(BrineNumbers.length(kind, "bag, tub, bird-in-pot or a width such as \"24 cm\""));
            Vessel.Load load = new Vessel.Load(total, composition.density(), 2 * shape.halfThickness());
            return chosen.liquidToCover(load).typical() * base.density();
        });
    }
}
