package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.browser.RoundPage.allSent;
import static warmshelf.browser.RoundPage.count;
import static warmshelf.browser.RoundPage.item;
import static warmshelf.browser.RoundPage.lines;
import static warmshelf.browser.RoundPage.nothing;
import static warmshelf.browser.RoundPage.opened;
import static warmshelf.browser.RoundPage.pagesKept;
import static warmshelf.browser.RoundPage.status;
import static warmshelf.db.generated.Tables.ENTRY;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Walking the round with one thumb. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoundOnPhoneTest {
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
    void a_count_is_stepped_up_kept_and_taken_back() {
        Page page = opened(phone, round);
        Locator first = item(page, round, 1);
        for (int press = 0; press < 3; press++) {
            first.locator("button[aria-label^='One more']").click();
        }
        first.locator("button[aria-label^='One fewer']").click();
        first.locator("button[type=submit]:not([name])").click();
        assertThat(first).containsText("Sent: 2 so far");
        assertThat(round.counts(1)).containsExactly(2);

        first.locator("[data-act=undo]").click();

        assertThat(first).containsText("Sent: taken back: 2 so far");
        assertThat(first.locator("button[name=nothing]")).isVisible();
        page.navigate(round.address() + "/sowings/" + round.sowing(1));
        assertThat(page.locator(".summary")).containsText("0 up");
    }

    @Test
    void a_round_left_open_overnight_asks_for_the_look_of_the_next_day() {
        Page page = opened(phone, round);
        // the signal is gone before the page hears how the server has it now
        page.route("**/today/items/**", Route::abort);
        Locator nothing = item(page, round, 1).locator("button[name=nothing]");
        nothing.click();
        assertThat(item(page, round, 1)).containsText("Sent: nothing yet");
        assertThat(nothing).isHidden();

        page.clock().setFixedTime(Instant.now().plus(Duration.ofDays(1)).toEpochMilli());
        page.evaluate("document.dispatchEvent(new Event('visibilitychange'))");

        assertThat(nothing).isVisible();
    }

    @Test
    void what_was_not_sent_yet_is_taken_back_without_a_trace() {
        Page page = opened(phone, round);
        round.stop();
        count(page, round, 1, "5");
        item(page, round, 1).locator("[data-act=undo]").click();

        assertThat(lines(page, round, 1)).hasCount(0);
        assertThat(status(page)).containsText("The server cannot be reached: what you tick is kept on this phone.");
        assertThat(item(page, round, 1).locator("button[name=nothing]")).isVisible();
        round.start();
        page.reload();
        allSent(page, round, 0);
    }

    @Test
    void a_refusal_stays_with_its_sentence_until_it_is_changed_or_thrown_away() {
        Page page = opened(phone, round);
        count(page, round, 1, "99");
        count(page, round, 2, "98");
        Locator refused = item(page, round, 1).locator(".round__kept--refused");
        assertThat(refused).containsText("Sprouted so far was '99'; a whole number from 0 to 12 is accepted.");
        page.reload();
        assertThat(refused).containsText("99 so far");
        assertThat(status(page)).containsText("2 not taken: see below.");

        refused.locator("[data-act=change]").click();
        assertThat(item(page, round, 1).locator("input[name=sprouted]")).hasValue("99");
        count(page, round, 1, "9");
        assertThat(item(page, round, 1)).containsText("Sent: 9 so far");
        assertThat(refused).hasCount(0);
        item(page, round, 2).locator("[data-act=forget]").click();

        assertThat(page.locator(".round__kept--refused")).hasCount(0);
        allSent(page, round, 1);
    }

    @Test
    void a_whole_shelf_has_nothing_yet_after_two_presses() {
        Page page = opened(phone, round);

        page.locator(".round__all button").click();
        assertThat(round.looks()).isZero();
        page.locator(".round__all button").first().click();

        assertThat(page.locator(".round__kept--sent")).hasCount(4);
        allSent(page, round, 4);
        assertThat(page.locator(".round__all")).isHidden();
    }

    @Test
    void what_waits_on_the_phone_counts_as_done_in_both_counts() {
        Page page = opened(phone, round);
        Locator counts = page.locator("#round-count");
        assertThat(counts).hasText("4 to do, 0 done");
        round.stop();

        item(page, round, 1).locator("button[name=nothing]").click();
        assertThat(counts).hasText("3 to do, 1 done");
        page.locator("#round-view").click();
        assertThat(page.locator(".round__bar")).containsText("2 of 4");
        page.close();
        Page again = phone.newPage();
        again.navigate(round.address() + "/today");
        assertThat(again.locator("#round-count")).hasText("3 to do, 1 done");

        item(again, round, 1).locator("[data-act=undo]").evaluate("button => button.click()");
        assertThat(again.locator("#round-count")).hasText("4 to do, 0 done");
    }

    @Test
    void no_signal_and_no_server_are_told_apart() {
        Page page = opened(phone, round);
        round.stop();
        item(page, round, 1).locator("button[name=nothing]").click();
        assertThat(status(page))
                .containsText("1 kept on this phone; the server cannot be reached, so they are sent later.");

        phone.setOffline(true);
        assertThat(status(page)).containsText("1 kept on this phone, waiting for signal.");
        phone.setOffline(false);
        assertThat(status(page)).containsText("1 kept on this phone; the server cannot be reached");

        round.start();
        page.route("**/round/entries", route -> route.fulfill(new Route.FulfillOptions().setStatus(503)));
        page.evaluate("() => window.dispatchEvent(new Event('online'))");
        assertThat(status(page)).containsText("1 kept on this phone; the server has trouble, so they are sent later.");
    }

    @Test
    void the_same_look_from_two_pages_is_kept_once_and_taken_back_from_either() {
        Page page = opened(phone, round);
        Page other = phone.newPage();
        other.navigate(round.address() + "/today");
        assertThat(status(other)).containsText("All sent");
        // another tab would show what this one keeps
        other.evaluate("() => { for (const each of document.querySelectorAll('.round__check')) each.hidden = false; }");
        item(page, round, 1).locator("button[name=nothing]").click();
        assertThat(item(page, round, 1)).containsText("Sent: nothing yet");

        other.evaluate(
                "id => self.roundKeep([[document.querySelector('#s-' + id + ' form.round__do'),"
                        + " document.querySelector('#s-' + id + ' button[name=nothing]')]])",
                round.sowing(1).toString());

        assertThat(item(other, round, 1)).containsText("You had entered the same look already, so nothing was added.");
        assertThat(round.looks()).isEqualTo(1);
        item(other, round, 1).locator("[data-act=undo]").last().click();
        assertThat(item(other, round, 1)).containsText("Sent: taken back: nothing yet");
        assertThat(item(other, round, 1).locator("button[name=nothing]")).isVisible();
    }

    @Test
    void a_problem_and_a_note_are_kept_without_signal_too() {
        Page page = opened(phone, round);
        round.stop();
        item(page, round, 1).locator(".round__more").click();
        item(page, round, 1).locator("select[name=problem]").selectOption("mould");
        item(page, round, 1).locator("textarea").fill("white fluff at the edge");
        item(page, round, 1).locator(".round__extra button[type=submit]").click();
        assertThat(lines(page, round, 1)).containsText("mould, “white fluff at the edge”");
        round.start();
        page.reload();

        assertThat(status(page)).containsText("All sent");
        assertThat(round.group()
                        .database()
                        .sql()
                        .fetchCount(ENTRY, ENTRY.PROBLEM.eq("mould"), ENTRY.NOTE.eq("white fluff at the edge")))
                .isEqualTo(1);
    }

    @Test
    void a_browser_that_keeps_nothing_says_so_and_sends_at_once() {
        phone.addInitScript(
                "Object.defineProperty(window, 'indexedDB', { value: { open() { throw new Error('private'); } } })");
        Page page = phone.newPage();
        page.navigate(round.address() + "/today");
        assertThat(status(page)).containsText("This browser keeps nothing (a private window?)");

        nothing(page, round, 1);

        assertThat(item(page, round, 1)).containsText("Sent: nothing yet");
        assertThat(round.looks()).isEqualTo(1);
    }

    @Test
    void a_new_worker_takes_over_and_loses_neither_ticks_nor_the_page() {
        Page page = opened(phone, round);
        round.stop();
        count(page, round, 1, "2");
        assertThat(status(page)).containsText("1 kept on this phone; the server");
        round.start();
        // the next version of the program sends another worker
        phone.route("**/worker.js", route -> {
            var reply = route.fetch();
            route.fulfill(new com.microsoft.playwright.Route.FulfillOptions()
                    .setResponse(reply)
                    .setBody(reply.text().replaceFirst("VERSION = \"", "VERSION = \"next-")));
        });
        page.evaluate(
                "async () => { const mine = await navigator.serviceWorker.getRegistration(); await mine.update(); }");
        page.reload();

        assertThat(status(page)).containsText("All sent");
        assertThat(round.counts(1)).containsExactly(2);
        assertThat(pagesKept(page)).isNotEmpty();
    }
}
