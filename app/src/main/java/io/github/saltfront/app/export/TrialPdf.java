package io.github.saltfront.app.export;

import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.util.List;

/** Papers of a trial as PDF: score sheets, and the codes that open each taster's form on a phone. */
public final class TrialPdf {
    private static final Phrases PHRASES = Phrases.of(TrialPdf.class);

    private static final int CODE_WIDTH = 500;

    private TrialPdf() {}

    /**
     * Writes the score sheets, one page for each taster.
     *
     * @param design the design
     * @param title what stands on top; tasters read it
     * @return a PDF file
     */
    public static byte[] sheets(TrialDesign design, String title) {
        return CardPdf.ofPage(TrialSheets.write(design, title));
    }

    /**
     * Writes a page for each taster with the code of their form.
     *
     * @param title what stands on top; tasters read it
     * @param addresses address of the form of each taster, the first taster's first
     * @return a PDF file
     */
    public static byte[] codes(String title, List<String> addresses) {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\""
                        + Language.spoken().tag() + "\"><head><meta charset=\"utf-8\"/><title>")
                .append(LethalityPage.escape(title))
                .append(": " + PHRASES.say("codes")
                        + "</title><style>@page{margin:20mm}body{font:14pt/1.5 serif;text-align:center}")
                .append("section{page-break-after:always}section:last-child{page-break-after:auto}img{width:90mm}")
                .append(".small{font-size:9pt}</style></head><body>\n");
        for (int i = 0; i < addresses.size(); i++) {
            String address = addresses.get(i);
            page.append("<section><h1>")
                    .append(LethalityPage.escape(title))
                    .append("</h1><p>")
                    .append(PHRASES.say("taster"))
                    .append(" <b>")
                    .append(i + 1)
                    .append("</b></p><p>")
                    .append(CardPdf.image(QrPicture.svg(address), CODE_WIDTH, PHRASES.say("code-to-scan", address)))
                    .append("</p><p>" + PHRASES.say("scan-this") + "</p>")
                    .append("<p class=\"small\">")
                    .append(LethalityPage.escape(address))
                    .append("</p></section>\n");
        }
        return CardPdf.ofPage(page.append("</body></html>\n").toString());
    }
}
