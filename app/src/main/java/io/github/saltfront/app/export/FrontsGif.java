package io.github.saltfront.app.export;

import io.github.saltfront.plan.Fronts;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/**
 * The two fronts as a short silent film: a cut through the piece, salt on the left and heat on the right, from the bath to the plate.
 * It plays once, in some seven seconds, salting and heat about half each, so that it needs no button to stop it.
 */
public final class FrontsGif {
    /** Width [pixel]. */
    public static final int WIDTH = 640;

    /** Height [pixel]. */
    public static final int HEIGHT = 400;

    /** Frames of the film. */
    static final int FRAMES = 64;

    private static final int DELAY_CENTISECONDS = 11;
    private static final int LAST_CENTISECONDS = 250;
    private static final int COLORS = 100;

    /** Entries of a table of colors, a power of two; those that are left over are ink. */
    private static final int PALETTE = 256;

    private static final int TOP = 78;
    private static final int BOTTOM = 308;
    private static final int LEFT = 30;
    private static final int MIDDLE = WIDTH / 2;
    private static final Color PAPER = new Color(0xfbfaf6);
    private static final Color INK = new Color(0x14252a);

    private static final Phrases PHRASES = Phrases.of(FrontsGif.class);

    private final Fronts fronts;
    private final double highestSalt;
    private final double hottest;
    private final double coldest;

    private FrontsGif(Fronts fronts) {
        this.fronts = fronts;
        double salt = 0.005;
        double hot = 0;
        double cold = 1000;
        for (int i = 0; i < fronts.size(); i++) {
            for (double value : fronts.salts(i)) {
                salt = Math.max(salt, value);
            }
            for (double value : fronts.temperatures(i)) {
                hot = Math.max(hot, value);
                cold = Math.min(cold, value);
            }
        }
        highestSalt = salt;
        hottest = hot;
        coldest = cold;
    }

    /**
     * Writes the film.
     *
     * @param fronts the fronts of a plan
     * @return an animated GIF
     */
    public static byte[] of(Fronts fronts) {
        try {
            return new FrontsGif(fronts).write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] write() throws IOException {
        ImageIO.setUseCache(false);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.prepareWriteSequence(streamMetadata(writer));
            for (int frame = 0; frame < FRAMES; frame++) {
                BufferedImage image = frame(timeOf(frame));
                int delay = frame == FRAMES - 1 ? LAST_CENTISECONDS : DELAY_CENTISECONDS;
                writer.writeToSequence(new IIOImage(image, null, metadata(writer, image, delay)), null);
            }
            writer.endWriteSequence();
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** One table of colors for all frames; left to itself the writer puts a table of its own there. */
    private static IIOMetadata streamMetadata(ImageWriter writer) throws IOException {
        IIOMetadata metadata = writer.getDefaultStreamMetadata(null);
        String format = metadata.getNativeMetadataFormatName();
        IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(format);
        IndexColorModel palette = palette();
        IIOMetadataNode table = new IIOMetadataNode("GlobalColorTable");
        table.setAttribute("sizeOfGlobalColorTable", Integer.toString(palette.getMapSize()));
        table.setAttribute("backgroundColorIndex", "0");
        table.setAttribute("sortFlag", "FALSE");
        for (int i = 0; i < palette.getMapSize(); i++) {
            IIOMetadataNode entry = new IIOMetadataNode("ColorTableEntry");
            entry.setAttribute("index", Integer.toString(i));
            entry.setAttribute("red", Integer.toString(palette.getRed(i)));
            entry.setAttribute("green", Integer.toString(palette.getGreen(i)));
            entry.setAttribute("blue", Integer.toString(palette.getBlue(i)));
            table.appendChild(entry);
        }
        root.appendChild(table);
        metadata.setFromTree(format, root);
        return metadata;
    }

    /** Delay of a frame, in the names of the GIF metadata format of javax.imageio. */
    private static IIOMetadata metadata(ImageWriter writer, BufferedImage image, int delay) throws IOException {
        IIOMetadata metadata = writer.getDefaultImageMetadata(
                ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
        String format = metadata.getNativeMetadataFormatName();
        IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(format);
        IIOMetadataNode control = new IIOMetadataNode("GraphicControlExtension");
        control.setAttribute("disposalMethod", "none");
        control.setAttribute("userInputFlag", "FALSE");
        control.setAttribute("transparentColorFlag", "FALSE");
        control.setAttribute("transparentColorIndex", "0");
        control.setAttribute("delayTime", Integer.toString(delay));
        IIOMetadataNode old = (IIOMetadataNode)
                root.getElementsByTagName("GraphicControlExtension").item(0);
        if (old == null) {
            root.appendChild(control);
        } else {
            root.replaceChild(control, old);
        }
        org.w3c.dom.Node own = root.getElementsByTagName("LocalColorTable").item(0);
        if (own != null) {
            root.removeChild(own);
        }
        metadata.setFromTree(format, root);
        return metadata;
    }

    /** Time of a frame [s]: half of the film for what comes before the heat, if anything does. */
    private double timeOf(int frame) {
        double heat = fronts.spans().stream()
                .filter(span -> span.kind().equals("heat"))
                .mapToDouble(Fronts.Span::start)
                .findFirst()
                .orElse(0);
        double end = fronts.time(fronts.size() - 1);
        int before = heat > 0 ? FRAMES / 2 : 0;
        return frame < before ? heat * frame / before : heat + (end - heat) * (frame - before) / (FRAMES - 1 - before);
    }

    private static IndexColorModel palette() {
        byte[] red = new byte[PALETTE];
        byte[] green = new byte[red.length];
        byte[] blue = new byte[red.length];
        for (int i = 0; i < red.length; i++) {
            int color = i < COLORS
                    ? ColorScale.SALT.at((i + 0.5) / COLORS)
                    : i < 2 * COLORS
                            ? ColorScale.HEAT.at((i - COLORS + 0.5) / COLORS)
                            : (i == 2 * COLORS ? PAPER : INK).getRGB();
            red[i] = (byte) (color >> 16);
            green[i] = (byte) (color >> 8);
            blue[i] = (byte) color;
        }
        return new IndexColorModel(8, red.length, red, green, blue);
    }

    private BufferedImage frame(double time) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_INDEXED, palette());
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_OFF);
        g.setColor(PAPER);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        int sample = sampleAt(time);
        double[] salts = fronts.salts(sample);
        double[] temperatures = fronts.temperatures(sample);
        layers(image, salts, 0, highestSalt, 0, LEFT, MIDDLE - 12);
        layers(image, temperatures, coldest, hottest, COLORS, MIDDLE + 12, WIDTH - LEFT);
        words(g, time, salts, temperatures);
        clock(g, time);
        g.dispose();
        return image;
    }

