package warmshelf.bench;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.Cookie;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * How long a phone takes until the whole round can be ticked: from the press on the link until the scripts have shown what is
 * kept, at the machine's own pace and slowed down four times by Chromium itself. Needs Chromium.
 */
public final class PhoneBench {
    private static final int VISITS = 7;
    private static final String CHROMIUM = "WARMSHELF_CHROMIUM";
    private static final String NOTE_WHEN_SHOWN = """
            addEventListener('DOMContentLoaded', () => document.getElementById('round')?.addEventListener(
              'round-shown', () => { window.shownAt ??= performance.now(); }));
            """;

    private PhoneBench() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("warmshelf-phone-bench");
        BenchGroup group = BenchGroup.moveInto(folder, LocalDate.now(BenchGroup.ZONE));
        System.out.println("A group of " + group.words());
        try (BenchProcess server = BenchProcess.application(folder);
                Playwright playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
                Browser chromium = playwright.chromium().launch(options())) {
            double own = median(chromium, server.port(), group.onDutySession(), 1);
            double slowed = median(chromium, server.port(), group.onDutySession(), 4);
            System.out.printf("Today, the whole round, can be ticked after %12.0f ms%n", own);
            System.out.printf("  slowed down four times %28.0f ms   aim: under 1,000 ms%n", slowed);
            System.out.printf("  ratio %45.1f%n", slowed / own);
        }
    }

    private static BrowserType.LaunchOptions options() {
        String named = System.getenv(CHROMIUM);
        return new BrowserType.LaunchOptions()
                .setExecutablePath(Path.of(named == null ? "/usr/bin/chromium" : named))
                .setArgs(List.of("--no-sandbox", "--disable-gpu"));
    }

    /** The first visit fetches everything and is not counted. */
    private static double median(Browser chromium, int port, String session, int slowDown) {
        String address = "http://127.0.0.1:" + port;
        List<Double> times = new ArrayList<>();
        try (BrowserContext phone = chromium.newContext(new Browser.NewContextOptions().setViewportSize(390, 844))) {
            phone.addCookies(List.of(new Cookie("warmshelf", session).setUrl(address)));
            phone.addInitScript(NOTE_WHEN_SHOWN);
            for (int visit = 0; visit <= VISITS; visit++) {
                try (Page page = phone.newPage()) {
                    CDPSession pace = phone.newCDPSession(page);
                    JsonObject rate = new JsonObject();
                    rate.addProperty("rate", slowDown);
                    pace.send("Emulation.setCPUThrottlingRate", rate);
                    page.navigate(address + "/today");
                    page.waitForFunction("() => window.shownAt");
                    if (visit > 0) {
                        times.add(((Number) page.evaluate("() => window.shownAt")).doubleValue());
                    }
                }
            }
        }
        Collections.sort(times);
        return times.get(VISITS / 2);
    }
}
