package io.github.saltfront.app.export;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Measure;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.Bath;
import io.github.saltfront.plan.HandlingCaution;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SpoonedSalt;
import io.github.saltfront.quality.Band;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** What to do with salt, under the names of the file contract. */
public final class SaltJson {
    private SaltJson() {}

    /**
     * Returns the salting as nested maps and lists.
     *
     * @param request the request
     * @param salting the salting of its plan
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(Request request, Plan.SaltPlan salting) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("treatment", word(salting.treatment()));
        json.put("reasons", salting.reasons().stream().map(SaltJson::reason).toList());
        json.put("target_pct", salting.target() * 100);
        json.put("salt_g", salting.salt() * 1000);
        if (salting.salt() > 0) {
            SpoonedSalt spooned =
                    SpoonedSalt.of(salting.salt(), request.salting().salt(), Measure.UnitSystem.US, Catalog.load());
            json.put("salt_spoons", SpoonWords.of(spooned));
            json.put("salt_form", request.salting().salt().id());
        }
        json.put("water_g", salting.water() * 1000);
        salting.soaking().ifPresent(soaking -> {
            bath(json, soaking.bath(), request.salting().refrigerator());
            json.put("vessel", soaking.vessel());
            json.put("matched_to_target", soaking.isMatched());
            json.put("left_for_good_pct", soaking.end() * 100);
            soaking.acid().ifPresent(acid -> {
                Map<String, Object> node = new LinkedHashMap<>();
                node.put("advice", word(acid.advice()));
                node.put("words", acid.advice().words());
                node.put("depth_mm", band(acid.depth(), 1000));
                json.put("acid", node);
            });
        });
        json.put("time_min", salting.time() / 60);
        salting.window().ifPresent(window -> {
            json.put("earliest_min", window.earliest() / 60);
            json.put("best_min", window.best() / 60);
            json.put("latest_min", window.latest() / 60);
            json.put("too_salty_at_best_pct", window.tooSaltyAtBest() * 100);
            json.put("one_time_suits_all", window.isSure());
        });
        salting.even().ifPresent(even -> json.put("even_after_min", band(even, 1.0 / 60)));
        json.put("after_salting_pct", PlanJson.interval(salting.after(), 100, 0));
        json.put("finish_g", salting.finish() * 1000);
        json.put("cautions", salting.cautions().stream().map(SaltJson::caution).toList());
        return json;
    }

    private static void bath(Map<String, Object> json, Bath bath, double cold) {
        json.put(
                "liquids",
                bath.portions().stream()
                        .map(p -> {
                            Map<String, Object> node = new LinkedHashMap<>();
                            node.put("liquid", p.liquid().id());
                            node.put("mass_g", p.mass() * 1000);
                            node.put("volume_l", p.mass() / p.liquid().density() * 1000);
                            return node;
                        })
                        .toList());
        json.put("salt_of_liquid_g", bath.liquidSalt() * 1000);
        json.put("sugar_added_g", bath.addedSugar() * 1000);
        json.put("sugar_g", bath.sugar() * 1000);
        json.put("acid_g", bath.acid() * 1000);
        json.put("allergens", bath.allergens().stream().map(SaltJson::word).toList());
        SaltStrength strength = bath.strength();
        json.put("strength_pct_of_water_mass", bath.saltPerWater() * 100);
        json.put("strength_pct_of_solution_mass", strength.saltFraction() * 100);
        json.put("strength_g_per_liter_of_water", strength.saltPerWaterVolume(cold));
    }

    private static Map<String, Object> reason(Plan.Reason reason) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("reason", reason.words());
        json.put("source", String.join("; ", reason.sources()));
        return json;
    }

    private static Map<String, Object> caution(HandlingCaution caution) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", caution.id());
        json.put("level", word(caution.level()));
        json.put("text", caution.text());
        json.put("source", String.join("; ", caution.provenance().sourceIds()));
        return json;
    }

    private static Map<String, Double> band(Band band, double factor) {
        Map<String, Double> json = new LinkedHashMap<>();
        json.put("low", band.low() * factor);
        json.put("median", band.typical() * factor);
        json.put("high", band.high() * factor);
        return json;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
