package io.github.saltfront.app.export;

import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** SVG in pixels. The library is loaded when a picture is asked for and not before. */
public final class SvgPicture {
    private SvgPicture() {}

    /**
     * Draws an SVG document.
     *
     * @param svg the document
     * @param width width of the picture [px]
     * @return a PNG file
     */
    public static byte[] png(String svg, int width) {
        PNGTranscoder transcoder = new PNGTranscoder();
        transcoder.addTranscodingHint(PNGTranscoder.KEY_WIDTH, (float) width);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            transcoder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(out));
        } catch (TranscoderException e) {
            throw new IllegalStateException("The picture could not be drawn: " + e.getMessage() + ".", e);
        }
        return out.toByteArray();
    }
}
