package io.github.saltfront.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The notebook, and a trial with several tasters at once on their phones. */
class NotebookPagesTest {
    @TempDir
    private static Path folder;

    private static Optional<Kitchen> open = Optional.empty();

    @BeforeAll
    static void start() {
        open = Optional.of(Kitchen.openOrSkip(folder.resolve("book.db")));
    }

    @AfterAll
    static void stop() {
        open.ifPresent(Kitchen::close);
    }

    private static Kitchen kitchen() {
        return open.orElseThrow();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    @Test
    void aCookNotesWhatCameOut() {
        Page page = kitchen().phone(ColorScheme.LIGHT);
        page.navigate(kitchen().address());
        page.evaluate(
                "fetch('/api/saved', {method: 'POST', headers: {'Content-Type': 'application/json'}, body: JSON.stringify({title: 'Chops',"
                        + " request: {cut: 'pork-loin-chop', mass: '185 g', thickness: '1 in', appliance: 'pan',"
                        + " salting: {treatment: 'surface-salt'}, now: '2026-11-28T12:00'}})})");
        page.getByText("Notebook").click();
        assertThat(page.locator("h1")).containsText("What did we learn?");
        page.getByLabel("Name of this cook").fill("Chops on a Monday");
        page.getByLabel("Weight raw, all pieces").fill("185 g");
        page.getByLabel("Weight when served").fill("150 g");
        page.getByLabel("In the refrigerator").fill("6 °C");
        button(page, "Note it").click();
        assertThat(page.locator("#shown h3").first()).containsText("Chops on a Monday");
        assertThat(page.locator("#shown table")).containsText("18.9");
        assertThat(page.locator("#learned")).containsText("refrigerator");
        Kitchen.assertAccessible(page);
        Kitchen.assertFits(page);
        button(page, "Forget: refrigerator").click();
        assertThat(page.locator("#learned")).not().containsText("refrigerator");
        page.getByLabel("In ice water").fill("0.4");
        page.locator("#check").getByLabel("Thermometer").fill("blue-pen");
        button(page, "Keep this check").click();
        assertThat(page.locator("#bench")).containsText("Next check on");
        kitchen().assertQuiet();
    }

    @Test
    void severalTastersAnswerAtOnce() {
        Page cook = kitchen().desk(ColorScheme.DARK);
        cook.navigate(kitchen().address() + "trials.html");
        cook.getByLabel("Tasters", new Page.GetByLabelOptions().setExact(true)).fill("4");
        cook.getByLabel("Seed of the lot").fill("5");
        button(cook, "Draw the design").click();
        assertThat(cook.locator("#arrived")).containsText("0 of 4");
        Kitchen.assertAccessible(cook);
        List<Page> phones = new ArrayList<>();
        for (Object address : (List<?>) cook.locator("#tasters a").evaluateAll("links => links.map(a => a.href)")) {
            Page phone = kitchen().phone(ColorScheme.LIGHT);
            phone.navigate(address.toString());
            phones.add(phone);
        }
        for (Page phone : phones) {
            assertThat(phone.locator("fieldset").first()).isVisible();
            phone.locator("input[type=radio]").first().check();
        }
        Kitchen.assertAccessible(phones.get(0));
        Kitchen.assertFits(phones.get(0));
        phones.forEach(phone -> button(phone, "Send my answers").click());
        phones.forEach(phone -> assertThat(phone.locator("#note")).containsText("have arrived"));
        assertThat(cook.locator("#arrived")).containsText("4 of 4");
        assertThat(cook.locator("#analysis")).containsText("HOW LARGE");
        String words = cook.locator("#analysis").textContent();
        assertThat(words.indexOf("interval")).isLessThan(words.indexOf("chance of"));
        kitchen().assertQuiet();
    }
}
