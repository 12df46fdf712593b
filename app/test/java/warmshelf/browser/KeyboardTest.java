package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The pages without a mouse. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KeyboardTest {
    private static final int MOST_STOPS = 160;
    private static final String FOCUSED = """
        () => { const e = document.activeElement, box = e.getBoundingClientRect(), style = getComputedStyle(e);
          return { words: e.textContent.trim().replace(/\\s+/g, ' '), id: e.id, body: e === document.body,
            outlined: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2,
            seen: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth }; }
        """;

    private Chromium chromium;
    private SpringGroup spring;
    private Page page;

    @BeforeAll
    void start() {
        chromium = Chromium.open();
        spring = SpringGroup.open();
        page = chromium.on(Screen.DESKTOP, spring.group(), spring.group().member())
                .newPage();
    }

    @AfterAll
    void stop() {
        if (spring != null) {
            spring.close();
        }
        if (chromium != null) {
            chromium.close();
        }
    }

    @Test
    void the_first_stop_leads_past_the_navigation_to_the_page() {
        open("/today?show=mine");

        page.keyboard().press("Tab");
        assertThat(focused()).containsEntry("words", "Skip to the page").containsEntry("seen", true);

        page.keyboard().press("Enter");
        PlaywrightAssertions.assertThat(page.locator("#main")).isFocused();
    }

    @Test
    void the_navigation_is_walked_with_tab_and_enter() {
        open("/today?show=mine");

        tabTo("Racks");
        page.keyboard().press("Enter");

        page.waitForURL("**/racks");
        PlaywrightAssertions.assertThat(page.locator("h1")).containsText("Racks on");
    }

    @Test
    void nothing_yet_is_ticked_with_tab_and_enter() {
        open("/today?show=mine");

        tabTo("Nothing new");
        page.keyboard().press("Enter");

        PlaywrightAssertions.assertThat(page.locator("main"))
                .containsText(Pattern.compile("Looked at today\\s+by Tom: 3 so far"));
    }

    @Test
    void every_stop_of_the_round_is_in_sight_and_outlined() {
        open("/today?show=all");

        int stops = 0;
        for (Map<?, ?> stop = next(); !Boolean.TRUE.equals(stop.get("body")) && stops < MOST_STOPS; stop = next()) {
            stops++;
            assertThat(stop.get("outlined"))
                    .as("outline of '%s'", stop.get("words"))
                    .isEqualTo(true);
            assertThat(stop.get("seen")).as("'%s' in sight", stop.get("words")).isEqualTo(true);
        }

        assertThat(stops).isBetween(20, MOST_STOPS - 1);
    }

    @Test
    void a_refused_form_starts_at_its_problems_and_each_leads_to_its_field() {
        open("/ask/plan?lot=new&plants=none&crop=");
        assertThat(focused()).containsEntry("id", "problems");

        page.keyboard().press("Tab");
        page.keyboard().press("Enter");

        PlaywrightAssertions.assertThat(page.locator("#field-crop")).isFocused();
    }

    @Test
    void every_problem_in_a_summary_names_a_field_that_is_there() {
        for (String path : List.of("/ask/plan?lot=new&plants=none&crop=", "/frost?country=US&postcode=55899")) {
            open(path);
            List<?> dead = (List<?>) page.evaluate("() => [...document.querySelectorAll('.problems a')]"
                    + ".map(link => link.hash).filter(hash => !document.querySelector('main form ' + hash))");
            assertThat(page.locator(".problems a").count()).as(path).isPositive();
            assertThat(dead).as(path).isEmpty();
        }
    }

    private void open(String path) {
        page.navigate(Chromium.address(spring.group()) + path);
    }

    private void tabTo(String words) {
        for (int stop = 0; stop < MOST_STOPS; stop++) {
            if (String.valueOf(next().get("words")).startsWith(words)) {
                return;
            }
        }
        throw new AssertionError("Tab never came to '" + words + "'");
    }

    private Map<?, ?> next() {
        page.keyboard().press("Tab");
        return (Map<?, ?>) page.evaluate(FOCUSED);
    }

    @SuppressWarnings("unchecked") // what a script answers has no static type
    private Map<String, Object> focused() {
        return (Map<String, Object>) page.evaluate(FOCUSED);
    }
}
