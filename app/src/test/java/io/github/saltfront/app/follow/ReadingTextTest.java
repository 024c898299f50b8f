package io.github.saltfront.app.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.app.store.StoredReading;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings as programs, loggers and people send them, and what is refused before it is kept. */
class ReadingTextTest {
    private static final long START = 1_790_000_000_000L;

    /** Ten minutes after the meat went in. */
    private static final long NOW = START + 600_000;

    private static StoredReading check(SentReading sent) {
        return new ReadingCheck("c", new CookClock(START, 1), "C", Map.of("p2", "oven-air")).check(sent, "http", NOW);
    }

    private static List<ReadingText.Line> json(String text) {
        return ReadingText.json(FollowJson.read(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static StoredReading only(String text) {
        return check(json(text).get(0).reading().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"value\":54.2} | core | core | 600000 | 54.2 | C",
                "{\"value\":\"54,2\",\"unit\":\"°F\"} | core | core | 600000 | 54.2 | F",
                "{\"value\":-18,\"time_s\":-30} | core | core | -30000 | -18 | C",
                "{\"value\":54,\"time_min\":2.5} | core | core | 150000 | 54 | C",
                "{\"value\":160,\"probe\":\"p2\"} | p2 | oven-air | 600000 | 160 | C",
                "{\"value\":54,\"probe\":\"Left\",\"role\":\"second_core\"} | Left | second-core | 600000 | 54 | C",
            })
    void aReadingSaysWhatItMustAndTheRestIsUsual(
            String text, String probe, String role, long time, double value, String unit) {
        assertThat(only(text)).isEqualTo(new StoredReading("c", probe, role, time, value, unit, "http", NOW));
    }

    @Test
    void aTimeWithItsZoneCountsFromWhenTheMeatWentIn() {
        String time = java.time.Instant.ofEpochMilli(START + 61_000)
                .atOffset(java.time.ZoneOffset.ofHours(2))
                .toString();
        assertThat(only("{\"value\":54,\"time\":\"" + time + "\"}").time()).isEqualTo(61_000);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"value\":\"NaN\"} | expected a number",
                "{\"value\":\"Infinity\"} | expected a number",
                "{\"value\":\"\"} | expected a number",
                "{\"value\":null} | expected a number",
                "{\"value\":true} | expected a number",
                "{\"value\":[1]} | expected a number",
                "{} | needs a value",
                "7 | expected an object",
                "{\"value\":5,\"tiem\":1} | Got the key \"tiem\"",
                "{\"value\":5,\"time\":\"yesterday\"} | a time with its zone",
                "{\"value\":5,\"time\":12} | expected text",
                "{\"value\":5,\"time_s\":\"NaN\"} | for time_s",
            })
    void whatIsNoReadingIsToldInOneSentence(String text, String words) {
        ReadingText.Line line = json(text).get(0);
        assertThat(line.reading()).isEmpty();
        assertThat(line.problem()).contains(words).endsWith(".");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"value\":3000} | Got 3000 °C",
                "{\"value\":-60} | expected -50 to 420 °C",
                "{\"value\":1e300} | °C",
                "{\"value\":900,\"unit\":\"F\"} | Got 900 °F",
                "{\"value\":54,\"unit\":\"K\"} | Got the unit \"K\"",
                "{\"value\":54,\"probe\":\"left\"} | does not say where it is",
                "{\"value\":54,\"probe\":\" \"} | name of a probe",
                "{\"value\":54,\"probe\":\"p2\",\"role\":\"core\"} | was in the role oven-air",
                "{\"value\":54,\"time_s\":700} | 2 min ahead",
                "{\"value\":54,\"time\":\"2038-01-19T03:14:08Z\"} | ahead of this computer's clock",
                "{\"value\":54,\"time\":\"1970-01-01T00:00:12Z\"} | before the meat went into the heat",
            })
    void whatNoKitchenShowsIsRefused(String text, String words) {
        SentReading sent = json(text).get(0).reading().orElseThrow();
        assertThatIllegalArgumentException().isThrownBy(() -> check(sent)).withMessageContaining(words);
    }

    @Test
    void linesMayNameTheirColumnsOrKeepToTheOrder() {
        assertThat(ReadingText.csv("# log\ncore,,54.2,C\n\n\"x\n").stream()
                        .map(line -> line.reading().isPresent()))
                .containsExactly(true, false);
        ReadingText.Line semicolons =
                ReadingText.csv("value;probe;time_min\r\n54,2;core;3\r\n").get(0);
        assertThat(check(semicolons.reading().orElseThrow()).time()).isEqualTo(180_000);
        assertThat(semicolons.reading().orElseThrow().value()).isEqualTo(54.2);
        assertThat(ReadingText.csv("core,,54,2,C").get(0).problem()).contains("decimal comma");
    }

    @ParameterizedTest
    @ValueSource(ints = {0x00, 0x07, 0xFF, 0xC3})
    void bytesThatAreNoTextAreRefused(int odd) {
        byte[] bytes = {'5', '4', (byte) odd};
        org.assertj.core.api.Assertions.assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> Payload.text(bytes))
                .withMessageContaining("3 bytes");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "54.2 | '' | 54.2",
                "54,2 °C | '' | 54.2",
                "{\"t\":54.2} | t | 54.2",
                "{\"probes\":[{\"t\":\"54\"}]} | probes.0.t | 54",
            })
    void aMessageHoldsItsValueWhereThePathSays(String payload, String path, double value) {
        assertThat(MqttPayload.reading(payload.getBytes(StandardCharsets.UTF_8), settings(path))
                        .value())
                .isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"t\":54.2} | '' | expected a number",
                "{\"t\":54.2} | temperature | no value under \"temperature\"",
                "{\"t\":{}} | t | no value under",
                "54.2 | t | no value under",
                "{ | t | no JSON",
                "'' | '' | expected a number",
            })
    void aMessageWithoutItsValueIsTold(String payload, String path, String words) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MqttPayload.reading(payload.getBytes(StandardCharsets.UTF_8), settings(path)))
                .withMessageContaining(words);
    }

    private static MqttSettings settings(String path) {
        return new MqttSettings(
                "localhost",
                1883,
                false,
                3,
                "a",
                path,
                "",
                "core",
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                "",
                "");
    }
}
