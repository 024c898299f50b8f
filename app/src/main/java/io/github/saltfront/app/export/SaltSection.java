package io.github.saltfront.app.export;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Measure;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.Bath;
import io.github.saltfront.plan.BrineSheet;
import io.github.saltfront.plan.HandlingCaution;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SpoonedSalt;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What to do with salt, as plain text. */
public final class SaltSection {
    private static final Phrases PHRASES = Phrases.of(SaltSection.class);

    /** Longest wait in the refrigerator that is worth telling of [s]. */
    private static final double LONGEST_WAIT = 3 * 86400;

    private static final double TOLD_IN_HOURS = 3 * 3600;

    private final Request request;
    private final Plan.SaltPlan salting;
    private final StringBuilder text = new StringBuilder();

    private SaltSection(Request request, Plan.SaltPlan salting) {
        this.request = request;
        this.salting = salting;
    }

    /**
     * Returns the text.
     *
     * @param request the request
     * @param salting the salting of its plan
     * @return lines of at most 64 columns
     */
    public static String of(Request request, Plan.SaltPlan salting) {
        return new SaltSection(request, salting).write();
    }

    private String write() {
        text.append(TextLayout.wrapped(PHRASES.say("salt-how", treatment(salting.treatment())), 0));
        salting.reasons()
                .forEach(reason ->
                        text.append(TextLayout.wrapped(reason.words() + source(reason.sources()), "  - ", "    ")));
        salting.soaking().ifPresent(this::bath);
        if (salting.salt() > 0) {
            String spoons = spoons(salting.salt());
            row(
                    PHRASES.say("salt"),
                    request.equipment().scale()
                            ? PHRASES.say("by-the-scale-or", grams(salting.salt()), spoons)
                            : PHRASES.say("that-is-by-a-scale", spoons, grams(salting.salt())));
            row("", PHRASES.say("of-level", lower(request.salting().salt().name())));
            loads();
        }
        salting.soaking().ifPresent(this::strength);
        time();
        Interval after = salting.after();
        row(
                salting.treatment() == Request.Treatment.NONE ? PHRASES.say("meat-now") : PHRASES.say("meat-then"),
                PHRASES.say("of-salt", percent(after.median()) + band(after)));
        salting.soaking().ifPresent(this::end);
        if (salting.finish() > 0) {
            row(PHRASES.say("finish"), PHRASES.say("salt-on-the-outside-before", grams(salting.finish())));
        }
        return text.toString();
    }

    /** Where a reason comes from, short; what was asked for or computed here needs no mark. */
    private static String source(List<String> sources) {
        String words = sources.stream()
                .filter(s -> !s.equals("model") && !s.equals("request"))
                .map(s -> s.replace('-', ' '))
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? "" : " [" + words + "]";
    }

    private void bath(Plan.Soaking soaking) {
        Bath bath = soaking.bath();
        for (Bath.Portion portion : bath.portions()) {
            double liters = portion.mass() / portion.liquid().density();
            row(
                    bath.portions().indexOf(portion) == 0 ? PHRASES.say("liquid") : "",
                    grams(portion.mass()) + " (" + QuantityFormat.volume(liters, KitchenUnits.METRIC) + ") "
                            + lower(portion.liquid().name()));
        }
        row(PHRASES.say("vessel"), soaking.vessel());
        if (!bath.allergens().isEmpty()) {
            row(
                    PHRASES.say("allergens"),
                    bath.allergens().stream()
                            .map(a -> PHRASES.say("allergen." + a.name().toLowerCase(Locale.ROOT)))
                            .collect(Collectors.joining(", ")));
        }
        if (bath.addedSugar() > 0) {
            row(PHRASES.say("sugar"), grams(bath.addedSugar()));
        }
    }

    private void strength(Plan.Soaking soaking) {
        Bath bath = soaking.bath();
        if (bath.liquidSalt() > 0.0005 * bath.mass()) {
            boolean none = salting.salt() <= 0;
            row(
                    none ? PHRASES.say("salt") : "",
                    none
                            ? PHRASES.say("none-to-add-is-in", grams(bath.liquidSalt()))
                            : PHRASES.say("more-is-in-the-liquid", grams(bath.liquidSalt())));
        }
        SaltStrength strength = bath.strength();
        double cold = request.salting().refrigerator();
        row(PHRASES.say("strength"), PHRASES.say("of-the-mass-of-the", 100 * bath.saltPerWater()));
        row("", PHRASES.say("of-the-mass-of-salt", 100 * strength.saltFraction()));
        row("", PHRASES.say("g-per-liter-of-water", strength.saltPerWaterVolume(cold)));
    }

