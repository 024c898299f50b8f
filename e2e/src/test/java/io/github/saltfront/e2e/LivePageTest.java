package io.github.saltfront.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import io.github.saltfront.app.follow.CookOptions;
import io.github.saltfront.live.Reading;
import io.github.saltfront.units.Temperature;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cook at the stove: the alarm, a reload, a lost network, and a unit that was wrong. */
class LivePageTest {
    private static final String BREAST =
            "{\"cut\":\"chicken-breast-skinless\",\"mass\":\"220 g\",\"appliance\":\"oven-fan\",\"salting\":{\"treatment\":\"none\"}}";

    private static final String SEARED =
            BREAST.substring(0, BREAST.length() - 1) + ",\"before\":[{\"appliance\":\"pan\",\"time\":\"4 min\"}]}";

    @TempDir
    private static Path folder;

    private static Optional<Kitchen> open = Optional.empty();

    @BeforeAll
    static void start() {
        boolean required = Objects.equals(System.getenv("SALTFRONT_BROWSER_TESTS"), "required");
        assumeTrue(required || Kitchen.hasBrowser(), "Chromium is not installed; .ci/run installs it");
        PlaywrightAssertions.setDefaultAssertionTimeout(60_000);
        open = Optional.of(Kitchen.open(folder.resolve("cooks.db")));
    }

    @AfterAll
    static void stop() {
        open.ifPresent(Kitchen::close);
    }

    private static Kitchen kitchen() {
        return open.orElseThrow();
    }

    private static String begin(String title, long secondsAgo) {
        return begin(BREAST, title, secondsAgo);
    }

    private static String begin(String request, String title, long secondsAgo) {
        CookOptions options = new CookOptions(
                title,
                Optional.of(System.currentTimeMillis() - 1000 * secondsAgo),
                "C",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                1,
                io.github.saltfront.words.Language.ENGLISH);
        return kitchen().cooks().begin(request.getBytes(StandardCharsets.UTF_8), options);
    }

    /** Minutes, and what the middle of such breasts shows then [°C]. */
    private static final double[][] USUAL = {
        {0, 4},
        {2, 4.6},
        {4, 8.2},
        {6, 14},
        {8, 20.4},
        {10, 26.6},
        {15, 39.9},
        {20, 50.5},
        {25, 58.5},
        {30, 64.5},
        {35, 68.9},
        {40, 72.2},
        {45, 74.6}
    };

    /** Readings of a usual breast up to a time. */
    private static void feed(String id, int seconds) {
        List<Reading> readings = new ArrayList<>();
        int i = 1;
        for (int second = 0; second <= seconds; second += 30) {
            double minute = second / 60.0;
            i += minute > USUAL[i][0] ? 1 : 0;
            double share = (minute - USUAL[i - 1][0]) / (USUAL[i][0] - USUAL[i - 1][0]);
            double celsius = USUAL[i - 1][1] + share * (USUAL[i][1] - USUAL[i - 1][1]);
            readings.add(new Reading("core", Reading.Role.CORE, second, Temperature.fromCelsius(celsius)));
        }
        kitchen().cooks().feed(id, readings, "file");
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .first()
                .click();
    }

    @Test
    void theAlarmRingsThroughAReloadAndUntilItIsAnsweredOnAnyPage() {
        String id = begin("Sunday breast", 2705);
        feed(id, 2700);
        Page phone = kitchen().phone(ColorScheme.DARK);
        phone.navigate(kitchen().address() + "live.html#cook=" + id);
        assertThat(phone.locator("[data-alarm=pull-now]")).isVisible();
        assertThat(phone.locator("html")).hasAttribute("data-ringing", "yes");
        assertThat(phone.locator(".figures .do")).hasText("Take it out now");
        press(phone, "Let this page ring");
        assertThat(phone.locator(".keep")).containsText("This page can ring");
        Kitchen.assertAccessible(phone);
        Kitchen.assertFits(phone);
        phone.reload();
        assertThat(phone.locator("html")).hasAttribute("data-ringing", "yes");
        Page desk = kitchen().desk(ColorScheme.LIGHT);
        desk.navigate(kitchen().address() + "live.html#cook=" + id);
        assertThat(desk.locator("[data-alarm=pull-now]")).isVisible();
        press(desk, "Stop the alarm");
        assertThat(phone.locator("html")).hasAttribute("data-ringing", "no");
        press(phone, "It is out of the heat");
        assertThat(desk.locator(".figures .do")).hasText("Out of the heat, resting");
        Kitchen.assertAccessible(desk);
        kitchen().assertQuiet();
    }

