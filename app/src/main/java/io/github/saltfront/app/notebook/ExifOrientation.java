package io.github.saltfront.app.notebook;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held, from tag 0x0112 of the Exif block of a JPEG file (CIPA DC-008, section 4.6.4; from memory): 1 upright, 3
 * upside down, 6 and 8 on a side; 2, 4, 5 and 7 mirrored. It is read before the metadata is thrown away, so that pictures stay
 * upright.
 */
final class ExifOrientation {
    private static final int UPRIGHT = 1;
    private static final int TAG = 0x0112;
    private static final int APP1 = 0xe1;
    private static final int SCAN = 0xda;

    private ExifOrientation() {}

    /** Returns the orientation; upright where the file does not say, or says nonsense. */
    static int of(byte[] content) {
        ByteBuffer file = ByteBuffer.wrap(content);
        if (content.length < 4 || (file.getShort(0) & 0xffff) != 0xffd8) {
            return UPRIGHT;
        }
        int at = 2;
        while (at + 4 <= content.length && (content[at] & 0xff) == 0xff) {
            int marker = content[at + 1] & 0xff;
            int length = file.getShort(at + 2) & 0xffff;
            if (marker == SCAN || length < 2 || at + 2 + length > content.length) {
                return UPRIGHT;
            }
            if (marker == APP1 && length > 16 && file.getInt(at + 4) == 0x45786966) {
                return inBlock(content, at + 10, length - 8);
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static int inBlock(byte[] content, int start, int length) {
        ByteBuffer block = ByteBuffer.wrap(content, start, length).slice();
        block.order(block.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = block.getInt(4);
        if (directory < 8 || directory + 2 > length) {
            return UPRIGHT;
        }
        int entries = block.getShort(directory) & 0xffff;
        for (int i = 0; i < entries && directory + 2 + 12 * (i + 1) <= length; i++) {
            int entry = directory + 2 + 12 * i;
            if ((block.getShort(entry) & 0xffff) == TAG) {
                int value = block.getShort(entry + 8) & 0xffff;
                return value >= 1 && value <= 8 ? value : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    /** Returns what turns a picture of a width and height upright, onto a canvas that begins at the origin. */
    static AffineTransform upright(int orientation, double w, double h) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
    }
}
