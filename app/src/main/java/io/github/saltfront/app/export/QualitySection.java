package io.github.saltfront.app.export;

import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.PlateQuality;
import io.github.saltfront.quality.Browning;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.LinkedHashMap;
import java.util.Map;

/** Crust, skin and tenderness of a plan, for people and under the names of the file contract. */
final class QualitySection {
    private static final Phrases PHRASES = Phrases.of(QualitySection.class);

    private QualitySection() {}

    /** Rows of the plate, with words first and numbers behind. */
    static String text(PlateQuality quality, Interval evaporated) {
        StringBuilder text = new StringBuilder();
        text.append(TextLayout.row(
                PHRASES.say("of-it"),
                PHRASES.say("evaporates-drips", percent(evaporated), percent(quality.dripped()))));
        text.append(TextLayout.row(
                quality.skin() ? PHRASES.say("skin") : PHRASES.say("surface"),
                PHRASES.say(
                        "hottest-c",
                        quality.browningWord(),
                        quality.drynessWord(),
                        Temperature.toCelsius(quality.surfaceMaximum().median()))));
        String palest = Browning.word(quality.browning().low());
        String darkest = Browning.word(quality.browning().high());
        if (!palest.equals(darkest)) {
            text.append(TextLayout.row("", PHRASES.say("color-between-and", palest, darkest)));
        }
        text.append(TextLayout.row(PHRASES.say("tender"), quality.tenderness()));
        quality.collagen()
                .ifPresent(share -> text.append(TextLayout.row(
                        "",
                        PHRASES.say("of-the-way-to", 100 * share.median(), 100 * share.low(), 100 * share.high())
                                + (quality.moreTime() > 0
                                        ? PHRASES.say(
                                                "about-more-at-that-heat",
                                                QuantityFormat.time(Math.ceil(quality.moreTime() / 600) * 600))
                                        : ""))));
        if (!quality.doneness().isEmpty()) {
            text.append(TextLayout.row(PHRASES.say("called"), String.join("; ", quality.doneness())));
        }
        return text.toString();
    }

    private static String percent(Interval share) {
        return PHRASES.say(
                "to",
                Math.max(0, 100 * share.median()),
                Math.max(0, 100 * share.low()),
                Math.max(0, 100 * share.high()));
    }

    /** The same as nested maps. */
    static Map<String, Object> json(PlateQuality quality) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("dripped_pct", PlanJson.interval(quality.dripped(), 100, 0));
        json.put("browning_index", PlanJson.interval(quality.browning(), 1, 0));
        json.put("browning_word", quality.browningWord());
        json.put("surface_maximum_c", PlanJson.interval(quality.surfaceMaximum(), 1, -Temperature.ZERO_CELSIUS));
        json.put("surface_dryness_before_heat_pct", PlanJson.interval(quality.drynessBefore(), 100, 0));
        json.put("surface_dryness_pct", PlanJson.interval(quality.dryness(), 100, 0));
        json.put("surface_word", quality.drynessWord());
        json.put("tenderness_word", quality.tenderness());
        json.put("core_actin_changed_pct", PlanJson.interval(quality.coreActin(), 100, 0));
        quality.collagen().ifPresent(share -> {
            json.put("collagen_dissolved_pct", PlanJson.interval(share, 100, 0));
            json.put("time_to_tender_min", quality.moreTime() / 60);
        });
        json.put("doneness_words", quality.doneness());
        return json;
    }
}
