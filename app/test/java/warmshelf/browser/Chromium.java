package warmshelf.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.testing.Everything;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

/**
 * A real browser without a window. It is the one named by the system property or environment variable WARMSHELF_CHROMIUM,
 * else the machine's own; a test is skipped as {@link Everything} says where there is none. One browser serves all tests of a run,
 * each with profiles of its own, which go when this is closed; the browser itself goes with the process that drives it.
 */
final class Chromium implements AutoCloseable {
    private static final String NAMED = "WARMSHELF_CHROMIUM";
    private static final List<String> USUAL_PLACES =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");
    private static final List<String> QUIET = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");
    private static final int PATIENCE_MS = 60_000;

    private static @Nullable Browser shared;

    private final Browser browser;
    private final List<BrowserContext> profiles = new ArrayList<>();

    private Chromium(Browser browser) {
        this.browser = browser;
    }

    private static Browser start(Path executable) {
        // an answer may take as long as a press: on a busy machine more than the five seconds that are usual
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(executable)
                        .setArgs(QUIET)
                        .setTimeout(PATIENCE_MS));
    }

    static Chromium open() {
        List<Path> found = Stream.concat(
                        Stream.of(System.getProperty(NAMED), System.getenv(NAMED))
                                .filter(Objects::nonNull),
                        USUAL_PLACES.stream())
                .map(Path::of)
                .filter(Files::isExecutable)
                .toList();
        Everything.require(!found.isEmpty(), "Chromium");
        Browser running = shared;
        if (running == null || !running.isConnected()) {
            running = start(found.get(0));
            shared = running;
        }
        return new Chromium(running);
    }

    /** A fresh profile on a screen, with scripts or without. */
    BrowserContext on(Screen screen, boolean scripts) {
        return kept(browser.newContext(options(screen).setJavaScriptEnabled(scripts)));
    }

    /** A fresh profile on which somebody is signed in already. */
    BrowserContext on(Screen screen, TestGroup group, Person person) {
        return signedIn(on(screen, true), group, person);
    }

    /** The same, where a test may put a style of its own into a page. */
    BrowserContext plainly(Screen screen, TestGroup group, Person person) {
        BrowserContext context = browser.newContext(options(screen).setBypassCSP(true));
        return signedIn(kept(context), group, person);
    }

    private static Browser.NewContextOptions options(Screen screen) {
        return new Browser.NewContextOptions()
                .setViewportSize(screen.width(), screen.height())
                .setHasTouch(screen.touch())
                .setColorScheme(ColorScheme.LIGHT)
                .setLocale("en-US");
    }

    private BrowserContext kept(BrowserContext context) {
        context.setDefaultTimeout(PATIENCE_MS);
        profiles.add(context);
        return context;
    }

    private static BrowserContext signedIn(BrowserContext context, TestGroup group, Person person) {
        String session = Objects.requireNonNull(group.signedIn(person).cookie("warmshelf"));
        context.addCookies(List.of(new Cookie("warmshelf", session).setUrl(address(group))));
        return context;
    }

    static String address(TestGroup group) {
        return "http://127.0.0.1:" + group.server().port();
    }

    @Override
    public void close() {
        profiles.forEach(BrowserContext::close);
    }
}
