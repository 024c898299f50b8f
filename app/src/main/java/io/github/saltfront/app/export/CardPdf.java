package io.github.saltfront.app.export;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.words.Phrases;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The kitchen card as PDF. Its pictures go in as pixels, fine enough for print; the library is loaded when it is asked for. */
public final class CardPdf {
    private static final Phrases PHRASES = Phrases.of(CardPdf.class);

    private static final int CODE_WIDTH = 420;

    /** Held, since a logger that nobody holds forgets its level. */
    private static final Logger FONTS = Logger.getLogger("org.apache.pdfbox");

    private CardPdf() {}

    /**
     * Writes the card.
     *
     * @param found the plan and its alternatives
     * @param fronts its fronts
     * @param link address shown as a code to scan
     * @return a PDF file
     */
    public static byte[] of(PlanSearch.Found found, Fronts fronts, Optional<String> link) {
        String picture = image(FrontsSvg.of(fronts), 2 * FrontsSvg.WIDTH, FrontsSvg.describe(fronts));
        Optional<String> code =
                link.map(address -> image(QrPicture.svg(address), CODE_WIDTH, PHRASES.say("code-to-scan", address)));
        String page = KitchenCard.page(found, picture, code, link);
        return ofPage(page);
    }

    /**
     * Writes a page.
     *
     * @param page well-formed HTML with its style inside
     * @return a PDF file
     */
    static byte[] ofPage(String page) {
        XRLog.setLoggingEnabled(false);
        FONTS.setLevel(Level.SEVERE);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            new PdfRendererBuilder().withHtmlContent(page, null).toStream(out).run();
        } catch (IOException e) {
            throw new UncheckedIOException("The page could not be written as PDF.", e);
        }
        return out.toByteArray();
    }

    static String image(String svg, int width, String words) {
        return "<img alt=\"" + LethalityPage.escape(words) + "\" src=\"data:image/png;base64,"
                + Base64.getEncoder().encodeToString(SvgPicture.png(svg, width)) + "\"/>";
    }
}
