package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

/**
 * Every page of a group in spring, looked at on a phone and on a desktop. The accessibility rules are those of the
 * checker axe-core for WCAG 2.0, 2.1 and 2.2, levels A and AA.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryPageTest {
    private final Findings findings = new Findings();

    @BeforeAll
    void walk() {
        try (Chromium chromium = Chromium.open();
                SpringGroup spring = SpringGroup.open();
                TestGroup unopened = TestGroup.unopened();
                TestGroup bare = TestGroup.open()) {
            walk(chromium, spring);
            Page stranger = chromium.on(Screen.PHONE, true).newPage();
            look(stranger, "open", unopened, unopened.openingPath().orElseThrow());
            Page coordinator =
                    chromium.on(Screen.PHONE, bare, bare.coordinator()).newPage();
            for (String path : new String[] {"/sites", "/racks", "/weeks", "/seeds", "/duty", "/requests"}) {
                look(coordinator, "a bare group's " + path, bare, path);
            }
        }
    }

    private void walk(Chromium chromium, SpringGroup spring) {
        Map<String, Page> pages = new HashMap<>();
        for (PageVisit visit : new SpringPages(spring).all()) {
            Person visitor = visit.visitor();
            Page page = visitor == null
                    ? pages.computeIfAbsent(
                            "", nobody -> chromium.on(Screen.PHONE, true).newPage())
                    : pages.computeIfAbsent(
                            visitor.name(),
                            name -> chromium.on(Screen.PHONE, spring.group(), visitor)
                                    .newPage());
            look(page, visit.name(), spring.group(), visit.path());
        }
    }

    private void look(Page page, String name, TestGroup group, String path) {
        findings.look(page, name, Chromium.address(group) + path);
    }

    @Test
    void no_page_breaks_an_accessibility_rule_by_day_or_in_the_dark() {
        assertThat(findings.of("accessibility")).isEmpty();
    }

    @Test
    void no_page_is_scrolled_sideways_at_390_or_320_pixels() {
        assertThat(findings.of("width")).isEmpty();
    }

    @Test
    void no_page_logs_an_error_or_breaks_the_content_policy() {
        assertThat(findings.of("console")).isEmpty();
    }
}
