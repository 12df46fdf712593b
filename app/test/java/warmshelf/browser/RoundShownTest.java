package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.browser.RoundPage.count;
import static warmshelf.browser.RoundPage.item;
import static warmshelf.browser.RoundPage.opened;
import static warmshelf.browser.RoundPage.status;
import static warmshelf.db.generated.Tables.SOWING;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What of the round is on the screen while it is walked. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoundShownTest {
    private Chromium chromium;
    private PhoneRound round;
    private BrowserContext phone;

    @BeforeAll
    void start() {
        chromium = Chromium.open();
    }

    @AfterAll
    void stop() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @BeforeEach
    void takeThePhone() {
        round = PhoneRound.of(4);
        phone = round.phone(chromium, round.tom());
    }

    @AfterEach
    void putItAway() {
        phone.close();
        round.close();
    }

    @Test
    void what_to_do_is_shown_at_the_check_and_folded_away_again() {
        Page page = opened(phone, round);
        Locator how = item(page, round, 2).locator(".round__how");

        how.click();
        assertThat(how).hasAttribute("aria-expanded", "true");
        assertThat(item(page, round, 2).locator(".round__told"))
                .containsText("Stems fallen: take the tray off the shelf");

        how.click();
        assertThat(item(page, round, 2).locator(".round__told")).hasCount(0);
    }

    @Test
    void what_stands_folded_at_the_end_of_a_long_round_is_unfolded_and_ticked_like_the_rest() {
        Page page = phone.newPage();
        page.route("**/today", RoundShownTest::longRound);
        page.navigate(round.address() + "/today");

        assertThat(page.locator("li.round__item")).hasCount(4);
        assertThat(page.locator("noscript.round__rest, #round-rest")).hasCount(0);
        item(page, round, 4).locator("button[aria-label^='One more']").click();
        item(page, round, 4).locator("button[type=submit]:not([name])").click();

        assertThat(item(page, round, 4)).containsText("Sent: 1 so far");
        assertThat(round.counts(4)).containsExactly(1);
    }

    @Test
    void one_thing_at_a_time_counts_what_is_folded_as_well() {
        Page page = phone.newPage();
        page.route("**/today", RoundShownTest::longRound);
        page.navigate(round.address() + "/today");

        page.locator("#round-view").click();

        assertThat(page.locator(".round__bar")).containsText("1 of 4");
    }

    @Test
    void a_tick_for_a_sowing_that_is_gone_from_the_round_is_shown_above_it() {
        Page page = opened(phone, round);
        round.stop();
        count(page, round, 1, "5");
        round.group()
                .database()
                .sql()
                .update(SOWING)
                .set(SOWING.STAGE, "withdrawn")
                .where(SOWING.ID.eq(round.sowing(1)))
                .execute();
        round.start();

        page.reload();

        assertThat(page.locator("#round-elsewhere")).containsText("Row 01, 5 so far");
        assertThat(page.locator("#round-elsewhere")).containsText("has ended (withdrawn)");
    }

    @Test
    void what_is_asked_about_a_whole_shelf_stands_until_it_is_answered_whatever_is_drawn_meanwhile() {
        Page page = opened(phone, round);
        page.locator(".round__all button").click();
        Locator yes = page.locator(".round__all button").first();
        assertThat(yes).hasText("Yes, nothing yet at all 4");

        page.evaluate("() => document.getElementById('round').dispatchEvent(new Event('round-shown'))");

        assertThat(yes).hasText("Yes, nothing yet at all 4");
        assertThat(yes).isFocused();
        count(page, round, 2, "1");
        assertThat(yes).hasText("Yes, nothing yet at all 3");
    }

    @Test
    void one_thing_is_on_the_screen_for_those_who_like_it_so_and_it_is_remembered() {
        Page page = opened(phone, round);
        page.locator("#round-view").click();
        assertThat(page.locator(".round__item:visible")).hasCount(1);
        assertThat(page.locator(".round__bar")).containsText("1 of 4");

        item(page, round, 1).locator("button[name=nothing]").click();
        assertThat(page.locator(".round__bar")).containsText("2 of 4");
        assertThat(page.locator(".round__bar + p")).containsText("Row 01: nothing yet.");
        page.reload();

        assertThat(page.locator(".round__item:visible")).hasCount(1);
        assertThat(item(page, round, 2)).isVisible();
        page.locator(".round__bar button").click();
        assertThat(page.locator(".round__item:visible")).hasCount(4);
    }

    @Test
    void the_card_before_comes_back_when_its_tick_is_taken_back() {
        Page page = opened(phone, round);
        page.locator("#round-view").click();
        item(page, round, 1).locator("button[aria-label^='One more']").click();
        assertThat(item(page, round, 1).locator("button[name=nothing]")).isHidden();
        item(page, round, 1).locator("button:has-text('Keep 1 up')").click();
        assertThat(page.locator(".round__bar")).containsText("2 of 4");
        assertThat(status(page)).containsText("All sent");

        page.locator(".round__bar + p button").click();

        assertThat(page.locator(".round__bar")).containsText("1 of 4");
        assertThat(item(page, round, 1)).containsText("taken back: 1 so far");
        assertThat(item(page, round, 1).locator("button[name=nothing]")).isVisible();
    }

    @Test
    void whoever_looks_today_opens_the_round_as_cards_with_the_main_button_whole_and_in_view() {
        round.look(round.tom());
        Page page = opened(phone, round);

        assertThat(page.locator(".round__item:visible")).hasCount(1);
        assertThat(page.locator("h1")).isHidden();
        for (int card = 1; card <= 4; card++) {
            assertThat(page.locator(".round__bar")).containsText(card + " of 4");
            Locator main = item(page, round, card).locator("button[name=nothing]");
            assertThat((Boolean) main.evaluate("""
                    button => {
                        const box = button.getBoundingClientRect();
                        const middle = box.left + box.width / 2;
                        return box.top >= 0 && box.bottom <= innerHeight && box.height >= 48
                            && [box.top + 2, box.bottom - 2].every(y => button.contains(document.elementFromPoint(middle, y)));
                    }
                    """)).isTrue();
            page.locator(".round__steps button").last().click();
        }
    }

    @Test
    void a_look_that_found_something_does_not_come_back_beside_the_move() {
        Page page = opened(phone, round);
        count(page, round, 1, "3");
        assertThat(item(page, round, 1)).containsText("Sent: 3 so far");

        assertThat(item(page, round, 1)).containsText("3 are up. Seedlings want light now");
        assertThat(item(page, round, 1).locator("button[name=nothing]")).hasCount(0);
        page.reload();
        assertThat(item(page, round, 1)).containsText("Looked at today");
        assertThat(item(page, round, 1).locator("button[name=nothing]")).hasCount(0);
        assertThat(page.locator("#round-count")).hasText("4 to do, 0 done");
    }

    @Test
    void waiting_sent_and_refused_ticks_break_no_accessibility_rule_and_fit_with_letters_of_twice_the_size() {
        Page page = opened(phone, round);
        count(page, round, 1, "99");
        count(page, round, 2, "2");
        assertThat(item(page, round, 2)).containsText("Sent");
        assertThat(item(page, round, 1)).containsText("Not taken");
        round.stop();
        count(page, round, 3, "1");
        assertThat(status(page)).containsText("1 kept on this phone");
        item(page, round, 4).locator(".round__more").click();

        assertThat(new AxeBuilder(page)
                        .setLegacyMode(true)
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                        .analyze()
                        .getViolations())
                .isEmpty();
        assertThat((List<?>) page.evaluate("() => [...document.querySelectorAll('.round button')].filter(e =>"
                        + " e.offsetParent && (e.offsetHeight < 48 || e.offsetWidth < 48)).map(e => e.outerHTML)"))
                .isEmpty();
        page.evaluate("() => { document.documentElement.style.fontSize = '200%'; }");
        assertThat(page.evaluate("() => document.scrollingElement.scrollWidth")).isEqualTo(Screen.PHONE.width());
    }

    @Test
    void the_round_is_ticked_with_keys_alone() {
        Page page = opened(phone, round);
        item(page, round, 1).locator("button[name=nothing]").focus();
        page.keyboard().press("Enter");
        assertThat(item(page, round, 1).locator(".round__kept")).isFocused();

        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");

        assertThat(item(page, round, 2)).isFocused();
    }

    /** The page as it comes when there are many shelves: those that come last stand in noscript. */
    private static void longRound(Route route) {
        APIResponse page = route.fetch();
        String folded = page.text()
                .replace(
                        "<ol class=\"round__list\">",
                        "<p id=\"round-rest\">More shelves follow.</p>"
                                + "<noscript class=\"round__rest\"><ol class=\"round__list\">")
                .replace("</ol>", "</ol></noscript>");
        route.fulfill(new Route.FulfillOptions().setResponse(page).setBody(folded));
    }
}
