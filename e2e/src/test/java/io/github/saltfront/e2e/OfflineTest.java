package io.github.saltfront.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan page without a network, with a slow one and with one that fails. */
class OfflineTest {
    @TempDir
    private static Path folder;

    private static Optional<Kitchen> open = Optional.empty();

    @BeforeAll
    static void start() {
        open = Optional.of(Kitchen.openOrSkip(folder.resolve("plans.db")));
    }

    @AfterAll
    static void stop() {
        open.ifPresent(Kitchen::close);
    }

    private static Kitchen kitchen() {
        return open.orElseThrow();
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .click();
    }

    private static Page planned() {
        Page page = kitchen().phone(ColorScheme.LIGHT);
        page.navigate(kitchen().address() + Requests.bookmark(Requests.CHOP));
        assertThat(page.locator("#story-title")).containsText("Pork loin chop");
        assertThat(page.locator(".fronts svg")).isVisible();
        assertThat(page.locator("#ways-place h3").first()).hasText("This plan");
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        return page;
    }

    @Test
    void theLastPlanIsShownWithoutTheNetworkAndNoOther() {
        Page page = planned();
        String story = page.locator(".story").innerText();
        page.context().setOffline(true);
        page.reload();
        assertThat(page.locator("#offline")).containsText("You are offline: the last plan is shown");
        assertThat(page.locator(".story").innerText()).isEqualTo(story);
        assertThat(page.locator(".fronts svg")).isVisible();
        Kitchen.assertAccessible(page);

        page.locator("#f-mass").fill("300 g");
        press(page, "Make the plan");
        assertThat(page.locator("#problems")).containsText("does not answer");
        assertThat(page.locator("#f-mass")).hasValue("300 g");
        press(page, "Show the last plan");
        assertThat(page.locator("#story-title")).isFocused();
        assertThat(page.locator("#f-mass")).hasValue("185 g");

        page.navigate(kitchen().address());
        assertThat(page.locator("#story-title")).containsText("Pork loin chop");
        page.navigate(kitchen().address() + "notebook.html");
        assertThat(page.locator("h1").first()).isVisible();

        page.context().setOffline(false);
        page.navigate(kitchen().address() + Requests.bookmark(Requests.CHOP));
        assertThat(page.locator("#story-title")).containsText("Pork loin chop");
        assertThat(page.locator("#offline")).isHidden();
    }

    @Test
    void aSlowNetworkIsToldAndTheAnswerStillComes() {
        Page page = kitchen().desk(ColorScheme.DARK);
        page.route("**/api/plan*", route -> {
            page.waitForTimeout(6000);
            route.resume();
        });
        page.navigate(kitchen().address() + Requests.bookmark(Requests.CHOP));
        assertThat(page.locator("#plan-status")).containsText("Still working it out");
        assertThat(page.locator("#story-title")).containsText("Pork loin chop");
        kitchen().assertQuiet();
    }

    @Test
    void aNetworkThatFailsLosesNoAnswers() {
        Page page = kitchen().phone(ColorScheme.DARK);
        page.navigate(kitchen().address());
        assertThat(page.locator("html")).hasAttribute("data-ready", "yes");
        page.route("**/api/plan*", Route::abort);
        page.getByLabel("Which cut?").fill("pork chop");
        page.getByText("Pork loin chop, boneless, 1 inch").click();
        page.locator("#f-thickness").fill("1 in");
        press(page, "Make the plan");
        assertThat(page.locator("#problems")).containsText("does not answer");
        assertThat(page.locator("#f-thickness")).hasValue("1 in");
        page.unroute("**/api/plan*");
        press(page, "Make the plan");
        assertThat(page.locator("#story-title")).containsText("Pork loin chop");
        kitchen().assertQuiet();
    }

    @Test
    void theManifestMakesItAProgramOfItsOwn() {
        Page page = kitchen().phone(ColorScheme.LIGHT);
        page.navigate(kitchen().address());
        Object manifest = page.evaluate("fetch(document.querySelector('link[rel=manifest]').href).then(r => r.json())"
                + ".then(m => [m.display, m.start_url, m.icons[0].src].join(' '))");
        assertThat(manifest).isEqualTo("standalone / /icon.svg");
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        Object kept = page.evaluate(
                "caches.keys().then(async names => { const n = names.find(x => x.startsWith('pages-'));"
                        + " const files = await (await caches.open(n)).keys();"
                        + " return n.length > 12 && files.length > 20 && files.every(f => !f.url.includes('/api/')); })");
        assertThat(kept).isEqualTo(true);
    }
}
