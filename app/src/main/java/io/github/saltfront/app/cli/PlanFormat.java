package io.github.saltfront.app.cli;

import io.github.saltfront.app.export.AdviceJson;
import io.github.saltfront.app.export.AdviceText;
import io.github.saltfront.app.export.CardPdf;
import io.github.saltfront.app.export.FrontsJson;
import io.github.saltfront.app.export.FrontsSvg;
import io.github.saltfront.app.export.KitchenCard;
import io.github.saltfront.app.export.PlanCalendar;
import io.github.saltfront.app.export.PlanMarkdown;
import io.github.saltfront.app.export.PlanText;
import io.github.saltfront.app.export.RecipeJsonLd;
import io.github.saltfront.app.export.SvgPicture;
import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.PlanSearch;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Forms in which a plan can be written. */
enum PlanFormat {
    /** Plain text. */
    TEXT,
    /** All numbers. */
    JSON,
    /** Markdown. */
    MD,
    /** A calendar with alarms. */
    ICS,
    /** A kitchen card of one page. */
    HTML,
    /** The same to print. */
    PDF,
    /** A recipe for publishing, in the vocabulary of schema.org. */
    JSONLD,
    /** The picture of the two fronts. */
    SVG,
    /** The same in pixels. */
    PNG,
    /** Salt and temperature by time and depth, as JSON. */
    FRONTS;

    /**
     * Writes a plan.
     *
     * @param found the plan and its alternatives
     * @param link address for a code to scan on the card
     * @return the content of a file
     */
    byte[] bytes(PlanSearch.Found found, @Nullable String link) {
        Optional<String> address = Optional.ofNullable(link);
        return switch (this) {
            case TEXT -> utf8(PlanText.of(found.plan()) + AdviceText.of(found));
            case JSON -> utf8(Json.text(AdviceJson.of(found, Version.text())));
            case MD -> utf8(PlanMarkdown.of(found));
            case ICS -> utf8(PlanCalendar.of(found.plan()));
            case HTML -> utf8(KitchenCard.page(found, Fronts.of(found.plan()), address));
            case PDF -> CardPdf.of(found, Fronts.of(found.plan()), address);
            case JSONLD -> utf8(Json.text(RecipeJsonLd.of(found.plan())));
            case SVG -> utf8(FrontsSvg.of(Fronts.of(found.plan())));
            case PNG -> SvgPicture.png(FrontsSvg.of(Fronts.of(found.plan())), 2 * FrontsSvg.WIDTH);
            case FRONTS -> utf8(Json.text(FrontsJson.of(Fronts.of(found.plan()), Version.text())));
        };
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Whether it is for a file only. */
    boolean isBinary() {
        return this == PDF || this == PNG;
    }

    /** The form that the ending of a file's name asks for. */
    static PlanFormat ofFile(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        for (PlanFormat format : values()) {
            if (name.endsWith("." + format)) {
                return format;
            }
        }
        return TEXT;
    }

    /** Read in any case; shown in lower case. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
