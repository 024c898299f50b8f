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
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages in German, the switch of the language, and what the server is asked for. */
class GermanPagesTest {
    private static final List<String> PAGES =
            List.of("", "live.html#new", "notebook.html", "trials.html", "tasting.html#nobody");

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

    private static Page german(int width, int height, ColorScheme scheme) {
        return kitchen().page(width, height, scheme, "de-DE");
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }

    @Test
    void aPlanIsMadeInGermanFromAnEmptyPage() {
        Page page = german(390, 844, ColorScheme.LIGHT);
        List<String> languages = new ArrayList<>();
        page.onRequest(request -> {
            if (request.url().contains("/api/")) {
                languages.add(String.valueOf(request.headers().get("accept-language")));
            }
        });
        page.navigate(kitchen().address());
        assertThat(page.locator("html")).hasAttribute("lang", "de");
        assertThat(page.locator("html")).hasAttribute("data-ready", "yes");
        assertThat(page).hasTitle("Saltfront: ein Stück Fleisch planen");
        assertThat(page.locator("h1")).hasText("Was soll es geben?");
        button(page, "Schwein").click();
        page.locator(".cuts input[value=pork-loin-chop]").dispatchEvent("click", null);
        page.locator(".cuts input[value=pork-loin-chop]").press("Enter");
        page.getByLabel("Gewicht eines Stücks").fill("0,185 kg");
        page.locator("#f-thickness").fill("2,5 cm");
        page.getByLabel("Wie darf gesalzen werden?").selectOption("surface-salt");
        Kitchen.assertAccessible(page);
        button(page, "Plan erstellen").click();
        assertThat(page.locator(".story")).containsText("Danach zieht es noch bis");
        assertThat(page.locator(".story")).containsText("auftragen");
        assertThat(page.locator("#safety-title")).hasText("Ist es sicher?");
        assertThat(page.locator("#safety .official")).containsText("63 °C (145 °F)");
        // a decimal comma, and "bis" between the ends of an interval
        assertThat(page.locator("#plate"))
                .containsText(Pattern.compile("\\d,\\d\\d % \\(\\d,\\d\\d % bis \\d,\\d\\d %\\)"));
        assertThat(page.locator("#clock time small").first())
                .hasText(Pattern.compile("(Mo|Di|Mi|Do|Fr|Sa|So)\\., \\d+\\. .*"));
        assertThat(page.locator("#fronts-words")).containsText("zeigt die Mitte");
        assertThat(page.locator(".fronts svg text").filter(new Locator.FilterOptions().setHasText("Salz im Fleisch")))
                .hasCount(1);
        assertThat(page.locator("#ways-place h3").first()).hasText("Dieser Plan");
        assertThat(page.locator(".canvas[data-ready=yes]")).isVisible();
        Kitchen.assertAccessible(page);
        Kitchen.assertFits(page);
        page.setViewportSize(320, 640);
        Kitchen.assertFits(page);
        assertThat(languages).isNotEmpty().allMatch("de"::equals);
        kitchen().assertQuiet();
    }

    @Test
    void theSwitchTurnsTheLanguageAndKeepsItAndTheEntries() {
        Page page = kitchen().phone(ColorScheme.DARK);
        page.navigate(kitchen().address());
        assertThat(page.locator("html")).hasAttribute("data-ready", "yes");
        assertThat(page.locator("html")).hasAttribute("lang", "en");
        page.locator("#f-mass").fill("1 1/2 lb");
        page.locator("#f-guests-count").fill("7");
        page.getByLabel("Language").focus();
        page.keyboard().press("ArrowDown");
        assertThat(page.locator("html")).hasAttribute("lang", "de");
        assertThat(page.locator("html")).hasAttribute("data-ready", "yes");
        assertThat(page.getByLabel("Sprache")).hasValue("de");
        assertThat(page.getByLabel("Sprache")).isFocused();
        assertThat(page.locator("#f-mass")).hasValue("1 1/2 lb");
        assertThat(page.locator("#f-guests-count")).hasValue("7");
        page.reload();
        assertThat(page.locator("h1")).hasText("Was soll es geben?");
        page.navigate(kitchen().address() + "notebook.html");
        assertThat(page.locator("h1")).hasText("Was haben wir gelernt?");
        assertThat(page.locator("html")).hasAttribute("data-ready", "yes");
        page.getByLabel("Name dieses Garvorgangs").fill("Sonntag");
        page.getByLabel("Sprache").selectOption("en");
        assertThat(page.locator("h1")).hasText("What did we learn?");
        assertThat(page.getByLabel("Name of this cook")).hasValue("Sonntag");
        kitchen().assertQuiet();
    }

    @Test
    void eachPageSpeaksGermanAndFitsAPhone() {
        for (String name : PAGES) {
            Page page = german(320, 640, ColorScheme.LIGHT);
            page.navigate(kitchen().address() + name);
            assertThat(page.locator("html")).hasAttribute("lang", "de");
            assertThat(page.locator("html")).hasAttribute("data-ready", "yes");
            assertThat(page.getByLabel("Sprache")).hasValue("de");
            Kitchen.assertAccessible(page);
            Kitchen.assertFits(page);
            page.context().close();
        }
        kitchen().assertQuiet();
    }

    @Test
    void withoutTheNetworkItIsGermanToo() {
        Page page = german(390, 844, ColorScheme.LIGHT);
        page.navigate(kitchen().address() + Requests.bookmark(Requests.CHOP));
        assertThat(page.locator("#ways-place h3").first()).hasText("Dieser Plan");
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        page.context().setOffline(true);
        page.reload();
        assertThat(page.locator("#offline")).containsText("Kein Netz: Zu sehen ist der letzte Plan");
        assertThat(page.locator("#safety-title")).hasText("Ist es sicher?");
    }
}
