package io.github.saltfront.app.export;

import io.github.saltfront.words.Phrases;
import io.nayuki.qrcodegen.QrCode;
import java.util.Locale;

/** An address as a code to scan (ISO/IEC 18004), drawn as SVG with the quiet zone of four modules. */
final class QrPicture {
    private static final Phrases PHRASES = Phrases.of(QrPicture.class);

    private static final int QUIET = 4;

    private QrPicture() {}

    static String svg(String address) {
        QrCode code = QrCode.encodeText(address, QrCode.Ecc.MEDIUM);
        int size = code.size + 2 * QUIET;
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    path.append(String.format(Locale.ROOT, "M%d,%dh1v1h-1z", x + QUIET, y + QUIET));
                }
            }
        }
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\" role=\"img\""
                        + " shape-rendering=\"crispEdges\"><title>%s</title><rect width=\"%d\" height=\"%d\""
                        + " fill=\"#ffffff\"/><path d=\"%s\" fill=\"#000000\"/></svg>",
                size,
                size,
                2 * size,
                2 * size,
                LethalityPage.escape(PHRASES.say("code-to-scan", address)),
                size,
                size,
                path);
    }
}
