package io.github.saltfront.app.export;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.catalog.SaltForm;
import io.github.saltfront.data.Bibliography;
import io.github.saltfront.data.Reference;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Provenance;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The catalog under the names of the file contract. */
public final class CatalogJson {
    private static final Phrases PHRASES = Phrases.of(CatalogJson.class);

    private CatalogJson() {}

    /**
     * Returns all entries.
     *
     * @param catalog the catalog
     * @return kinds with their entries, each as names and values
     */
    public static Map<String, List<Map<String, Object>>> of(Catalog catalog) {
        Map<String, List<Map<String, Object>>> json = new LinkedHashMap<>();
        json.put("cuts", catalog.cuts().all().stream().map(CatalogJson::cut).toList());
        json.put("salts", catalog.salts().all().stream().map(CatalogJson::salt).toList());
        json.put(
                "liquids",
                catalog.liquids().all().stream().map(CatalogJson::liquid).toList());
        json.put(
                "appliances",
                catalog.appliances().all().stream().map(CatalogJson::appliance).toList());
        return json;
    }

    /**
     * Keeps one kind and the entries that hold a word.
     *
     * @param all all entries
     * @param kind kind to keep; all if null
     * @param word word to look for in id and name; any if null
     * @return what is left
     */
    public static Map<String, List<Map<String, Object>>> chosen(
            Map<String, List<Map<String, Object>>> all, @Nullable String kind, @Nullable String word) {
        Map<String, List<Map<String, Object>>> chosen = new LinkedHashMap<>();
        all.forEach((name, entries) -> {
            if (kind == null || kind.equals(name)) {
                chosen.put(
                        name,
                        entries.stream()
                                .filter(e -> word == null || holds(e, word.toLowerCase(Locale.ROOT)))
                                .toList());
            }
        });
        return chosen;
    }

    private static boolean holds(Map<String, Object> entry, String word) {
        String text = entry.get("id") + " " + entry.get("name");
        return text.toLowerCase(Locale.ROOT).contains(word);
    }

