package io.github.saltfront.app.follow;

import io.github.saltfront.app.export.LethalityPage;
import io.github.saltfront.app.export.LethalityResult;
import io.github.saltfront.app.follow.Follower.Look;
import io.github.saltfront.app.probe.LogProblem;
import io.github.saltfront.app.probe.LogReading;
import io.github.saltfront.live.MeasuredHold;
import io.github.saltfront.words.Phrases;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** The record of a cook for the file: what the readings show by themselves, with all that was left out. */
final class CookRecord {
    private static final Phrases PHRASES = Phrases.of(CookRecord.class);

    private CookRecord() {}

    /**
     * Writes the record as a page of its own.
     *
     * @param cook the cook
     * @param look what is known of it
     * @param programVersion version of the program
     * @return the page; empty without readings that count
     */
    static Optional<String> page(RunningCook cook, Look look, String programVersion) {
        return look.outlook()
                .measured()
                .map(measured -> LethalityPage.write(
                        result(cook, look, measured, programVersion),
                        cook.stored().title()));
    }

    private static LethalityResult result(RunningCook cook, Look look, MeasuredHold measured, String programVersion) {
        List<LogProblem> problems = look.leftOut().stream()
                .map(reading -> new LogProblem(
                        0,
                        PHRASES.say("reading-of-probe-after-min", reading.probe(), reading.time() / 60, reading.why())))
                .toList();
        LogReading reading = new LogReading(
                measured.best().log(),
                List.of(look.coreProbe()),
                measured.all().log().size(),
                problems,
                List.of(PHRASES.say("kept-by-the-program-while")),
                sha256(CookLog.csv(cook)));
        LethalityResult whole =
                LethalityResult.of(reading, measured.all(), measured.verdict().rule(), programVersion);
        LethalityResult best =
                LethalityResult.of(reading, measured.best(), measured.verdict().rule(), programVersion);
        return new LethalityResult(
                reading, measured.best(), measured.verdict(), whole.limits(), best.information(), programVersion);
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }
}
