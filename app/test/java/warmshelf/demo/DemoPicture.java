package warmshelf.demo;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.check.TodayStore;
import warmshelf.db.Audit;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestDatabase;

/** Makes the README's picture of the main screens from the demo group, on one and the same day each time. Needs Chromium. */
public final class DemoPicture {
    private static final Path PICTURE = Path.of("demo", "screens.webp");
    private static final Instant DAY = Instant.parse("2027-05-08T17:00:00Z");
    private static final String CHROMIUM = "WARMSHELF_CHROMIUM";
    private static final int MEMBER = 0;
    private static final int COORDINATOR = 1;
    private static final int ON_DUTY = 2;

    /** Draws the shots side by side at one height, each in a thin frame, and gives the whole as WebP. */
    private static final String SIDE_BY_SIDE = """
            async shots => {
              const gap = 16, height = 640;
              const images = await Promise.all(shots.map(async shot => {
                const image = new Image();
                image.src = 'data:image/png;base64,' + shot;
                await image.decode();
                return image;
              }));
              const widths = images.map(image => Math.round(image.width * height / image.height));
              const canvas = document.createElement('canvas');
              canvas.width = widths.reduce((sum, width) => sum + width + gap, gap);
              canvas.height = height + 2 * gap;
              const pen = canvas.getContext('2d');
              pen.imageSmoothingQuality = 'high';
              let x = gap;
              images.forEach((image, i) => {
                pen.drawImage(image, x, gap, widths[i], height);
                pen.strokeStyle = '#777';
                pen.strokeRect(x - 0.5, gap - 0.5, widths[i] + 1, height + 1);
                x += widths[i] + gap;
              });
              return canvas.toDataURL('image/webp', 0.8).split(',')[1];
            }
            """;

    private DemoPicture() {}

    public static void main(String[] arguments) throws IOException {
        try (TestDatabase place = TestDatabase.h2();
                Playwright playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
                Browser chromium = playwright.chromium().launch(options())) {
            DemoGroup.fill(place.database(), DAY);
            MutableClock clock = new MutableClock(DAY);
            Audit audit = new Audit(clock);
            try (Server server = Server.start(Settings.onFreePort(Path.of("unused")), place.database(), clock)) {
                String address = "http://127.0.0.1:" + server.port();
                LocalDate today = LocalDate.ofInstant(DAY, ZoneOffset.UTC);
                List<String> links = new DemoLinks(
                                new MemberStore(place.database(), audit), new LinkStore(place.database(), audit))
                        .make(new TodayStore(place.database()).onDuty(today)).stream()
                                .map(link -> address + link.path())
                                .toList();
                List<String> shots = List.of(
                        shot(chromium, 1280, 844, links.get(COORDINATOR), address + "/racks"),
                        shot(chromium, 390, 844, links.get(ON_DUTY), address + "/today"),
                        shot(chromium, 390, 844, links.get(MEMBER), address + "/sowings"));
                Page page = chromium.newPage();
                byte[] picture = Base64.getDecoder().decode((String) page.evaluate(SIDE_BY_SIDE, shots));
                Files.write(PICTURE, picture);
                System.out.printf("%s, %,d bytes%n", PICTURE, picture.length);
            }
        }
    }

    private static BrowserType.LaunchOptions options() {
        String named = System.getenv(CHROMIUM);
        return new BrowserType.LaunchOptions()
                .setExecutablePath(Path.of(named == null ? "/usr/bin/chromium" : named))
                .setArgs(List.of("--no-sandbox", "--disable-gpu"));
    }

    private static String shot(Browser chromium, int width, int height, String link, String address) {
        try (BrowserContext screen =
                chromium.newContext(new Browser.NewContextOptions().setViewportSize(width, height))) {
            Page page = screen.newPage();
            page.navigate(link);
            page.locator("main form button").first().click();
            page.navigate(address);
            page.waitForTimeout(500);
            return Base64.getEncoder().encodeToString(page.screenshot());
        }
    }
}
