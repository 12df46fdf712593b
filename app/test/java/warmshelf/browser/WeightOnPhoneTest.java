package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How much the pages that members open most ask and say on a phone before anything is unfolded, so that it does not grow again. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WeightOnPhoneTest {
    private static final String WEIGH = """
            () => {
                const asked = [...document.querySelectorAll('main :is(input:not([type=hidden]), select, textarea)')];
                return {
                    fields: asked.filter(field => field.checkVisibility()).length,
                    screens: document.documentElement.scrollHeight / innerHeight,
                    words: document.querySelector('main').innerText.trim().split(/\\s+/).length
                };
            }
            """;

    private static final String IN_VIEW = """
            (what) => {
                const box = document.querySelector(what).getBoundingClientRect();
                const bar = document.querySelector('.foot-nav').getBoundingClientRect();
                return box.height > 0 && box.top >= 0 && box.bottom <= (bar.height > 0 ? bar.top : innerHeight);
            }
            """;

    private SpringGroup spring;
    private Chromium chromium;
    private Page phone;

    @BeforeAll
    void open() {
        chromium = Chromium.open();
        spring = SpringGroup.open();
        phone = chromium.on(Screen.PHONE, spring.group(), spring.group().member())
                .newPage();
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

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "/ask, 1, 2, 220",
        "/ask?lot=new&crop=tomato, 6, 2, 140",
        "/frost, 0, 2.5, 220",
        "/sowings, 0, 3, 400",
        "/settings/known, 0, 2.5, 200",
        "/seeds, 1, 4, 700",
        "/crops, 1, 4, 500"
    })
    void a_page_asks_and_says_no_more_than_this(String path, int fields, double screens, int words) {
        phone.navigate(Chromium.address(spring.group()) + path);

        Map<?, ?> weight = (Map<?, ?>) phone.evaluate(WEIGH);

        assertThat(number(weight, "fields")).as("fields").isLessThanOrEqualTo(fields);
        assertThat(number(weight, "screens")).as("screens").isLessThanOrEqualTo(screens);
        assertThat(number(weight, "words")).as("words").isLessThanOrEqualTo(words);
    }

    @Test
    void a_sowings_page_says_no_more_than_this() {
        phone.navigate(Chromium.address(spring.group()) + "/sowings/" + spring.onTheMat);

        Map<?, ?> weight = (Map<?, ?>) phone.evaluate(WEIGH);

        assertThat(number(weight, "fields")).as("fields").isZero();
        assertThat(number(weight, "screens")).as("screens").isLessThanOrEqualTo(4.5);
        assertThat(number(weight, "words")).as("words").isLessThanOrEqualTo(550);
    }

    @ParameterizedTest
    @EnumSource(names = {"PHONE", "DESKTOP"})
    void a_sowings_first_screenful_holds_what_is_next_where_it_lies_and_the_next_press(Screen screen) {
        Page page = chromium.on(screen, spring.group(), spring.group().member()).newPage();
        page.navigate(Chromium.address(spring.group()) + "/sowings/" + spring.onTheMat);

        assertThat((Boolean) page.evaluate(IN_VIEW, ".lead")).as("what is next").isTrue();
        assertThat((Boolean) page.evaluate(IN_VIEW, ".lead + p"))
                .as("where it lies")
                .isTrue();
        assertThat((Boolean) page.evaluate(IN_VIEW, "main a.button[href$='/entry']"))
                .as("the next press")
                .isTrue();
    }

    private static double number(Map<?, ?> weight, String of) {
        return ((Number) java.util.Objects.requireNonNull(weight.get(of))).doubleValue();
    }

    @Test
    void a_coordinators_navigation_has_eight_entries_at_most() {
        Page desk = chromium.on(Screen.DESKTOP, spring.group(), spring.group().coordinator())
                .newPage();
        desk.navigate(Chromium.address(spring.group()) + "/seeds");

        assertThat(desk.locator(".head__nav a:visible").count()).isBetween(5, 8);
    }

    @Test
    void the_phones_menu_leads_a_member_to_duty_and_their_days() {
        phone.navigate(Chromium.address(spring.group()) + "/seeds");
        phone.locator(".foot-nav summary").click();

        assertThat(phone.locator(".foot-nav__more").innerText()).contains("Duty", "My days", "Frost", "Sign out");
    }
}
