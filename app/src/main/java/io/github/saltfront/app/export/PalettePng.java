package io.github.saltfront.app.export;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** A small picture with a palette as PNG (ISO/IEC 15948), without a graphics toolkit, which would slow the start. */
final class PalettePng {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    private PalettePng() {}

    /**
     * Returns the picture as a data address for an image element.
     *
     * @param rows places on the scale, one row a line from the top [-], each 0 to 1
     * @param scale colors
     * @param levels number of colors, 2 to 256
     * @return the address
     */
    static String dataAddress(double[][] rows, ColorScale scale, int levels) {
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(bytes(rows, scale, levels));
    }

    static byte[] bytes(double[][] rows, ColorScale scale, int levels) {
        int width = rows[0].length;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(SIGNATURE);
        byte depth = 8;
        byte palette = 3;
        chunk(
                out,
                "IHDR",
                ByteBuffer.allocate(13)
                        .putInt(width)
                        .putInt(rows.length)
                        .put(depth)
                        .put(palette)
                        .array());
        byte[] colors = new byte[3 * levels];
        for (int i = 0; i < levels; i++) {
            int color = scale.at((i + 0.5) / levels);
            colors[3 * i] = (byte) (color >> 16);
            colors[3 * i + 1] = (byte) (color >> 8);
            colors[3 * i + 2] = (byte) color;
        }
        chunk(out, "PLTE", colors);
        byte[] pixels = new byte[rows.length * (width + 1)];
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < width; x++) {
                double share = Math.min(1, Math.max(0, rows[y][x]));
                pixels[y * (width + 1) + 1 + x] = (byte) Math.min(levels - 1, (int) (share * levels));
            }
        }
        chunk(out, "IDAT", deflated(pixels));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static byte[] deflated(byte[] bytes) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
        try {
            deflater.setInput(bytes);
            deflater.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] buffer = new byte[8192];
            while (!deflater.finished()) {
                out.write(buffer, 0, deflater.deflate(buffer));
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(name);
        out.writeBytes(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    }
}
