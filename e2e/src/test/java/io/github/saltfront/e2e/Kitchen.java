package io.github.saltfront.e2e;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import io.github.saltfront.app.follow.CookRegistry;
import io.github.saltfront.app.follow.FollowSettings;
import io.github.saltfront.app.web.WebOptions;
import io.github.saltfront.app.web.WebServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** A running program and a browser before it. */
final class Kitchen implements AutoCloseable {
    private static final double PATIENCE_MS = 60_000;

    private final WebServer server;
    private final Playwright playwright;
    private final Browser browser;
    private final List<String> complaints = new ArrayList<>();

    private Kitchen(WebServer server, Playwright playwright, Browser browser) {
        this.server = server;
        this.playwright = playwright;
        this.browser = browser;
    }

    static boolean hasBrowser() {
        return chromium().isPresent();
    }

    private static java.util.Optional<Path> chromium() {
        return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    static Kitchen open(Path data) {
        // small ensembles: what is looked at here is the page
        FollowSettings following = new FollowSettings(50, 1000, 180_000, "test");
        WebServer server = WebServer.start(new WebOptions(0, false, data, "test"), following);
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium().orElseThrow()));
        return new Kitchen(server, playwright, browser);
    }

    /** Opens one, or skips the tests where there is no browser and none is demanded. */
    static Kitchen openOrSkip(Path data) {
        boolean required = Objects.equals(System.getenv("SALTFRONT_BROWSER_TESTS"), "required");
        assumeTrue(required || hasBrowser(), "Chromium is not installed; .ci/run installs it");
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        return open(data);
    }

    String address() {
        return server.address();
    }

    CookRegistry cooks() {
        return server.cooks();
    }

    Page phone(ColorScheme scheme) {
        return page(390, 844, scheme);
    }

    Page desk(ColorScheme scheme) {
        return page(1440, 900, scheme);
    }

    Page page(int width, int height, ColorScheme scheme) {
        return page(width, height, scheme, "en-US");
    }

    Page page(int width, int height, ColorScheme scheme, String locale) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setColorScheme(scheme)
                .setLocale(locale));
        Page page = context.newPage();
        page.setDefaultTimeout(PATIENCE_MS);
        page.onPageError(complaints::add);
        page.onConsoleMessage(message -> {
            if (message.text().contains("Content Security Policy")
                    || message.text().matches("no (words|slot) .*")) {
                complaints.add(message.text());
            }
        });
        page.onRequest(request -> {
            String url = request.url();
            if (!url.startsWith(server.address()) && !url.startsWith("data:") && !url.startsWith("blob:")) {
                complaints.add("asked another host: " + url);
            }
        });
        return page;
    }

    /** Checks that no script failed, no word was missing, no policy was broken and no other host was asked. */
    void assertQuiet() {
        assertThat(complaints).isEmpty();
    }

    static void assertAccessible(Page page) {
        List<String> broken = new ArrayList<>();
        for (Rule rule : new AxeBuilder(page).analyze().getViolations()) {
            broken.add(rule.getId() + ": " + rule.getNodes().get(0).getTarget() + " "
                    + rule.getNodes().get(0).getFailureSummary());
        }
        assertThat(broken).isEmpty();
    }

    static void assertFits(Page page) {
        assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .isEqualTo(0);
    }

    @Override
    public void close() {
        playwright.close();
        server.close();
    }
}
