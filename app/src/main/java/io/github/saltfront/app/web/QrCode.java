package io.github.saltfront.app.web;

import io.nayuki.qrcodegen.QrCode.Ecc;

/** An address as a QR code, for a terminal and for the page. */
public final class QrCode {
    private static final int QUIET = 2;

    private final io.nayuki.qrcodegen.QrCode modules;

    /**
     * Encodes a text.
     *
     * @param text the text, at most some hundred characters
     */
    public QrCode(String text) {
        modules = io.nayuki.qrcodegen.QrCode.encodeText(text, Ecc.MEDIUM);
    }

    /** Returns lines of half blocks, light modules filled, which a terminal of any color scheme shows dark on light or reversed. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (int y = -QUIET; y < modules.size + QUIET; y += 2) {
            for (int x = -QUIET; x < modules.size + QUIET; x++) {
                boolean upper = !modules.getModule(x, y);
                boolean lower = !modules.getModule(x, y + 1);
                text.append(upper ? lower ? '█' : '▀' : lower ? '▄' : ' ');
            }
            text.append('\n');
        }
        return text.toString();
    }
}
