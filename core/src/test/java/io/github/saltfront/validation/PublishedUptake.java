package io.github.saltfront.validation;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.AcidAdvice;
import io.github.saltfront.plan.DayEnsemble;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.NetMassGain;
import io.github.saltfront.plan.SaltedAlready;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.quality.Band;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Published uptake of salt and water against what the program predicts, source by source. "Drawn" rows were in view when a table
 * of the program was drawn: they check that the table and the solver carry them through, and validate nothing. Sets whose piece,
 * brine or time is not printed cannot be predicted and are listed with that reason.
 */
final class PublishedUptake {
    private static final String THICK_PART =
            "the layers are the thick part of the fillet; its thin edges, which fill up first,"
                    + " are left out, and the gain follows the salt front";

    private static final Catalog CATALOG = Catalog.load();
    private static final NetMassGain GAIN = NetMassGain.load();
    private static final double HOUR = 3600;
    private static final double COLD = Temperature.fromCelsius(4);
    private static final double NINETY_PERCENT = 1.6448536269514722;

    /** Half width of "overnight" about twelve hours [s]. */
    private static final double OVERNIGHT_HALF = 4 * HOUR;

    private PublishedUptake() {}

    /**
     * A measured figure and its prediction.
     *
     * @param set data set, U01 to U21
     * @param what what is measured
     * @param source authors and year
     * @param unit its unit
     * @param low lower end of the measured figure
     * @param high upper end
     * @param predicted prediction with its band
     * @param drawn whether the figure was in view when a table was drawn
     * @param miss why it is missed; empty if it is not
     */
    record Row(
            String set,
            String what,
            String source,
            String unit,
            double low,
            double high,
            Band predicted,
            boolean drawn,
            String miss) {
        /** The band and the measured range have a value in common. */
        boolean isMet() {
            return predicted.low() <= high && predicted.high() >= low;
        }
    }

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.addAll(breastOvernight());
        rows.addAll(saltedAtThePlant());
        rows.addAll(signsOfWaterGain());
        rows.add(waterChill());
        rows.add(acid());
        return rows;
    }

    /** U04: chicken breast overnight; thickness 25 mm (spread 10 %) and ten times as much bath are assumed. */
    private static List<Row> breastOvernight() {
        String source = "Lopez-Alt 2015 (book, n = 3)";
        return List.of(
                new Row(
                        "U04",
                        "mass gain of breast overnight in 6 %",
                        source,
                        "%",
                        11.6,
                        11.6,
                        massGain(0.06),
                        true,
                        THICK_PART),
                new Row("U04", "the same in plain water", source, "%", 3.2, 3.2, massGain(0), true, THICK_PART));
    }

    private static Band massGain(double strength) {
        MeatModel meat = MeatModel.of(CATALOG.cuts().get("chicken-breast-skinless"));
        DayEnsemble ensemble = new DayEnsemble(
                meat,
                new Shape.Slab(0.025),
                COLD,
                Draw.ensemble(100, 7),
                SolverSettings.DEFAULT.withTolerances(0.2, 1e-4));
        DayEnsemble.StageFor soak = draw -> {
            double place = Math.max(-1, Math.min(1, draw.normal(Uncertainty.SWELLING) / NINETY_PERCENT));
            // no dimension of its own for the hours of a night: the thermometer has no part in a soak
            double night = draw.normal(Uncertainty.PROBE) / NINETY_PERCENT * OVERNIGHT_HALF;
            SaltExchange bath = SaltExchange.Bath.of(
                    strength, 10, GAIN.swelling(meat.composition().water(), meat.nativeSalt(), 0.95, place));
            return new Stage(
                    "soak",
                    List.of(FaceCondition.convection(COLD, 100)),
                    bath,
                    Math.max(4 * HOUR, 12 * HOUR + night),
                    StopRule.NEVER);
        };
        Interval gain = Interval.of(ensemble.run(List.of(soak), Runnable::run).stream()
                .mapToDouble(day -> -100 * day.end("soak").massLoss())
                .toArray());
        return new Band(gain.low(), gain.median(), gain.high());
    }

    /** U01 c and d, U21: meat salted before it was sold, cooked with 0.8 to 1.0 of its salt kept and a yield of 0.70 to 0.80. */
    private static List<Row> saltedAtThePlant() {
        double enhanced =
                CATALOG.cuts().get("pork-tenderloin-enhanced").composition().nativeSalt();
        Cut bird = CATALOG.cuts().get("chicken-whole");
        double ratio = SaltedAlready.KOSHER_SALT / bird.composition().nativeSalt();
        String magazine = "cooking magazine's laboratory test (press)";
        return List.of(
                new Row(
                        "U01c",
                        "sodium of cooked enhanced pork",
                        magazine,
                        "mg/100 g",
                        268,
                        268,
                        cooked(enhanced),
                        false,
                        ""),
                new Row(
                        "U01d",
                        "sodium of cooked kosher chicken breast",
                        magazine,
                        "mg/100 g",
                        252,
                        252,
                        cooked(SaltedAlready.KOSHER_SALT),
                        false,
                        "the figure used is that of the outer meat; a breast takes next to none (Mast 1983), so too much is"
                                + " counted in, which errs toward less salt"),
                new Row(
                        "U21",
                        "sodium of koshered broilers over plain ones",
                        "Mast, MacNeil 1983 (abstract)",
                        "-",
                        4,
                        6,
                        Band.exactly(ratio),
                        true,
                        ""));
    }

    private static Band cooked(double raw) {
        double milligrams = 1e5 * Sodium.of(raw);
        return new Band(milligrams * 0.8 / 0.80, milligrams * 0.9 / 0.75, milligrams * 1.0 / 0.70);
    }

    /** U05 chicken and U14 pork: whether the water of the meat grows or shrinks; the sign is 1 or -1. */
    private static List<Row> signsOfWaterGain() {
        List<Row> rows = new ArrayList<>();
        Map<Double, Integer> chicken = new TreeMap<>(Map.of(0.05, 1, 0.10, 1, 0.15, -1, 0.20, -1));
        chicken.forEach((strength, sign) ->
                rows.add(sign("U05", "chicken-breast-skinless", "Schmidt 2006 (abstract)", strength, sign, "")));
        // 50 to 280 kg/m3 of brine at 5 C, with the density of Rogers and Pitzer
        Map<Double, Integer> pork = new TreeMap<>(Map.of(50.0, 1, 100.0, 1, 150.0, 1, 240.0, -1, 280.0, -1));
        pork.forEach((content, sign) -> rows.add(sign(
                "U14",
                "pork-loin-chop",
                "pork loin slices, book chapter 2015 (abstract)",
                SaltStrength.ofSaltPerSolutionVolume(content, Temperature.fromCelsius(5))
                        .saltFraction(),
                sign,
                content == 150
                        ? "the table is of net mass, drawn for chicken and pork together; its water turns at 10 to 11 %, that of"
                                + " these slices near 17.7 %"
                        : "")));
        return rows;
    }

    private static Row sign(String set, String id, String source, double strength, int sign, String miss) {
        Cut cut = CATALOG.cuts().get(id);
        double perWater = strength / (1 - strength);
        double[] gain = new double[3];
        for (int i = 0; i < gain.length; i++) {
            gain[i] = Math.signum(GAIN.waterGain(
                    perWater,
                    cut.composition().normalized().water(),
                    cut.composition().nativeSalt(),
                    0.95,
                    i - 1));
        }
        return new Row(
                set,
                String.format(java.util.Locale.ROOT, "sign of the water gain in %.1f %%", 100 * strength),
                source,
                "-",
                sign,
                sign,
                new Band(gain[1], gain[1], gain[1]),
                true,
                miss);
    }

    /** U15: whole broilers in a stirred water chiller. */
    private static Row waterChill() {
        return new Row(
                "U15",
                "mass gain of broilers in a stirred water chiller",
                "poultry chilling study 2004 (abstract, authors not confirmed)",
                "%",
                11.7,
                11.7,
                GAIN.at(0).times(100),
                false,
                "water held by skin, fat and cavity, which the table of lean meat leaves out");
    }

    /** U20: strips of beef shin in citrus juice of pH 3.1. */
    private static Row acid() {
        return new Row(
                "U20",
                "mass of beef strips in citrus juice, pH 3.1",
                "Burke, Monahan 2003 (abstract)",
                "-",
                1.65,
                1.65,
                AcidAdvice.massFactor(3.1, false),
                true,
                "the table ends at pH 3.5 and holds its last row beyond");
    }

    /** Sets that cannot be predicted, and why. */
    static Map<String, String> unusable() {
        Map<String, String> reasons = new TreeMap<>();
        reasons.put("U03", "water of the brine not printed");
        reasons.put("U06", "size of the cuts not in the abstract");
        reasons.put("U07", "ratios of vacuum to atmosphere; vacuum is not modeled");
        reasons.put("U08", "size of the cubes and strength of the brine not in the abstract");
        reasons.put("U09", "geometry and brine not in the abstract");
        reasons.put("U10", "size of the cubes and time not in the abstract");
        reasons.put("U11, U12, U13, U19", "numbers stand in figures that were not read off");
        reasons.put("U16, U17", "no numbers beyond \"not different\"");
        reasons.put("U18", "tumbled with phosphate; not a soak");
        return reasons;
    }
}
