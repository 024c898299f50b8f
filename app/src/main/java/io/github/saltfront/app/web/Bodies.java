package io.github.saltfront.app.web;

import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Reads the body of a request, up to a limit. */
final class Bodies {
    private static final Phrases PHRASES = Phrases.of(Bodies.class);

    /** Of a body that is refused this much is read all the same [byte], so that whoever sends it gets to hear why. */
    private static final int DRAINED = 1_000_000;

    private Bodies() {}

    /**
     * Reads a JSON body.
     *
     * @param context the request
     * @param most largest body [byte]
     * @return its bytes
     * @throws Refused if it is larger or not declared as JSON; a page of another site cannot declare it so
     */
    static byte[] json(Context context, int most) {
        String type = String.valueOf(context.contentType());
        if (!type.startsWith("application/json")) {
            throw new Refused(
                    415, "", "Got a body of another type, expected application/json; set the header Content-Type.");
        }
        return read(context, most);
    }

    static byte[] read(Context context, int most) {
        if (context.contentLength() > most) {
            throw tooLarge(context, most);
        }
        try {
            byte[] body = context.req().getInputStream().readNBytes(most + 1);
            if (body.length > most) {
                throw tooLarge(context, most);
            }
            return body;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void drain(Context context) {
        try {
            byte[] piece = new byte[16_384];
            int left = DRAINED;
            for (int n = 0; n >= 0 && left > 0; left -= n) {
                n = context.req().getInputStream().read(piece);
            }
        } catch (IOException e) {
            return; // the sender has gone
        }
    }

    private static Refused tooLarge(Context context, int most) {
        drain(context);
        // the rest, if there is any, is not read, so the connection cannot be used again
        context.header("Connection", "close");
        return new Refused(413, "", PHRASES.say("the-body-is-larger-than", most / 1000));
    }
}
