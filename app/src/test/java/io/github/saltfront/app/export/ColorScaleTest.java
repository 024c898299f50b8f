package io.github.saltfront.app.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class ColorScaleTest {
    /** Relative luminance of IEC 61966-2-1: a gray print tells more from less if it only falls. */
    @Test
    void everyColorIsDarkerThanTheOneBefore() {
        for (ColorScale scale : new ColorScale[] {ColorScale.SALT, ColorScale.HEAT}) {
            double before = 2;
            for (int i = 0; i <= 40; i++) {
                double light = ColorScale.luminance(scale.at(i / 40.0));
                assertThat(light).isLessThan(before);
                before = light;
            }
            assertThat(ColorScale.luminance(scale.at(0)) - before).isGreaterThan(0.75);
        }
    }

    @Test
    void pictureIsReadByTheRuntimeWithTheColorsOfTheScale() throws IOException {
        double[][] rows = {{0, 0.5, 1}, {1, 0.25, 0}};
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PalettePng.bytes(rows, ColorScale.HEAT, 64)));
        assertThat(image.getWidth()).isEqualTo(3);
        assertThat(image.getHeight()).isEqualTo(2);
        assertThat(image.getRGB(2, 0) & 0xffffff).isEqualTo(ColorScale.HEAT.at(63.5 / 64));
        assertThat(image.getRGB(2, 1) & 0xffffff).isEqualTo(ColorScale.HEAT.at(0.5 / 64));
    }
}