    @Test
    void theFrontsAreDrawnAndACookEndsWithItsRecordAndANote() {
        String id = begin("With its record", 1205);
        feed(id, 1200);
        Page page = kitchen().desk(ColorScheme.LIGHT);
        page.navigate(kitchen().address() + "live.html#cook=" + id);
        assertThat(page.locator("#fronts-title")).hasText("The two fronts, by the readings");
        assertThat(page.locator("#fronts-words")).containsText("from the cooks that fit the readings");
        Kitchen.assertAccessible(page);
        Kitchen.assertFits(page);
        page.getByText("It is on the table: weights and taste").click();
        page.getByLabel("Weight before").fill("220 g");
        page.getByLabel("Weight after").fill("180 g");
        page.getByLabel("Into the notebook as well").check();
        // the page tells the end at once; the note takes as long as its plan
        var ended =
                page.waitForResponse(answer -> answer.url().endsWith("/end"), () -> press(page, "This cook is over"));
        org.junit.jupiter.api.Assertions.assertTrue(ended.text().contains("notebook_id"), ended.text());
        assertThat(page.locator("#over-title")).hasText("With its record: over");
        Page record = page.context().waitForPage(() -> page.locator("#record").click());
        assertThat(record.locator("h1")).hasText("Cooking record");
        Kitchen.assertAccessible(record);
        kitchen().assertQuiet();
    }

    @Test
    void aCookOfTwoHeatsShowsWhichIsOnAndIsToldTheNext() {
        String id = begin(SEARED, "Seared first", 5);
        Page phone = kitchen().phone(ColorScheme.LIGHT);
        phone.navigate(kitchen().address() + "live.html#cook=" + id);
        assertThat(phone.locator("#heats-title")).isVisible();
        assertThat(phone.locator(".heats [aria-current=step]")).containsText("Pan");
        Kitchen.assertFits(phone);
        phone.locator("section[aria-labelledby=heats-title] button").click();
        assertThat(phone.locator(".heats [aria-current=step]")).containsText("ven");
        assertThat(phone.locator("#happened")).containsText("Into heat 2");
        Kitchen.assertAccessible(phone);
        kitchen().assertQuiet();
    }

    @Test
    void aReadingTypedWithoutTheNetworkIsSentWhenItIsBack() {
        String id = begin("Lost and found", 120);
        Page page = kitchen().phone(ColorScheme.LIGHT);
        page.navigate(kitchen().address() + "live.html#cook=" + id);
        assertThat(page.locator("html")).hasAttribute("data-ready", "yes");
        // the files of the page are at hand once its worker is there
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        page.context().setOffline(true);
        page.getByLabel("It shows, in °C").fill("5,5");
        press(page, "Add");
        assertThat(page.locator("#contact")).containsText("One reading waits to be sent");
        page.reload();
        assertThat(page.locator("#contact")).containsText("One reading waits to be sent");
        assertThat(page.locator(".figures h2")).hasText("Lost and found");
        page.context().setOffline(false);
        assertThat(page.locator("#contact")).isHidden();
        assertThat(page.locator(".figures .huge").last()).containsText("5.5");
        assertThat(kitchen().cooks().csv(id)).containsPattern("\n[0-9]+(\\.[0-9]+)?,5\\.5\n");
        kitchen().assertQuiet();
    }

    @Test
    void aPlanIsFollowedFromItsPageAndAWrongUnitIsAsked() {
        Page page = kitchen().desk(ColorScheme.LIGHT);
        String plan = java.util.Base64.getUrlEncoder()
                .withoutPadding()
                .encodeToString(BREAST.getBytes(StandardCharsets.UTF_8));
        page.navigate(kitchen().address() + "live.html#plan=" + plan);
        press(page, "The meat goes in now");
        assertThat(page.locator(".figures .do")).hasText("Leave it in");
        page.getByLabel("It shows, in °C").fill("39.5");
        press(page, "Add");
        press(page, "They are °F");
        assertThat(page.locator("#happened")).containsText("Probe core reads °F");
        assertThat(page.locator(".figures .huge").last()).containsText("4.2");
        Kitchen.assertAccessible(page);
        Kitchen.assertFits(page);
        kitchen().assertQuiet();
    }
}
