package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The daily round under a thumb. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TouchTest {
    /** WCAG 2.2, 2.5.8, in CSS pixels; also for links in lines, which the rule would let off. */
    private static final int LEAST = 24;

    /** Our own measure for what is ticked with a wet glove on: WCAG 2.2, 2.5.5 (level AAA), asks for 44. */
    private static final int LEAST_OF_TICKS = 48;

    private static final String SMALLER = """
            ([selector, least]) => [...document.querySelectorAll(selector)]
              .map(e => [e, (e.closest('label.tick') ?? e).getBoundingClientRect()])
              .filter(([e, box]) => e.type !== 'hidden' && e.checkVisibility() && (box.width < least || box.height < least))
              .map(([e, box]) => `${e.textContent.trim() || e.name} is ${box.width} by ${box.height}`)
            """;

    private Chromium chromium;
    private SpringGroup spring;
    private Page page;

    @BeforeAll
    void start() {
        chromium = Chromium.open();
        spring = SpringGroup.open();
        page = chromium.on(Screen.PHONE, spring.group(), spring.group().member())
                .newPage();
        page.addInitScript("localStorage.setItem('warmshelf.round-view', 'list')");
    }

    @BeforeEach
    void open() {
        page.navigate(Chromium.address(spring.group()) + "/today?show=all");
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
    void everything_to_press_on_the_round_can_be_hit() {
        assertThat(smallerThan(LEAST, ".round :is(a, button, input, select, summary), .foot-nav :is(a, summary)"))
                .isEmpty();
    }

    @Test
    void ticks_are_as_large_as_a_thumb() {
        assertThat(page.locator(".round__do button").count()).isGreaterThan(5);
        assertThat(smallerThan(LEAST_OF_TICKS, ".round__do :is(button, input)")).isEmpty();
    }

    @Test
    void the_round_is_usable_with_letters_of_twice_the_size() {
        page.evaluate("() => { document.documentElement.style.fontSize = '200%'; }");

        List<?> outside = (List<?>) page.evaluate("""
                () => [...document.querySelectorAll('main :is(h1, h2, h3, h4, p, label, button, input, select)')]
                  .filter(e => { const box = e.getBoundingClientRect();
                    return box.width > 2 && (box.left < 0 || box.right > innerWidth || (e.tagName === 'BUTTON' && e.scrollWidth > e.clientWidth)); })
                  .map(e => e.outerHTML.slice(0, 120))
                """);

        assertThat(outside).isEmpty();
        assertThat(page.evaluate("() => document.scrollingElement.scrollWidth")).isEqualTo(Screen.PHONE.width());
    }

    private List<?> smallerThan(int least, String selector) {
        return (List<?>) page.evaluate(SMALLER, List.of(selector, least));
    }
}
