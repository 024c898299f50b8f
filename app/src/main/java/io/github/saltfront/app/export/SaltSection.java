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
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What to do with salt, as plain text. */
public final class SaltSection {
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
        text.append(TextLayout.wrapped("SALT: " + treatment(salting.treatment()), 0));
        salting.reasons()
                .forEach(reason ->
                        text.append(TextLayout.wrapped(reason.words() + source(reason.sources()), "  - ", "    ")));
        salting.soaking().ifPresent(this::bath);
        if (salting.salt() > 0) {
            String spoons = spoons(salting.salt());
            row(
                    "salt",
                    request.equipment().scale()
                            ? grams(salting.salt()) + " by the scale, or " + spoons
                            : spoons + "; that is " + grams(salting.salt()) + " by a scale");
            row("", "of " + lower(request.salting().salt().name()) + ", level");
            loads();
        }
        salting.soaking().ifPresent(this::strength);
        time();
        Interval after = salting.after();
        row(
                salting.treatment() == Request.Treatment.NONE ? "meat now" : "meat then",
                percent(after.median()) + band(after) + " salt");
        salting.soaking().ifPresent(this::end);
        if (salting.finish() > 0) {
            row("finish", grams(salting.finish()) + " salt on the outside before the heat");
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
                    bath.portions().indexOf(portion) == 0 ? "liquid" : "",
                    grams(portion.mass()) + " (" + QuantityFormat.volume(liters, KitchenUnits.METRIC) + ") "
                            + lower(portion.liquid().name()));
        }
        row("vessel", soaking.vessel());
        if (!bath.allergens().isEmpty()) {
            row(
                    "allergens",
                    bath.allergens().stream()
                            .map(a -> a.name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(", ")));
        }
        if (bath.addedSugar() > 0) {
            row("sugar", grams(bath.addedSugar()));
        }
    }

    private void strength(Plan.Soaking soaking) {
        Bath bath = soaking.bath();
        if (bath.liquidSalt() > 0.0005 * bath.mass()) {
            boolean none = salting.salt() <= 0;
            row(
                    none ? "salt" : "",
                    none
                            ? "none to add: " + grams(bath.liquidSalt()) + " is in the liquid"
                            : grams(bath.liquidSalt()) + " more is in the liquid already, counted in");
        }
        SaltStrength strength = bath.strength();
        double cold = request.salting().refrigerator();
        row(
                "strength",
                String.format(Locale.ROOT, "%.1f %% of the mass of the water, that is", 100 * bath.saltPerWater()));
        row("", String.format(Locale.ROOT, "%.1f %% of the mass of salt and water,", 100 * strength.saltFraction()));
        row("", String.format(Locale.ROOT, "%.0f g per liter of water", strength.saltPerWaterVolume(cold)));
    }

    private void time() {
        if (salting.time() > 0) {
            row("time", time(salting.time()) + ", in the refrigerator");
        }
        salting.window().ifPresent(window -> {
            Plan.Soaking soaking = salting.soaking().orElseThrow();
            if (window.earliest() <= window.latest()) {
                row("earliest", time(window.earliest()) + " to taste seasoned");
                row(soaking.isMatched() ? "done" : "best", best(window, soaking.isMatched()));
            }
            row("latest", time(window.latest()) + ", " + soaking.limit());
        });
        salting.even().ifPresent(even -> {
            if (salting.time() < even.typical()) {
                row(
                        "even",
                        even.typical() > LONGEST_WAIT
                                ? "no: the middle stays milder than the outside"
                                : "the middle catches up in " + range(even)
                                        + " from the start; till then it is milder");
            }
        });
    }

    private static String best(Plan.Window window, boolean isMatched) {
        if (isMatched && window.best() >= BrineSheet.LONGEST) {
            return "not in " + time(BrineSheet.LONGEST) + "; it stays milder than the target";
        }
        return time(window.best()) + (isMatched ? ", nearly all the way" : "");
    }

    private void end(Plan.Soaking soaking) {
        if (soaking.isMatched()) {
            row("at the end", percent(soaking.end()) + " salt, if it is left for good");
        }
        soaking.acid().ifPresent(acid -> {
            Band depth = acid.depth();
            row(
                    "acid",
                    String.format(
                            Locale.ROOT,
                            "goes about %.1f mm deep in this time (%.1f to %.1f)",
                            depth.typical() * 1000,
                            depth.low() * 1000,
                            depth.high() * 1000));
            text.append(TextLayout.wrapped(acid.advice().words(), 12));
        });
    }

    /** Returns the cautions of salting as texts, gravest first. */
    static List<String> cautions(Plan.SaltPlan salting) {
        return salting.cautions().stream().map(HandlingCaution::text).toList();
    }

    private static String treatment(Request.Treatment treatment) {
        return switch (treatment) {
            case WET_BRINE -> "wet, in a brine";
            case EQUILIBRIUM -> "wet, in a weak brine matched to the target";
            case DAIRY -> "in cultured milk with salt";
            case MARINADE -> "in a marinade";
            case DRY_SALT -> "dry, ahead";
            case SURFACE_SALT -> "on the outside, just before";
            case NONE, AUTO -> "none ahead";
        };
    }

    private static String band(Interval interval) {
        return interval.high() - interval.low() < 5e-5
                ? ""
                : " (" + percent(interval.low()) + " to " + percent(interval.high()) + ")";
    }

    private static String range(Band even) {
        return even.typical() >= TOLD_IN_HOURS
                ? String.format(
                        Locale.ROOT,
                        "about %.0f h (%.0f to %.0f)",
                        even.typical() / 3600,
                        even.low() / 3600,
                        even.high() / 3600)
                : String.format(
                        Locale.ROOT,
                        "about %.0f min (%.0f to %.0f)",
                        even.typical() / 60,
                        even.low() / 60,
                        even.high() / 60);
    }

    private static String time(double seconds) {
        return QuantityFormat.time(60 * Math.rint(seconds / 60));
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.2f %%", 100 * fraction);
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** What each load takes, where they are salted one after the other. */
    private void loads() {
        int once = request.piecesAtOnce();
        double share = (double) once / request.food().pieces();
        if (share < 1) {
            String liquid = salting.water() > 0
                    ? " in " + QuantityFormat.mass(share * salting.water(), KitchenUnits.METRIC) + " water, mixed anew"
                    : "";
            row("", "for each load of " + once + ": " + grams(share * salting.salt()) + liquid);
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