    /**
     * Adds the sources to chosen entries.
     *
     * @param chosen entries
     * @return content for a JSON writer
     */
    public static Map<String, Object> document(Map<String, List<Map<String, Object>>> chosen) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", "saltfront.catalog");
        json.put("version", 1);
        json.putAll(chosen);
        Map<String, Object> sources = new LinkedHashMap<>();
        Bibliography bibliography = Bibliography.load();
        for (String id : sourceIds(chosen)) {
            bibliography.find(id).ifPresent(reference -> sources.put(id, citation(reference)));
        }
        json.put("sources", sources);
        return json;
    }

    private static Set<String> sourceIds(Map<String, List<Map<String, Object>>> chosen) {
        Set<String> ids = new TreeSet<>();
        chosen.values()
                .forEach(entries -> entries.forEach(entry -> {
                    if (entry.get("sources") instanceof List<?> list) {
                        list.forEach(id -> ids.add(String.valueOf(id)));
                    }
                }));
        return ids;
    }

    private static String citation(Reference reference) {
        List<String> parts = new ArrayList<>();
        for (String part :
                List.of(reference.authors(), reference.year(), reference.title(), reference.venue(), reference.doi())) {
            if (!part.isEmpty()) {
                parts.add(part);
            }
        }
        return parts.isEmpty() ? reference.note() : String.join(". ", parts);
    }

    /**
     * Returns entries as text of at most 72 columns, with the sources they name.
     *
     * @param chosen entries
     * @return the text
     */
    public static String text(Map<String, List<Map<String, Object>>> chosen) {
        StringBuilder text = new StringBuilder();
        chosen.forEach((kind, entries) -> {
            text.append(kind).append(" (").append(entries.size()).append(")\n");
            for (Map<String, Object> entry : entries) {
                text.append("  ").append(entry.get("id")).append('\n');
                text.append(TextLayout.wrapped(String.valueOf(entry.get("summary")), 6));
            }
            text.append('\n');
        });
        text.append("sources\n");
        Bibliography bibliography = Bibliography.load();
        for (String id : sourceIds(chosen)) {
            bibliography.find(id).ifPresent(r -> text.append(TextLayout.wrapped(id + ": " + citation(r), 2)));
        }
        return text.toString();
    }

    private static Map<String, Object> cut(Cut cut) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", cut.id());
        json.put("name", cut.name());
        json.put("aliases", cut.aliases());
        json.put("species", cut.species());
        json.put("mass_g", band(cut.size().mass(), 1000));
        json.put("thickness_mm", cut.size().thickness() * 1000);
        json.put("shape", cut.size().shape().name().toLowerCase(Locale.ROOT));
        json.put("water_pct", cut.composition().water() * 100);
        json.put("protein_pct", cut.composition().protein() * 100);
        json.put("fat_pct", cut.composition().fat() * 100);
        json.put("native_salt_pct", cut.composition().nativeSalt() * 100);
        json.put("bone_pct", cut.traits().boneShare() * 100);
        json.put("core_temperature_c", celsius(cut.qualityCore()));
        put(json, cut.provenance());
        json.put(
                "summary",
                PHRASES.say(
                        "summary.cut",
                        cut.name(),
                        cut.size().mass().typical() * 1000,
                        cut.size().thickness() * 1000,
                        cut.composition().water() * 100,
                        cut.composition().fat() * 100,
                        String.join(", ", sources(cut.provenance()))));
        return json;
    }

    private static Map<String, Object> salt(SaltForm salt) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", salt.id());
        json.put("name", salt.name());
        Band teaspoon = salt.massOf(4.92892159375e-6);
        json.put("g_per_us_teaspoon", band(teaspoon, 1000));
        put(json, salt.provenance());
        json.put(
                "summary",
                PHRASES.say(
                        "summary.salt",
                        salt.name(),
                        teaspoon.typical() * 1000,
                        teaspoon.low() * 1000,
                        teaspoon.high() * 1000,
                        String.join(", ", sources(salt.provenance()))));
        return json;
    }

    private static Map<String, Object> liquid(Liquid liquid) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", liquid.id());
        json.put("name", liquid.name());
        json.put("water_pct", liquid.parts().water() * 100);
        json.put("salt_pct", liquid.parts().salt() * 100);
        json.put("sugar_pct", liquid.parts().sugar() * 100);
        json.put(
                "allergens",
                liquid.allergens().stream()
                        .map(a -> a.name().toLowerCase(Locale.ROOT))
                        .toList());
        put(json, liquid.provenance());
        json.put(
                "summary",
                PHRASES.say(
                        "summary.liquid",
                        liquid.name(),
                        liquid.parts().water() * 100,
                        liquid.parts().salt() * 100,
                        liquid.parts().sugar() * 100,
                        String.join(", ", sources(liquid.provenance()))));
        return json;
    }

    private static Map<String, Object> appliance(Appliance appliance) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", appliance.id());
        json.put("name", appliance.name());
        json.put("temperature_c", celsius(appliance.temperature()));
        json.put("convection_w_m2k", band(appliance.convection(), 1));
        put(json, appliance.provenance());
        json.put(
                "summary",
                PHRASES.say(
                        "summary.appliance",
                        appliance.name(),
                        Temperature.toCelsius(appliance.temperature().low()),
                        Temperature.toCelsius(appliance.temperature().high()),
                        appliance.convection().typical(),
                        appliance.convection().low(),
                        appliance.convection().high(),
                        String.join(", ", sources(appliance.provenance()))));
        return json;
    }

    private static void put(Map<String, Object> json, Provenance provenance) {
        json.put("sources", sources(provenance));
    }

    private static List<String> sources(Provenance provenance) {
        return provenance.sourceIds();
    }

    private static Map<String, Double> celsius(Band band) {
        Map<String, Double> json = new LinkedHashMap<>();
        json.put("low", Temperature.toCelsius(band.low()));
        json.put("typical", Temperature.toCelsius(band.typical()));
        json.put("high", Temperature.toCelsius(band.high()));
        return json;
    }

    private static Map<String, Double> band(Band band, double factor) {
        Map<String, Double> json = new LinkedHashMap<>();
        json.put("low", band.low() * factor);
        json.put("typical", band.typical() * factor);
        json.put("high", band.high() * factor);
        return json;
    }
}
