package io.github.saltfront.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cook's way through the pages, on a phone and at a desk, in light and dark, by touch and by keyboard. */
class PagesTest {
    /** Keys of the tabulator between two answers. */
    private static final int LONGEST_WAY = 120;

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

    private static Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }

    /** Picks pork chops of one inch for the pan, whose plan is quick to compute. */
    private static void answer(Page page) {
        page.navigate(kitchen().address());
        page.getByLabel("Which cut?").fill("pork chop");
        page.getByText("Pork loin chop, boneless, 1 inch").click();
        page.getByLabel("Weight of one piece").fill("6 1/2 oz");
        page.locator("#f-thickness").fill("1 in");
        page.getByLabel("How may we salt it?").selectOption("surface-salt");
    }

    @Test
    void aCookPlansOnAPhone() {
        Page page = kitchen().phone(ColorScheme.LIGHT);
        answer(page);
        Kitchen.assertAccessible(page);
        button(page, "Make the plan").click();
        assertThat(page.locator("#story-title")).containsText("Pork loin chop");
        assertThat(page.locator("#safety .official")).containsText("63 °C (145 °F)");
        assertThat(page.locator(".fronts svg")).isVisible();
        assertThat(page.locator("#fronts-words")).containsText("the middle shows");
        Kitchen.assertAccessible(page);
        Kitchen.assertFits(page);
        page.setViewportSize(320, 640);
        Kitchen.assertFits(page);
        kitchen().assertQuiet();
    }

    @Test
    void theKeyboardIsEnough() {
        Page page = kitchen().desk(ColorScheme.DARK);
        page.navigate(kitchen().address());
        page.getByLabel("Which cut?").focus();
        page.keyboard().type("ribeye");
        page.locator("input[name=cut-choice]").first().focus();
        page.keyboard().press("Enter");
        assertThat(page.locator(".chosen")).containsText("ribeye");
        page.getByLabel("Weight of one piece").focus();
        page.keyboard().press("Control+A");
        page.keyboard().type("heavy");
        page.keyboard().press("Enter");
        assertThat(page.locator("#f-mass-error")).containsText("heavy");
        assertThat(page.locator("#problems")).isFocused();
        Kitchen.assertAccessible(page);
        page.getByLabel("Weight of one piece").focus();
        page.keyboard().press("Control+A");
        page.keyboard().type("0,45 kg");
        page.keyboard().press("Enter");
        assertThat(page.locator("#story-title")).isFocused();
        page.locator("#fronts-time").focus();
        String before = page.locator("#fronts-time").getAttribute("aria-valuetext");
        page.keyboard().press("PageDown");
        assertThat(page.locator("#fronts-time").getAttribute("aria-valuetext")).isNotEqualTo(before);
        Kitchen.assertAccessible(page);
        kitchen().assertQuiet();
    }

    /** Nothing is touched and nothing is focused by the test: only keys, as a hand on a keyboard presses them. */
    @Test
    void keysAloneLeadFromAnEmptyPageToThePrintedCard() throws IOException {
        Page page = kitchen().desk(ColorScheme.LIGHT);
        page.navigate(kitchen().address());
        assertThat(page.locator("html")).hasAttribute("data-ready", "yes");
        tabTo(page, page.getByLabel("Which cut?"));
        page.keyboard().type("ribeye");
        tabTo(page, page.locator("input[name=cut-choice]").first());
        page.keyboard().press("Enter");
        assertThat(page.locator(".chosen")).containsText("ribeye");
        tabTo(page, page.getByLabel("Weight of one piece"));
        page.keyboard().type("450 g");
        page.keyboard().press("Enter");
        assertThat(page.locator("#story-title")).isFocused();
        tabTo(page, page.getByLabel("Save as a file"));
        Download card = page.waitForDownload(() -> page.keyboard().press("ArrowDown"));
        assertThat(card.suggestedFilename()).endsWith(".pdf");
        byte[] content = Files.readAllBytes(card.path());
        assertThat(new String(content, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        kitchen().assertQuiet();
    }

    private static void tabTo(Page page, Locator wanted) {
        for (int i = 0; i < LONGEST_WAY; i++) {
            page.keyboard().press("Tab");
            if (wanted.count() > 0 && (Boolean) wanted.first().evaluate("e => e === document.activeElement")) {
                return;
            }
        }
        throw new AssertionError("not reached by " + LONGEST_WAY + " tabs: " + wanted);
    }

    @Test
    void aBookmarkOpensTheSamePlanAndBackLeadsBack() {
        Page page = kitchen().desk(ColorScheme.LIGHT);
        answer(page);
        button(page, "Make the plan").click();
        assertThat(page.locator("#story-title")).isVisible();
        String story = page.locator(".story").innerText();
        Page other = kitchen().phone(ColorScheme.DARK);
        other.navigate(page.url());
        assertThat(other.locator("#story-title")).isVisible();
        assertThat(other.locator(".story").innerText()).isEqualTo(story);
        assertThat(other.getByLabel("Weight of one piece")).hasValue("6 1/2 oz");
        page.goBack();
        assertThat(page.locator(".empty")).isVisible();
        page.goForward();
        assertThat(page.locator("#story-title")).isVisible();
        kitchen().assertQuiet();
    }

    @Test
    void aSavedPlanComesBackAfterItsDeletion() {
        Page page = kitchen().phone(ColorScheme.DARK);
        answer(page);
        button(page, "Make the plan").click();
        button(page, "Save this plan").click();
        // exact, or "Saved plans" would do before anything is saved
        assertThat(page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Saved").setExact(true)))
                .isVisible();
        button(page, "Saved plans").click();
        assertThat(page.locator(".saved-list .title")).containsText("Pork loin chop");
        Kitchen.assertAccessible(page);
        button(page, "Delete: Pork loin chop").click();
        assertThat(page.locator(".saved-list .title")).hasCount(0);
        button(page, "Undo").click();
        button(page, "Open: Pork loin chop").click();
        assertThat(page.locator("#story-title")).containsText("Pork loin chop");
        kitchen().assertQuiet();
    }

    @Test
    void aSliderShowsWhatChangesBesideHowItWas() {
        Page page = kitchen().desk(ColorScheme.LIGHT);
        answer(page);
        button(page, "Make the plan").click();
        Locator slider = page.locator("#if-thickness");
        slider.focus();
        page.keyboard().press("End");
        Locator heat = page.locator("#whatif-place tr").filter(new Locator.FilterOptions().setHasText("In the heat"));
        assertThat(heat.locator(".was")).isVisible();
        assertThat(page.locator(".fronts .ghost").first()).isVisible();
        button(page, "Back to how it was").click();
        assertThat(heat.locator(".was")).hasCount(0);
        assertThat(slider).hasValue("25");
        kitchen().assertQuiet();
    }
}
