package io.github.saltfront.app.follow;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.app.export.OutlookJson;
import io.github.saltfront.app.store.StoredReading;
import io.github.saltfront.live.CookEvent;
import io.github.saltfront.live.LiveCook;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Reading;
import io.github.saltfront.units.Temperature;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cooks in the registry: alarms that stand, restarts, units that were wrong, and what is undone. */
class ReplayedCookTest {
    @TempDir
    private Path folder;

    /** A thermometer that rises to a temperature in a quarter of an hour and stays. */
    private static List<Reading> rising(double celsius) {
        List<Reading> readings = new ArrayList<>();
        for (int second = 0; second <= 1200; second += 30) {
            double share = Math.min(1, second / 900.0);
            readings.add(new Reading(
                    "core", Reading.Role.CORE, second, Temperature.fromCelsius(4 + share * share * (celsius - 4))));
        }
        return readings;
    }

    /** Readings as the middle of such cooks would show them, to a temperature. */
    private static List<Reading> usual(double celsius) {
        LiveSetup setup = LiveSetup.of(Stove.plan(Stove.BREAST));
        LiveCook cook = LiveCook.start(setup, 50, 7, Runnable::run);
        List<Reading> readings = new ArrayList<>();
        for (LiveCook.FanPoint point : cook.fan(0, 5400, 181)) {
            double core = point.core().p50();
            if (readings.isEmpty()
                    || readings.get(readings.size() - 1).temperature() < Temperature.fromCelsius(celsius)) {
                readings.add(new Reading("core", Reading.Role.CORE, point.time(), core));
            }
        }
        return readings;
    }

    private static String begin(CookRegistry cooks, long secondsAgo) {
        CookOptions past = new CookOptions(
                "Roast",
                java.util.Optional.of(System.currentTimeMillis() - 1000 * secondsAgo),
                "C",
                java.util.OptionalDouble.empty(),
                java.util.OptionalDouble.empty(),
                1,
                io.github.saltfront.words.Language.ENGLISH);
        return cooks.begin(Stove.BREAST.getBytes(StandardCharsets.UTF_8), past);
    }

    private static Set<CookAlarm.Kind> open(CookRegistry cooks, String id) {
        return cooks.find(id).orElseThrow().openAlarms().stream()
                .map(CookAlarm::kind)
                .collect(Collectors.toSet());
    }

