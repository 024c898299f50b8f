package io.github.saltfront.app.export;

import io.github.saltfront.trial.PreferenceProtocol;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.Serving;
import io.github.saltfront.trial.Sheet;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.util.List;

/** Blank score sheets to print, one page for each taster, without anything that gives a sample away. */
public final class TrialSheets {
    private static final Phrases PHRASES = Phrases.of(TrialSheets.class);

    private static final String STYLE = """
            @page{margin:18mm}
            body{font:13pt/1.45 Georgia,serif;color:#000;background:#fff;margin:0}
            section{page-break-after:always;break-after:page;max-width:170mm;margin:0 auto;padding:6mm}
            section:last-child{page-break-after:auto;break-after:auto}
            h1{font-size:19pt;margin:0 0 4mm}
            h2{font-size:14pt;margin:9mm 0 2mm}
            .who{border-bottom:1pt solid #000;padding-bottom:2mm}
            .who span{display:inline-block;width:49%}
            .plate{margin:5mm 0}
            .plate div{display:inline-block;vertical-align:top;border:1pt solid #000;padding:3mm 6mm;margin:0 5mm 3mm 0;text-align:center;min-width:22mm}
            .code{font:bold 20pt/1.2 "Courier New",monospace;display:block}
            .box{display:inline-block;width:7mm;height:7mm;border:1pt solid #000;margin-top:2mm}
            table{border-collapse:collapse}
            th,td{border-bottom:.5pt solid #000;padding:1mm 3mm;text-align:center;vertical-align:middle}
            thead th.code{display:table-cell;font-size:17pt;padding:1mm 2mm}
            tbody th{font-weight:normal;text-align:left}
            td .box{margin:0}
            .line{border-bottom:1pt solid #000;height:9mm}
            """;

    private final TrialDesign design;
    private final String title;
    private final StringBuilder page = new StringBuilder();

    private TrialSheets(TrialDesign design, String title) {
        this.design = design;
        this.title = title;
    }

    /**
     * Writes the sheets.
     *
     * @param design the design
     * @param title what stands on top; tasters read it
     * @return a page without scripts and without requests to any host
     */
    public static String write(TrialDesign design, String title) {
        return new TrialSheets(design, title).write();
    }

    private String write() {
        page.append("<!DOCTYPE html>\n<html lang=\"" + Language.spoken().tag() + "\"><head><meta charset=\"utf-8\"/>")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/><title>")
                .append(LethalityPage.escape(title))
                .append(": " + PHRASES.say("score-sheets") + "</title><style>\n")
                .append(STYLE)
                .append("</style></head><body>\n");
        int rounds = design.request().rounds();
        for (int first = 0; first < design.sheets().size(); first += rounds) {
            taster(design.sheets().subList(first, first + rounds));
        }
        return page.append("</body></html>\n").toString();
    }

    private void taster(List<Sheet> sheets) {
        page.append("<section><h1>")
                .append(LethalityPage.escape(title))
                .append("</h1>\n<div class=\"who\"><span>")
                .append(PHRASES.say("taster"))
                .append(" <b>")
                .append(sheets.get(0).taster())
                .append("</b></span><span>")
                .append(PHRASES.say("date"))
                .append(" ____________________</span></div>\n<p>")
                .append(PHRASES.say("taste-from-left-to-right"))
                .append(rule())
                .append(" " + PHRASES.say("please-do-not-talk") + "</p>\n");
        for (Sheet sheet : sheets) {
            if (sheets.size() > 1) {
                page.append("<h2>" + PHRASES.say("round", sheet.round()) + "</h2>\n");
            }
            page.append("<p><b>")
                    .append(LethalityPage.escape(design.request().protocol().question()))
                    .append("</b></p>\n");
            if (design.request().protocol() instanceof RatingProtocol) {
                scale(sheet);
            } else {
                plate(sheet);
            }
        }
        page.append("<p>" + PHRASES.say("anything-you-noticed")
                + "</p><div class=\"line\"></div><div class=\"line\"></div></section>\n");
    }

    private String rule() {
        if (design.request().protocol() instanceof RatingProtocol) {
            return PHRASES.say("mark-one-box-in-each");
        }
        return design.request().protocol() instanceof PreferenceProtocol
                ? PHRASES.say("mark-one-box")
                : PHRASES.say("mark-one-box-if-you");
    }

    private void plate(Sheet sheet) {
        page.append("<div class=\"plate\">");
        for (Serving serving : sheet.servings()) {
            boolean reference = serving.code().equals(TrialDesign.REFERENCE);
            page.append("<div><span class=\"code\">")
                    .append(reference ? "R" : serving.code())
                    .append("</span>")
                    .append(reference ? PHRASES.say("reference") : "<span class=\"box\"></span>")
                    .append("</div>");
        }
        if (design.request().protocol() instanceof PreferenceProtocol) {
            page.append("<div>" + PHRASES.say("no-preference") + "<br/><span class=\"box\"></span></div>");
        }
        page.append("</div>\n");
    }

    /** Words run down the side, so that they stay large whatever the number of samples. */
    private void scale(Sheet sheet) {
        page.append("<table><thead><tr><td></td>");
        for (Serving serving : sheet.servings()) {
            page.append("<th scope=\"col\" class=\"code\">")
                    .append(serving.code())
                    .append("</th>");
        }
        page.append("</tr></thead><tbody>");
        List<String> words = RatingProtocol.words();
        for (int i = words.size() - 1; i >= 0; i--) {
            page.append("<tr><th scope=\"row\">")
                    .append(i + 1)
                    .append(" &#160; ")
                    .append(words.get(i))
                    .append("</th>");
            for (int j = 0; j < sheet.servings().size(); j++) {
                page.append("<td><span class=\"box\"></span></td>");
            }
            page.append("</tr>");
        }
        page.append("</tbody></table>\n");
    }
}