    private int sampleAt(double time) {
        int i = 0;
        while (i < fronts.size() - 1 && fronts.time(i + 1) <= time) {
            i++;
        }
        return i;
    }

    /** Rows of one color from face to face; where both faces meet the same, the lower half mirrors the upper. */
    private void layers(BufferedImage image, double[] values, double low, double high, int first, int left, int right) {
        double[] depths = fronts.depths();
        for (int y = TOP; y < BOTTOM; y++) {
            double share = (y - TOP + 0.5) / (BOTTOM - TOP);
            double depth =
                    fronts.isTwoFaced() ? share * fronts.depth() : (1 - Math.abs(2 * share - 1)) * fronts.depth();
            int i = 1;
            while (i < depths.length - 1 && depths[i] < depth) {
                i++;
            }
            double part = Math.max(0, Math.min(1, (depth - depths[i - 1]) / (depths[i] - depths[i - 1])));
            double value = values[i - 1] + part * (values[i] - values[i - 1]);
            double place = Math.max(0, Math.min(1, (value - low) / (high - low)));
            int color = first + Math.min(COLORS - 1, (int) (place * COLORS));
            for (int x = left; x < right; x++) {
                image.getRaster().setSample(x, y, 0, color);
            }
        }
    }

    private void words(Graphics2D g, double time, double[] salts, double[] temperatures) {
        g.setColor(INK);
        g.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 20));
        String stage = fronts.spans().stream()
                .filter(span -> time <= span.end() + 1e-6)
                .map(Fronts.Span::kind)
                .findFirst()
                .orElse("rest");
        g.drawString(clockText(time) + "  " + PHRASES.find("stage." + stage).orElse(stage), LEFT, 34);
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 15));
        int middle = fronts.isTwoFaced() ? salts.length / 2 : salts.length - 1;
        g.drawString(PHRASES.say("salt", percent(salts[0]), percent(salts[middle])), LEFT, 66);
        g.drawString(PHRASES.say("heat", celsius(temperatures[0]), celsius(temperatures[middle])), MIDDLE + 12, 66);
    }

    private static String percent(double share) {
        return Phrases.figures("%.1f %%", 100 * share);
    }

    private static String celsius(double temperature) {
        return Phrases.figures("%.0f °C", Temperature.toCelsius(temperature));
    }

    private static String clockText(double time) {
        long minutes = Math.round(time / 60);
        return String.format(Locale.ROOT, "%d:%02d h", minutes / 60, minutes % 60);
    }

    private void clock(Graphics2D g, double time) {
        double end = fronts.time(fronts.size() - 1);
        g.setColor(INK);
        g.drawRect(LEFT, 334, WIDTH - 2 * LEFT, 10);
        g.fillRect(LEFT, 334, (int) Math.round((WIDTH - 2 * LEFT) * time / end), 11);
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        g.drawString(PHRASES.say("cut"), LEFT, 372);
    }
}
