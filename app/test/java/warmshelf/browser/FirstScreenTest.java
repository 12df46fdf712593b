package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds the first screenful of each main page against a picture of how it was designed: the mean colour of each block of
 * {@value #BLOCK} pixels, so that other edges of letters do not matter, but a button that leaves the screen does. With
 * {@code -Dwarmshelf.screens=write} the pictures are made anew.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FirstScreenTest {
    private static final int BLOCK = 20;
    /** So much a block's red, green or blue may differ, of 255. */
    private static final int TOLERANCE = 36;
    /** So many blocks of a screen may differ more than that. A main button on a phone is 5 in 100. */
    private static final double SHARE = 0.03;

    private static final Path KEPT = Path.of("app", "test", "resources", "screens");
    private static final Path SEEN = Path.of("target", "screens");
    /** One font of every machine: others are of other widths. Nothing moves while it is looked at. */
    private static final String PLAIN =
            "* { font-family: 'DejaVu Sans' !important; transition: none !important; animation: none !important; "
                    + "caret-color: transparent !important; }";

    private SpringGroup spring;
    private Chromium chromium;

    @BeforeAll
    void open() {
        chromium = Chromium.open();
        spring = SpringGroup.open();
    }

    @AfterAll
    void close() {
        // null where the browser is missing and the test is skipped
        if (chromium != null) {
            chromium.close();
        }
        if (spring != null) {
            spring.close();
        }
    }

    @ParameterizedTest(name = "{0} on {1}")
    @CsvSource({
        "today, PHONE, /today?show=mine",
        "today, DESKTOP, /today?show=mine",
        "round, PHONE, /today?show=one",
        "ask, PHONE, /ask",
        "ask, DESKTOP, /ask",
        "plants, PHONE, /ask?lot=new&crop=tomato",
        "sowings, PHONE, /sowings",
        "sowings, DESKTOP, /sowings",
        "seeds, PHONE, /seeds",
        "frost, PHONE, /frost",
        "racks, PHONE, /racks",
        "racks, DESKTOP, /racks"
    })
    void the_first_screenful_is_as_it_was_designed_by_day_and_by_night(String name, Screen screen, String path)
            throws IOException {
        Page page = chromium.plainly(screen, spring.group(), spring.group().member())
                .newPage();
        page.navigate(Chromium.address(spring.group()) + path);
        page.addStyleTag(new Page.AddStyleTagOptions().setContent(PLAIN));
        for (ColorScheme scheme : new ColorScheme[] {ColorScheme.LIGHT, ColorScheme.DARK}) {
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
            String picture =
                    "%s-%d-%s.png".formatted(name, screen.width(), scheme == ColorScheme.DARK ? "dark" : "light");
            compare(picture, blocks(page.screenshot()));
        }
    }

    private static void compare(String name, BufferedImage seen) throws IOException {
        if ("write".equals(System.getProperty("warmshelf.screens"))) {
            write(KEPT, name, seen);
            return;
        }
        BufferedImage kept = kept(name);
        assertThat(seen.getWidth()).as("width of " + name).isEqualTo(kept.getWidth());
        int other = 0;
        for (int y = 0; y < kept.getHeight(); y++) {
            for (int x = 0; x < kept.getWidth(); x++) {
                other += isOther(new Color(kept.getRGB(x, y)), new Color(seen.getRGB(x, y))) ? 1 : 0;
            }
        }
        double share = other / (double) (kept.getWidth() * kept.getHeight());
        if (share > SHARE) {
            write(SEEN, name, seen);
        }
        assertThat(share)
                .as("blocks of %s that look otherwise; as it is now: %s", name, SEEN.resolve(name))
                .isLessThanOrEqualTo(SHARE);
    }

    private static boolean isOther(Color one, Color another) {
        return Math.abs(one.getRed() - another.getRed()) > TOLERANCE
                || Math.abs(one.getGreen() - another.getGreen()) > TOLERANCE
                || Math.abs(one.getBlue() - another.getBlue()) > TOLERANCE;
    }

    private static BufferedImage kept(String name) throws IOException {
        try (InputStream file = FirstScreenTest.class.getResourceAsStream("/screens/" + name)) {
            return ImageIO.read(Objects.requireNonNull(file, name));
        }
    }

    private static void write(Path folder, String name, BufferedImage picture) throws IOException {
        Files.createDirectories(folder);
        ImageIO.write(picture, "png", folder.resolve(name).toFile());
    }

    /** The mean colour of each block; what is left over at the edges is left out. */
    private static BufferedImage blocks(byte[] png) throws IOException {
        BufferedImage whole = ImageIO.read(new ByteArrayInputStream(png));
        BufferedImage blocks =
                new BufferedImage(whole.getWidth() / BLOCK, whole.getHeight() / BLOCK, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < blocks.getHeight(); y++) {
            for (int x = 0; x < blocks.getWidth(); x++) {
                blocks.setRGB(x, y, mean(whole, x * BLOCK, y * BLOCK));
            }
        }
        return blocks;
    }

    private static int mean(BufferedImage whole, int left, int top) {
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int y = top; y < top + BLOCK; y++) {
            for (int x = left; x < left + BLOCK; x++) {
                Color colour = new Color(whole.getRGB(x, y));
                red += colour.getRed();
                green += colour.getGreen();
                blue += colour.getBlue();
            }
        }
        int of = BLOCK * BLOCK;
        return new Color((int) (red / of), (int) (green / of), (int) (blue / of)).getRGB();
    }
}
