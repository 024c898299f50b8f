package io.github.saltfront.app.notebook;

import io.github.saltfront.words.Phrases;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/**
 * A picture drawn anew: pixels only, upright, no larger than the page shows. Where, when and with what it was taken is not in it any
 * more, and nothing that hid behind the pixels. Immutable; the content is copied out.
 */
public final class PhotoFile {
    private static final Phrases PHRASES = Phrases.of(PhotoFile.class);

    /** Largest file [byte]. */
    public static final int LARGEST_BYTES = 25_000_000;

    /** Most pixels, looked up before the picture is unpacked [-]. */
    public static final long MOST_PIXELS = 60_000_000;

    /** Longest side that is kept [pixel]. */
    public static final int LONGEST_SIDE = 1600;

    private static final float QUALITY = 0.85f;
    private static final Set<String> FORMATS = Set.of("jpeg", "jpg", "png", "gif", "bmp");

    private final byte[] jpeg;
    private final int width;
    private final int height;

    private PhotoFile(byte[] jpeg, int width, int height) {
        this.jpeg = jpeg;
        this.width = width;
        this.height = height;
    }

    /**
     * Reads a picture and draws it anew.
     *
     * @param content a picture as JPEG, PNG, GIF or BMP
     * @return the picture
     * @throws IllegalArgumentException if it is none, or too large
     */
    public static PhotoFile of(byte[] content) {
        if (content.length > LARGEST_BYTES) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-a-picture-of-mb", content.length / 1_000_000, LARGEST_BYTES / 1_000_000));
        }
        // no temporary files: pictures are small enough for memory
        ImageIO.setUseCache(false);
        try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw unreadable();
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream, true, true);
                return of(reader, ExifOrientation.of(content));
            } finally {
                reader.dispose();
            }
        } catch (IOException | IndexOutOfBoundsException | NegativeArraySizeException e) {
            throw new IllegalArgumentException(unreadable().getMessage(), e);
        }
    }

    private static PhotoFile of(ImageReader reader, int orientation) throws IOException {
        if (!FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
            throw unreadable();
        }
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        if (pixels > MOST_PIXELS) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-a-picture-of-million", pixels / 1_000_000, MOST_PIXELS / 1_000_000));
        }
        // half, third, ... of the pixels where that is still more than what is kept
        var parameters = reader.getDefaultReadParam();
        int skip = Math.max(1, Math.max(reader.getWidth(0), reader.getHeight(0)) / (2 * LONGEST_SIDE));
        parameters.setSourceSubsampling(skip, skip, 0, 0);
        BufferedImage upright = drawn(reader.read(0, parameters), orientation);
        return new PhotoFile(encoded(upright), upright.getWidth(), upright.getHeight());
    }

    private static IllegalArgumentException unreadable() {
        return new IllegalArgumentException(PHRASES.say("got-a-file-that-is"));
    }

    private static BufferedImage drawn(BufferedImage image, int orientation) {
        boolean turned = orientation >= 5;
        double scale = Math.min(1, LONGEST_SIDE / (double) Math.max(image.getWidth(), image.getHeight()));
        int w = Math.max(1, (int) Math.round(scale * image.getWidth()));
        int h = Math.max(1, (int) Math.round(scale * image.getHeight()));
        BufferedImage result = new BufferedImage(turned ? h : w, turned ? w : h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = result.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, result.getWidth(), result.getHeight());
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        AffineTransform place = ExifOrientation.upright(orientation, w, h);
        place.scale(w / (double) image.getWidth(), h / (double) image.getHeight());
        g.drawImage(image, place, null);
        g.dispose();
        return result;
    }

    private static byte[] encoded(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            ImageWriteParam parameters = writer.getDefaultWriteParam();
            parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            parameters.setCompressionQuality(QUALITY);
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), parameters);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** Returns the picture as JPEG without metadata. */
    public byte[] jpeg() {
        return jpeg.clone();
    }

    /** Returns the width [pixel]. */
    public int width() {
        return width;
    }

    /** Returns the height [pixel]. */
    public int height() {
        return height;
    }
}