    private void time() {
        if (salting.time() > 0) {
            row(PHRASES.say("time"), PHRASES.say("in-the-refrigerator", time(salting.time())));
        }
        salting.window().ifPresent(window -> {
            Plan.Soaking soaking = salting.soaking().orElseThrow();
            if (window.earliest() <= window.latest()) {
                row(PHRASES.say("earliest"), PHRASES.say("to-taste-seasoned", time(window.earliest())));
                row(soaking.isMatched() ? PHRASES.say("done") : PHRASES.say("best"), best(window, soaking.isMatched()));
            }
            row(PHRASES.say("latest"), time(window.latest()) + ", " + soaking.limit());
        });
        salting.even().ifPresent(even -> {
            if (salting.time() < even.typical()) {
                row(
                        PHRASES.say("even"),
                        even.typical() > LONGEST_WAIT
                                ? PHRASES.say("no-the-middle-stays-milder")
                                : PHRASES.say("the-middle-catches-up-in", range(even)));
            }
        });
    }

    private static String best(Plan.Window window, boolean isMatched) {
        if (isMatched && window.best() >= BrineSheet.LONGEST) {
            return PHRASES.say("not-in-it-stays-milder", time(BrineSheet.LONGEST));
        }
        return time(window.best()) + (isMatched ? PHRASES.say("nearly-all-the-way") : "");
    }

    private void end(Plan.Soaking soaking) {
        if (soaking.isMatched()) {
            row(PHRASES.say("at-the-end"), PHRASES.say("salt-if-it-is-left", percent(soaking.end())));
        }
        soaking.acid().ifPresent(acid -> {
            Band depth = acid.depth();
            row(
                    PHRASES.say("acid"),
                    PHRASES.say(
                            "goes-about-mm-deep-in", depth.typical() * 1000, depth.low() * 1000, depth.high() * 1000));
            text.append(TextLayout.wrapped(acid.advice().words(), 12));
        });
    }

    /** Returns the cautions of salting as texts, gravest first. */
    static List<String> cautions(Plan.SaltPlan salting) {
        return salting.cautions().stream().map(HandlingCaution::text).toList();
    }

    private static String treatment(Request.Treatment treatment) {
        return switch (treatment) {
            case WET_BRINE -> PHRASES.say("wet-in-a-brine");
            case EQUILIBRIUM -> PHRASES.say("wet-in-a-weak-brine");
            case DAIRY -> PHRASES.say("in-cultured-milk-with-salt");
            case MARINADE -> PHRASES.say("in-a-marinade");
            case DRY_SALT -> PHRASES.say("dry-ahead");
            case SURFACE_SALT -> PHRASES.say("on-the-outside-just-before");
            case NONE, AUTO -> PHRASES.say("none-ahead");
        };
    }

    private static String band(Interval interval) {
        return interval.high() - interval.low() < 5e-5
                ? ""
                : PHRASES.say("to", percent(interval.low()), percent(interval.high()));
    }

    private static String range(Band even) {
        return even.typical() >= TOLD_IN_HOURS
                ? PHRASES.say("about-h-to", even.typical() / 3600, even.low() / 3600, even.high() / 3600)
                : PHRASES.say("about-min-to", even.typical() / 60, even.low() / 60, even.high() / 60);
    }

    private static String time(double seconds) {
        return QuantityFormat.time(60 * Math.rint(seconds / 60));
    }

    private static String percent(double fraction) {
        return Phrases.figures("%.2f %%", 100 * fraction);
    }

    private static String lower(String name) {
        return Phrases.within(name.substring(0, 1)) + name.substring(1);
    }

    /** What each load takes, where they are salted one after the other. */
    private void loads() {
        int once = request.piecesAtOnce();
        double share = (double) once / request.food().pieces();
        if (share < 1) {
            String liquid = salting.water() > 0
                    ? PHRASES.say(
                            "in-water-mixed-anew", QuantityFormat.mass(share * salting.water(), KitchenUnits.METRIC))
                    : "";
            row("", PHRASES.say("for-each-load-of", once, grams(share * salting.salt()), liquid));
        }
    }

    private String spoons(double salt) {
        return SpoonWords.of(SpoonedSalt.of(salt, request.salting().salt(), Measure.UnitSystem.US, Catalog.load()));
    }

    private void row(String name, String value) {
        text.append(TextLayout.row(name, value));
    }

    private static String grams(double kilograms) {
        return TextLayout.grams(kilograms);
    }
}
