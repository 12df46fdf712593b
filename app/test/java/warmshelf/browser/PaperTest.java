package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.STAY;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Margin;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;

/** Sheets as Chromium prints them, and the round of a week from the sheet to the entries. */
class PaperTest {
    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page[^s]");
    private static final Pattern BOX = Pattern.compile("/MediaBox\\s*\\[\\s*0 0 ([\\d.]+) ([\\d.]+)\\s*]");

    private Cellar cellar;
    private String sowing;
    private LocalDate monday;

    @BeforeEach
    void sowAndGoToTheNextSunday() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        LocalDate begins =
                cellar.group().database().sql().fetchValue(STAY.FROM_DAY, STAY.SOWING_ID.eq(UUID.fromString(sowing)));
        goTo(begins);
        cellar.group()
                .signedIn(cellar.group().member())
                .post("/sowings/" + sowing + "/entries", Map.of("step", "sown"));
        monday = begins.with(java.time.temporal.TemporalAdjusters.next(java.time.DayOfWeek.MONDAY));
        goTo(monday.plusDays(6));
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    private void goTo(LocalDate day) {
        cellar.group().clock().set(day.plusDays(1).atTime(1, 0).toInstant(ZoneOffset.UTC));
    }

    // A4 is 210 by 297 mm (ISO 216), Letter 8.5 by 11 inches (ANSI/ASME Y14.1); a point is 1/72 inch.
    @ParameterizedTest
    @CsvSource({
        "/paper/round, A4, 595.3, 841.9, 2",
        "/paper/round, Letter, 612, 792, 2",
        "/paper/racks, A4, 595.3, 841.9, 2",
        "/paper/season, Letter, 612, 792, 1",
        "/paper/poster, A4, 595.3, 841.9, 1"
    })
    void a_sheet_fits_its_paper(String sheet, String paper, double width, double height, int mostPages) {
        try (Chromium chromium = Chromium.open()) {
            Page page = page(chromium);
            page.navigate(Chromium.address(cellar.group()) + sheet);
            String pdf = new String(
                    page.pdf(new Page.PdfOptions()
                            .setFormat(paper)
                            .setMargin(new Margin()
                                    .setTop("10mm")
                                    .setBottom("10mm")
                                    .setLeft("10mm")
                                    .setRight("10mm"))),
                    StandardCharsets.ISO_8859_1);

            assertThat(PAGE.matcher(pdf).results().count()).isBetween(1L, (long) mostPages);
            Matcher box = BOX.matcher(pdf);
            assertThat(box.find()).isTrue();
            assertThat(Double.parseDouble(box.group(1))).isBetween(width - 1.5, width + 1.5);
            assertThat(Double.parseDouble(box.group(2))).isBetween(height - 1.5, height + 1.5);
            assertThat(widest(page)).as("nothing is cut off at the right edge").isLessThanOrEqualTo(1);
        }
    }

    /** How far the sheet's tables stick out of the width of A4 within its margins, in CSS pixels. */
    private static int widest(Page page) {
        page.setViewportSize(718, 1000);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
        return (int) page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
    }

    @Test
    void what_is_written_into_the_boxes_of_the_sheet_comes_out_as_entries_with_the_keyboard_alone() {
        try (Chromium chromium = Chromium.open()) {
            Page page = page(chromium);
            page.navigate(Chromium.address(cellar.group()) + "/paper/round?day=" + monday);
            List<String> printed = page.locator("td strong").allInnerTexts();

            page.navigate(Chromium.address(cellar.group()) + "/paper/round/typing?day=" + monday);
            assertThat(page.locator("td strong").allInnerTexts())
                    .isEqualTo(printed)
                    .hasSize(1);
            Locator first = page.locator("input[name='s/" + sowing + "/" + monday + "']");
            first.focus();
            for (String written : List.of("n", "2", "2 dry", "", "5", "x", "7")) {
                page.keyboard().type(written);
                page.keyboard().press("Tab");
            }
            page.keyboard().press("Enter");
            page.waitForSelector(".notice");

            assertThat(page.locator(".notice").innerText()).contains("6 entries were kept.");
            assertThat(cellar.group()
                            .database()
                            .sql()
                            .select(ENTRY.SPROUTED)
                            .from(ENTRY)
                            .where(ENTRY.SOWING_ID.eq(UUID.fromString(sowing)), ENTRY.STEP.eq("look"))
                            .orderBy(ENTRY.SEEN_ON)
                            .fetch(ENTRY.SPROUTED))
                    .containsExactly(0, 2, 2, 5, 5, 7);
        }
    }

    private Page page(Chromium chromium) {
        return chromium.on(Screen.DESKTOP, cellar.group(), cellar.group().member())
                .newPage();
    }
}