    private static void tell(CookRegistry cooks, String id, String json) {
        cooks.tell(id, json.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void theAlarmStandsThroughARestartUntilSomebodyAnswers() {
        Path data = folder.resolve("a.db");
        String id;
        int kept;
        List<Reading> readings = usual(75);
        try (CookRegistry cooks = Stove.open(data)) {
            id = begin(cooks, Math.round(readings.get(readings.size() - 1).time()) + 5);
            kept = cooks.feed(id, readings, "file").accepted();
            assertThat(cooks.feed(id, readings, "file").known()).isEqualTo(kept);
            Stove.await("it should come out", () -> open(cooks, id).contains(CookAlarm.Kind.PULL_NOW));
        }
        try (CookRegistry cooks = Stove.open(data)) {
            assertThat(open(cooks, id)).contains(CookAlarm.Kind.PULL_NOW);
            assertThat(cooks.find(id).orElseThrow().readings()).hasSize(kept);
            CookAlarm alarm = cooks.find(id).orElseThrow().openAlarms().stream()
                    .filter(a -> a.kind() == CookAlarm.Kind.PULL_NOW)
                    .findFirst()
                    .orElseThrow();
            cooks.acknowledge(id, alarm.number());
            assertThat(open(cooks, id)).doesNotContain(CookAlarm.Kind.PULL_NOW);
            Stove.await(
                    "it comes again since nothing was done",
                    () -> open(cooks, id).contains(CookAlarm.Kind.PULL_NOW));
            tell(cooks, id, "{\"kind\":\"taken-out\"}");
            assertThat(open(cooks, id)).doesNotContain(CookAlarm.Kind.PULL_NOW);
            Stove.await(
                    "it rests",
                    () -> cooks.find(id).orElseThrow().outlook().orElseThrow().phase()
                            == io.github.saltfront.live.Outlook.Phase.REST);
            Map<String, Object> ending = cooks.end(
                    id,
                    "{\"weight_before\":\"220 g\",\"weight_after\":\"180 g\",\"juice\":\"juicy\"}"
                            .getBytes(StandardCharsets.UTF_8));
            assertThat((Double) ending.get("mass_loss_pct"))
                    .isCloseTo(18.18, org.assertj.core.data.Offset.offset(0.01));
            assertThat(ending).containsKey("outlook");
        }
        try (CookRegistry cooks = Stove.open(data)) {
            assertThat(cooks.find(id).orElseThrow().status()).isEqualTo("ended");
            assertThat(cooks.csv(id).lines().skip(1).findFirst()).contains("time_s,core_c");
            assertThat(cooks.csv(id).lines().count()).isEqualTo(kept + 2);
        }
    }

    @Test
    void aCookOfTwoHeatsGoesOnByTheClockAndAsksUntilItIsTold() {
        String seared = Stove.BREAST.replace("}\n", "}").strip();
        String request = seared.substring(0, seared.length() - 1)
                + ", \"before\": [{\"appliance\": \"pan\", \"time\": \"1 min\"}]}";
        try (CookRegistry cooks = Stove.open(folder.resolve("heats.db"))) {
            CookOptions past = new CookOptions(
                    "Seared",
                    java.util.Optional.of(System.currentTimeMillis() - 120_000),
                    "C",
                    java.util.OptionalDouble.empty(),
                    java.util.OptionalDouble.empty(),
                    1,
                    io.github.saltfront.words.Language.ENGLISH);
            String id = cooks.begin(request.getBytes(StandardCharsets.UTF_8), past);
            Stove.await("it should be in the oven", () -> open(cooks, id).contains(CookAlarm.Kind.NEXT_HEAT));
            List<?> heats = (List<?>) cooks.state(id).get("heats");
            assertThat(heats).hasSize(2);
            assertThat(((Map<?, ?>) heats.get(1)).get("on")).isEqualTo(true);
            assertThat(((Map<?, ?>) heats.get(1)).get("told")).isEqualTo(false);
            tell(cooks, id, "{\"kind\":\"heat-begun\",\"number\":2,\"time_min\":1.5}");
            assertThat(open(cooks, id)).doesNotContain(CookAlarm.Kind.NEXT_HEAT);
            Stove.await(
                    "it is told",
                    () -> String.valueOf(cooks.state(id).get("heats")).contains("begin_min=1.5, told=true"));
        }
    }

    @Test
    void aCookThatIsOverLeavesARecordThatStaysAndANoteForTheNotebook() {
        Path data = folder.resolve("over.db");
        String id;
        String page;
        List<Reading> readings = usual(75);
        double out = readings.get(readings.size() - 1).time();
        try (CookRegistry cooks = Stove.open(data)) {
            id = begin(cooks, Math.round(out) + 5);
            cooks.feed(id, readings, "file");
            tell(cooks, id, "{\"kind\":\"taken-out\",\"time_min\":" + out / 60 + "}");
            Stove.await(
                    "it rests",
                    () -> cooks.find(id).orElseThrow().outlook().isPresent()
                            && cooks.find(id)
                                            .orElseThrow()
                                            .outlook()
                                            .orElseThrow()
                                            .phase()
                                    == io.github.saltfront.live.Outlook.Phase.REST);
            Map<String, Object> ending = cooks.end(
                    id,
                    "{\"weight_before\":\"220 g\",\"weight_after\":\"180 g\",\"salt\":\"too-mild\",\"juice\":\"dry\"}"
                            .getBytes(StandardCharsets.UTF_8));
            page = cooks.record(id).orElseThrow();
            // an unchecked thermometer in an unknown place shows nothing, however hot
            assertThat(page).contains("<h1>Cooking record</h1>", "rows, probes: core", "Roast", "Cannot tell");
            CookNoted noted = cooks.noted(id, ending);
            assertThat(noted.content().get("measured").toString())
                    .contains("raw=220.0 g", "cooked=180.0 g", "reading=7", "time=" + Math.round(out) + " s");
            assertThat(noted.content().get("ratings").toString()).contains("slightly too weak");
            assertThat(noted.content().get("notes")).isEqualTo("Juice: dry.");
            assertThat(noted.readings().orElseThrow().coreC()).hasSameSizeAs(readings);
        }
        try (CookRegistry cooks = Stove.open(data)) {
            assertThat(cooks.record(id)).contains(page);
            assertThat(cooks.state(id).toString()).doesNotContain("<h1>");
        }
    }

    @Test
    void fahrenheitSentAsCelsiusIsAskedAndTheAnswerTurnsAllReadings() {
        try (CookRegistry cooks = Stove.open(folder.resolve("b.db"))) {
            String id = begin(cooks, 300);
            String cold = "[39.2, 39.2, 39.4, 39.9, 41.0]";
            List<String> items = new ArrayList<>();
            int minute = 0;
            for (String value : cold.replaceAll("[\\[\\] ]", "").split(",")) {
                items.add("{\"value\":" + value + ",\"time_min\":" + minute++ + "}");
            }
            cooks.take(
                    id, ("[" + String.join(",", items) + "]").getBytes(StandardCharsets.UTF_8), CookRegistry.Form.JSON);
            Stove.await("it asks", () -> open(cooks, id).contains(CookAlarm.Kind.PROBE));
            tell(cooks, id, "{\"kind\":\"unit\",\"probe\":\"core\",\"unit\":\"F\"}");
            assertThat(open(cooks, id)).doesNotContain(CookAlarm.Kind.PROBE);
            assertThat(cooks.csv(id)).contains("\n0,4\n").contains("\n240,5\n");
            Stove.await(
                    "the readings count",
                    () -> cooks.find(id)
                                    .orElseThrow()
                                    .outlook()
                                    .orElseThrow()
                                    .quality()
                                    .used()
                            == 5);
        }
    }

    @Test
    void theOrderInWhichReadingsCameMakesNoDifference() {
        LiveSetup setup = LiveSetup.of(Stove.plan(Stove.BREAST));
        List<StoredReading> readings = new ArrayList<>();
        rising(45)
                .forEach(reading -> readings.add(new StoredReading(
                        "c",
                        "core",
                        "core",
                        Math.round(1000 * reading.time()),
                        Temperature.toCelsius(reading.temperature()),
                        "C",
                        "http",
                        0)));
        Follower once = Follower.of(setup, 50, readings, List.of(), Runnable::run);
        java.util.Collections.reverse(readings);
        Follower again = Follower.of(setup, 50, readings, List.of(), Runnable::run);
        assertThat(OutlookJson.outlook(again.look(1300).outlook()))
                .isEqualTo(OutlookJson.outlook(once.look(1300).outlook()));
    }

    @Test
    void eventsAreReadWithTheirUnitsAndWrongOnesAreTold() {
        CookClock clock = new CookClock(0, 1);
        ToldEvent setting = event("{\"kind\":\"setting\",\"setting\":\"300 °F\",\"time_min\":1}", clock);
        assertThat(setting.event().orElseThrow())
                .isEqualTo(new CookEvent.SettingChanged(
                        60, ((CookEvent.SettingChanged) setting.event().orElseThrow()).setting()));
        assertThat(setting.words()).isEqualTo("Set to 149 °C");
        assertThat(event("{\"kind\":\"door\",\"duration\":\"2 min\"}", clock).event())
                .contains(new CookEvent.DoorOpened(600, 120));
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> event("{\"kind\":\"dor\",\"time_min\":900}", clock))
                .hasMessageContaining("kind")
                .hasMessageContaining("still to come");
    }

    private static ToldEvent event(String json, CookClock clock) {
        Map<String, Object> content = ToldEvent.read(json.getBytes(StandardCharsets.UTF_8), clock, 600_000);
        return ToldEvent.of(new io.github.saltfront.app.store.StoredEvent(
                1, "c", String.valueOf(content.get("kind")), FollowJson.text(content), 0));
    }
}
