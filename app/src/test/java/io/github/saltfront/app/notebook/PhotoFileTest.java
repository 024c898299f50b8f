package io.github.saltfront.app.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures go in with all they carry and come out as pixels. */
class PhotoFileTest {
    private static final String SECRET = "N 48.1 E 11.5 camera 12345";

    /** A picture, red on its left and blue on its right half. */
    private static byte[] jpeg(int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.RED);
        g.fillRect(0, 0, width / 2, height);
        g.setColor(Color.BLUE);
        g.fillRect(width / 2, 0, width - width / 2, height);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", out);
        return out.toByteArray();
    }

    /** Puts an Exif block (CIPA DC-008) with an orientation and a secret behind the first marker. */
    private static byte[] withExif(byte[] jpeg, int orientation) throws IOException {
        ByteArrayOutputStream block = new ByteArrayOutputStream();
        block.writeBytes("Exif\0\0MM\0*\0\0\0\b".getBytes(StandardCharsets.ISO_8859_1));
        block.writeBytes(new byte[] {0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0, 0, 0, 0, 0});
        block.writeBytes(SECRET.getBytes(StandardCharsets.US_ASCII));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        int length = block.size() + 2;
        out.writeBytes(new byte[] {(byte) 0xff, (byte) 0xe1, (byte) (length >> 8), (byte) length});
        out.writeBytes(block.toByteArray());
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static BufferedImage read(byte[] content) throws IOException {
        return Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(content)));
    }

    @Test
    void metadataIsGone() throws IOException {
        byte[] with = withExif(jpeg(300, 200), 1);
        assertThat(new String(with, StandardCharsets.ISO_8859_1)).contains(SECRET);
        String drawn = new String(PhotoFile.of(with).jpeg(), StandardCharsets.ISO_8859_1);
        assertThat(drawn).doesNotContain(SECRET, "Exif");
    }

    /** Where the red half lies once the picture is upright: 3 is upside down, 6 was held with its left side down, 8 with its right. */
    @ParameterizedTest
    @CsvSource({"1,300,200,75,100", "3,300,200,225,100", "6,200,300,100,75", "8,200,300,100,225", "2,300,200,225,100"})
    void picturesAreUpright(int orientation, int width, int height, int redX, int redY) throws IOException {
        PhotoFile photo = PhotoFile.of(withExif(jpeg(300, 200), orientation));
        assertThat(photo.width()).isEqualTo(width);
        assertThat(photo.height()).isEqualTo(height);
        BufferedImage image = read(photo.jpeg());
        Color red = new Color(image.getRGB(redX, redY));
        assertThat(red.getRed()).isGreaterThan(200);
        assertThat(red.getBlue()).isLessThan(60);
        Color blue = new Color(image.getRGB(width - redX, height - redY));
        assertThat(blue.getBlue()).isGreaterThan(200);
    }

    @Test
    void largePicturesBecomeSmaller() throws IOException {
        PhotoFile photo = PhotoFile.of(jpeg(4000, 1000));
        assertThat(photo.width()).isEqualTo(PhotoFile.LONGEST_SIDE);
        assertThat(photo.height()).isEqualTo(400);
        assertThat(read(photo.jpeg()).getWidth()).isEqualTo(PhotoFile.LONGEST_SIDE);
    }

    @Test
    void hugePicturesAreRefusedBeforeTheyAreUnpacked() {
        // a PNG that says it is 100 000 x 100 000 pixels (ISO/IEC 15948, chunk IHDR), without any
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13, 'I', 'H', 'D', 'R'});
        png.writeBytes(new byte[] {0, 1, (byte) 0x86, (byte) 0xa0, 0, 1, (byte) 0x86, (byte) 0xa0, 8, 2, 0, 0, 0});
        png.writeBytes(new byte[4]);
        assertThatThrownBy(() -> PhotoFile.of(png.toByteArray()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("10000 million pixels, expected at most 60");
        assertThatThrownBy(() -> PhotoFile.of(new byte[PhotoFile.LARGEST_BYTES + 1]))
                .hasMessageContaining("expected at most 25 MB");
    }

    @Test
    void whatIsNoPictureIsRefused() throws IOException {
        byte[] cut = java.util.Arrays.copyOf(jpeg(300, 200), 60);
        for (byte[] content :
                java.util.List.of(new byte[0], "<svg onload='alert(1)'/>".getBytes(StandardCharsets.UTF_8), cut)) {
            assertThatThrownBy(() -> PhotoFile.of(content))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("no picture");
        }
    }
}
