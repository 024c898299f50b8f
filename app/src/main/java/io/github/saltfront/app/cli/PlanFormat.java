package io.github.saltfront.app.cli;

import io.github.saltfront.app.export.FrontsJson;
import io.github.saltfront.app.export.FrontsSvg;
import io.github.saltfront.app.export.PlanJson;
import io.github.saltfront.app.export.PlanText;
import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Function;

/** Forms in which a plan can be written. */
enum PlanFormat {
    /** Plain text. */
    TEXT(plan -> utf8(PlanText.of(plan))),
    /** All numbers. */
    JSON(plan -> utf8(Json.text(PlanJson.of(plan, Version.text())))),
    /** Salt and temperature by time and depth, as JSON. */
    FRONTS(plan -> utf8(Json.text(FrontsJson.of(Fronts.of(plan), Version.text())))),
    /** The picture of the two fronts. */
    SVG(plan -> utf8(FrontsSvg.of(Fronts.of(plan))));

    private final Function<Plan, byte[]> writer;

    PlanFormat(Function<Plan, byte[]> writer) {
        this.writer = writer;
    }

    byte[] bytes(Plan plan) {
        return writer.apply(plan);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Whether it is for a file only. */
    boolean isBinary() {
        return false;
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
