package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.browser.RoundPage.allSent;
import static warmshelf.browser.RoundPage.count;
import static warmshelf.browser.RoundPage.item;
import static warmshelf.browser.RoundPage.nothing;
import static warmshelf.browser.RoundPage.opened;
import static warmshelf.browser.RoundPage.pagesKept;
import static warmshelf.browser.RoundPage.ready;
import static warmshelf.browser.RoundPage.status;
import static warmshelf.db.generated.Tables.PHOTO;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.photo.Pictures;

/** The round in a cellar without signal. The server is stopped for it: an offline switch would not stop the worker. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoundOfflineTest {
    private Chromium chromium;

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

    @Test
    void forty_ticks_without_signal_are_stored_once_each_when_the_page_is_opened_again_with_signal() {
        try (PhoneRound round = PhoneRound.of(40);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            round.stop();

            for (int tray = 1; tray <= 40; tray++) {
                nothing(page, round, tray);
                assertThat(item(page, round, tray)).containsText("Kept on this phone");
            }
            assertThat(status(page)).containsText("40 kept on this phone; the server cannot be reached");
            page.close();

            Page again = phone.newPage();
            again.navigate(round.address() + "/today");
            assertThat(status(again)).containsText("40 kept on this phone; the server cannot be reached");
            assertThat(round.looks()).isZero();
            again.close();

            round.start();
            Page later = phone.newPage();
            later.navigate(round.address() + "/today");
            allSent(later, round, 40);

            later.reload();
            assertThat(item(later, round, 7)).containsText("Looked at today");
            assertThat(later.locator(".round__kept")).hasCount(0);
            assertThat(round.looks()).isEqualTo(40);
        }
    }

    @Test
    void a_page_that_has_not_changed_is_not_fetched_again() {
        try (PhoneRound round = PhoneRound.of(2);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            page.reload();
            String made = madeAs(page);

            page.reload();
            assertThat(madeAs(page)).isEqualTo(made);

            nothing(page, round, 1);
            allSent(page, round, 1);
            page.reload();
            assertThat(madeAs(page)).isNotEqualTo(made);
            assertThat(item(page, round, 1)).containsText("Looked at today");
        }
    }

    /** Each making of the page has a number of its own. */
    private static String madeAs(Page page) {
        return page.locator("input[name=page]").first().inputValue();
    }

    @Test
    void a_photo_taken_without_signal_is_made_small_kept_on_the_phone_and_sent_once_after_its_tick() {
        try (PhoneRound round = PhoneRound.of(2);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            round.stop();
            Locator tray = item(page, round, 1);
            tray.locator("a.round__more").click();
            tray.locator("textarea").fill("fluff at the rim");
            tray.locator("input[type=file]")
                    .setInputFiles(new FilePayload(
                            "IMG_0001.jpg", "image/jpeg", Pictures.asFromCamera(Pictures.jpeg(3000, 2000), 6)));
            tray.locator("form.round__extra button[type=submit]").click();
            assertThat(tray).containsText("Kept on this phone: “fluff at the rim”, with a photo");

            page.close();
            Page again = phone.newPage();
            again.navigate(round.address() + "/today");
            assertThat(status(again)).containsText("1 kept on this phone; the server cannot be reached");
            round.start();
            again.reload();
            assertThat(status(again)).containsText("All sent");
            again.reload();

            List<byte[]> kept = round.group()
                    .database()
                    .sql()
                    .select(PHOTO.JPEG)
                    .from(PHOTO)
                    .fetch(PHOTO.JPEG);
            assertThat(kept).hasSize(1);
            assertThat(kept.get(0).length).isLessThanOrEqualTo(300 * 1024);
            assertThat(Pictures.tellsMore(kept.get(0))).isFalse();
            assertThat(round.looks()).isEqualTo(1);
            again.navigate(round.address() + "/sowings/" + round.sowing(1));
            assertThat(again.locator(".photos img")).hasCount(1);
            // turned upright: 2000 by 3000, made 1280 long
            assertThat(again.locator(".photos img")).hasAttribute("height", "1280");
        }
    }

    @Test
    void a_photo_that_cannot_be_read_is_said_at_once_and_the_rest_stays_as_typed() {
        try (PhoneRound round = PhoneRound.of(1);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            Locator tray = item(page, round, 1);
            tray.locator("a.round__more").click();
            tray.locator("textarea").fill("fluff");
            tray.locator("input[type=file]")
                    .setInputFiles(new FilePayload("list.jpg", "image/jpeg", new byte[] {1, 2, 3}));

            tray.locator("form.round__extra button[type=submit]").click();

            assertThat(tray.locator("[data-wrong]")).isVisible();
            assertThat(tray.locator("textarea")).hasValue("fluff");
            assertThat(round.looks()).isZero();
        }
    }

    @Test
    void an_answer_that_never_came_doubles_nothing() {
        try (PhoneRound round = PhoneRound.of(3);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            // the server keeps the tick, but its answer is lost on the way
            page.evaluate("""
                () => { const real = window.fetch; let lost = false;
                  window.fetch = async (...asked) => { const reply = await real(...asked);
                    if (lost || asked[0] !== '/round/entries') return reply;
                    lost = true;
                    throw new TypeError('lost'); };
                  // the worker would send by itself
                  ServiceWorkerRegistration.prototype.__defineGetter__('sync', () => undefined); }
                """);
            nothing(page, round, 1);
            assertThat(status(page)).containsText("1 kept on this phone; the server cannot be reached");
            assertThat(round.looks()).isEqualTo(1);

            nothing(page, round, 2);
            assertThat(item(page, round, 2)).containsText("Sent: nothing yet");

            allSent(page, round, 2);
        }
    }

    @Test
    void a_server_that_dies_between_two_sends_gets_the_second_later() {
        try (PhoneRound round = PhoneRound.of(3);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            nothing(page, round, 1);
            assertThat(item(page, round, 1)).containsText("Sent: nothing yet");
            round.stop();
            nothing(page, round, 2);
            assertThat(status(page)).containsText("1 kept on this phone; the server cannot be reached");
            round.start();

            page.evaluate("() => window.dispatchEvent(new Event('online'))");

            allSent(page, round, 2);
        }
    }

    @Test
    void of_two_phones_that_ticked_the_same_tray_both_are_kept_and_the_one_seen_later_counts() {
        try (PhoneRound round = PhoneRound.of(1);
                BrowserContext toms = round.phone(chromium, round.tom());
                BrowserContext priyas = round.phone(chromium, round.priya())) {
            Page tom = opened(toms, round);
            Page priya = priyas.newPage();
            priya.navigate(round.address() + "/today?show=all");
            ready(priya);
            round.stop();
            count(tom, round, 1, "4");
            assertThat(status(tom)).containsText("1 kept on this phone; the server");
            count(priya, round, 1, "3");
            assertThat(status(priya)).containsText("1 kept on this phone; the server");
            round.start();

            priya.evaluate("() => window.dispatchEvent(new Event('online'))");
            assertThat(status(priya)).containsText("All sent");
            tom.evaluate("() => window.dispatchEvent(new Event('online'))");
            assertThat(status(tom)).containsText("All sent");

            assertThat(round.counts(1)).containsExactly(4, 3);
            tom.navigate(round.address() + "/sowings/" + round.sowing(1));
            assertThat(tom.locator("#seen")).containsText("more than one was kept for this day; this one, seen last");
            assertThat(tom.locator(".summary")).containsText("3 up");
        }
    }

    @Test
    void after_signing_in_again_the_queue_goes_on() {
        try (PhoneRound round = PhoneRound.of(2);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            phone.clearCookies();
            nothing(page, round, 1);
            Locator link = status(page).locator("a");
            assertThat(link).hasText("Sign in to send 1 kept tick");
            assertThat(round.looks()).isZero();

            link.click();
            page.getByLabel("Your name").fill(round.tom().name());
            page.getByLabel("Passphrase").fill(round.tom().passphrase());
            page.locator("main button[type=submit]").first().click();

            allSent(page, round, 1);
        }
    }

    @Test
    void whoever_shares_the_phone_sees_no_other_members_round_and_sends_no_ticks_of_theirs() {
        try (PhoneRound round = PhoneRound.of(2);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            round.stop();
            nothing(page, round, 1);
            assertThat(status(page)).containsText("1 kept on this phone");
            round.start();
            round.signIn(phone, round.priya());

            page.navigate(round.address() + "/today");
            assertThat(status(page)).containsText("1 of Tom’s are kept here too and go when Tom signs in.");
            ready(page);
            round.stop();
            page.navigate(round.address() + "/today");
            assertThat(page.locator("main")).not().containsText("Row 01");
            assertThat(round.looks()).isZero();

            round.start();
            round.signIn(phone, round.tom());
            page.navigate(round.address() + "/today");
            allSent(page, round, 1);
        }
    }

    @Test
    void signing_out_leaves_no_round_on_the_phone_but_keeps_the_ticks() {
        try (PhoneRound round = PhoneRound.of(2);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            round.stop();
            nothing(page, round, 1);
            assertThat(status(page)).containsText("1 kept on this phone; the server");
            round.start();

            page.locator(".foot-nav summary").click();
            page.locator(".foot-nav__more button").click();
            assertThat(page.getByLabel("Passphrase")).isVisible();
            page.waitForCondition(() -> pagesKept(page).isEmpty());
            round.stop();
            page.navigate(round.address() + "/today");

            assertThat(page.locator("h1")).hasText("No connection");
            assertThat(page.evaluate("() => new Promise(done => { indexedDB.open('warmshelf-round').onsuccess = e =>"
                            + " e.target.result.transaction('ticks').objectStore('ticks').count().onsuccess ="
                            + " n => done(n.target.result); })"))
                    .isEqualTo(1);
        }
    }

    @Test
    void pages_other_than_today_say_that_there_is_no_signal_and_lead_to_today() {
        try (PhoneRound round = PhoneRound.of(1);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            round.stop();

            page.navigate(round.address() + "/racks");
            assertThat(page.locator("h1")).hasText("No connection");
            page.locator("main a").click();

            assertThat(page.locator("main")).containsText("Row 01");
        }
    }

    @Test
    void a_how_to_that_was_read_opens_again_without_signal_and_one_of_another_crop_does_not_take_its_place() {
        try (PhoneRound round = PhoneRound.of(1);
                BrowserContext phone = round.phone(chromium, round.tom())) {
            Page page = opened(phone, round);
            page.navigate(round.address() + "/how-to/first-look");
            page.navigate(round.address() + "/how-to/covering?crop=lettuce");
            page.waitForCondition(() -> pagesKept(page).size() == 3);
            round.stop();

            page.navigate(round.address() + "/how-to/first-look");
            assertThat(page.locator("h1")).hasText("Look every day");
            page.navigate(round.address() + "/how-to/first-look?crop=pepper");
            assertThat(page.locator("h1")).hasText("Look every day");
            page.navigate(round.address() + "/how-to/covering?crop=lettuce");
            assertThat(page.locator("#of-crop")).hasText("Lettuce, head");
            page.navigate(round.address() + "/how-to/covering?crop=dill");
            assertThat(page.locator("h1")).hasText("No connection");
            page.navigate(round.address() + "/today");
            assertThat(page.locator("main")).containsText("Row 01");
        }
    }
}
