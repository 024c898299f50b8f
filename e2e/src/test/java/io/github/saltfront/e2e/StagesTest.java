package io.github.saltfront.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The picture of the two fronts: its stages dragged by hand and by keyboard, its table, its files and its print. */
class StagesTest {
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

    private static Page planned(Page page) {
        page.navigate(kitchen().address() + Requests.bookmark(Requests.BREAST));
        assertThat(page.locator(".canvas[data-ready=yes]")).isVisible();
        return page;
    }

    private static Locator end(Page page, String stage) {
        return page.getByRole(AriaRole.SLIDER, new Page.GetByRoleOptions().setName("End of " + stage));
    }

    private static Locator row(Page page, String name) {
        return page.locator(".stages tr").filter(new Locator.FilterOptions().setHasText(name));
    }

    @Test
    void theRestOfTheDayFollowsTheHandAndTheOldStateStaysAsAGhost() {
        Page page = planned(kitchen().desk(ColorScheme.LIGHT));
        assertThat(page.locator(".fronts .ghost")).hasCount(0);
        assertThat(page.locator(".fronts .band").last()).isVisible();
        Locator heat = end(page, "heat");
        heat.scrollIntoViewIfNeeded();
        BoundingBox box = heat.boundingBox();
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        page.mouse().down();
        for (int i = 1; i <= 10; i++) {
            page.mouse().move(box.x + box.width / 2 + 6 * i, box.y + box.height / 2);
            page.waitForTimeout(50);
        }
        // it moves while the button is down
        assertThat(page.locator(".fronts .ghost").first()).isVisible();
        assertThat(row(page, "Take out at").locator(".was")).isVisible();
        page.mouse().up();
        assertThat(page.locator("#fronts-place .status")).containsText("Take out at");
        assertThat(row(page, "Weight left").locator(".was")).isVisible();
        assertThat(row(page, "On the table").locator(".was")).isVisible();
        Kitchen.assertAccessible(page);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Take this as the plan"))
                .first()
                .click();
        assertThat(page.getByLabel("Temperature in the middle")).not().hasValue("");
        assertThat(page.locator(".canvas[data-ready=yes]")).isVisible();
        assertThat(page.locator(".fronts .ghost")).hasCount(0);
        kitchen().assertQuiet();
    }

    @Test
    void arrowKeysMoveItToo() {
        Page page = planned(kitchen().phone(ColorScheme.DARK));
        Locator soak = end(page, "soak");
        double before = Double.parseDouble(soak.getAttribute("aria-valuenow"));
        soak.focus();
        for (int i = 0; i < 3; i++) {
            page.keyboard().press("ArrowLeft");
        }
        assertThat(soak).isFocused();
        assertThat(Double.parseDouble(soak.getAttribute("aria-valuenow"))).isLessThan(before);
        assertThat(row(page, "Salt on average").locator(".was")).isVisible();
        assertThat(soak)
                .hasAttribute("aria-valuetext", java.util.regex.Pattern.compile("lasts .* ends at \\d\\d:\\d\\d"));
        Kitchen.assertAccessible(page);
        Kitchen.assertFits(page);
        page.keyboard().press("Escape");
        assertThat(page.locator(".stages")).isHidden();
        assertThat(page.locator(".fronts .ghost")).hasCount(0);
        kitchen().assertQuiet();
    }

    @Test
    void tableSummaryCutAndFilesSayTheSame() throws Exception {
        Page page = planned(kitchen().desk(ColorScheme.DARK));
        page.getByText("Read it as a table").click();
        assertThat(page.locator("#fronts-place caption").last()).hasText("The median piece along the day");
        assertThat(page.locator("#fronts-words")).containsText("The required hold at the worst place is reached at");
        String cut = page.locator("svg.cut").innerHTML();
        page.locator("#fronts-time").focus();
        page.keyboard().press("Home");
        assertThat(page.locator("svg.cut").innerHTML()).isNotEqualTo(cut);
        for (String name : new String[] {"SVG", "PNG"}) {
            Path file = page.waitForDownload(
                            () -> page.getByText("Save as " + name).click())
                    .path();
            assertThat(Files.size(file)).isGreaterThan(10_000);
        }
        kitchen().assertQuiet();
    }

    /** In print nothing is dark, and lightness alone must tell the order: both scales only ever get darker. */
    @Test
    void itPrintsInGray() {
        Page page = planned(kitchen().desk(ColorScheme.DARK));
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(page.locator("#salt-key stop").first()).hasAttribute("stop-color", "#f4f1e8");
        for (String key : new String[] {"salt-key", "heat-key"}) {
            Object falling = page.evaluate(
                    "key => { const L = [...document.querySelectorAll('#' + key + ' stop')].map(s => s.getAttribute('stop-color'))"
                            + ".map(c => [1, 3, 5].map(i => parseInt(c.slice(i, i + 2), 16) / 255).map(v => v <= .04045 ? v / 12.92 : ((v + .055) / 1.055) ** 2.4))"
                            + ".map(([r, g, b]) => .2126 * r + .7152 * g + .0722 * b); return L.every((y, i) => i === 0 || y < L[i - 1]); }",
                    key);
            assertThat(falling).as(key).isEqualTo(true);
        }
        assertThat(page.locator(".handle").first()).isHidden();
        assertThat(page.locator("form")).isHidden();
        assertThat(page.locator("#clock")).isVisible();
    }
}
