package warmshelf.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.browser.RoundPage.allSent;
import static warmshelf.browser.RoundPage.item;
import static warmshelf.browser.RoundPage.nothing;
import static warmshelf.browser.RoundPage.ready;
import static warmshelf.browser.RoundPage.status;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.time.Clock;
import java.util.Objects;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.db.Audit;
import warmshelf.testing.Browser;
import warmshelf.testing.RackTablet;

/** A tablet in a cellar without signal, on which members press one after the other. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TabletOfflineTest {
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
    void ticks_of_two_people_and_of_nobody_wait_on_it_and_are_stored_once_each_with_who_pressed() {
        try (PhoneRound round = PhoneRound.of(3);
                BrowserContext tablet = chromium.on(Screen.DESKTOP, true)) {
            lay(round);
            Page page = tablet.newPage();
            page.navigate(round.address() + link(round));
            page.locator("form button[type=submit]").click();
            page.locator("#round").waitFor();
            ready(page);
            assertThat(page.locator("nav")).hasCount(0);
            round.stop();

            page.locator("#looker").selectOption(new SelectOption().setLabel("Priya"));
            nothing(page, round, 1);
            page.reload();
            assertThat(page.locator("#looker")).hasValue(round.priya().id().toString());
            page.locator("#looker").selectOption(new SelectOption().setLabel("Tom"));
            nothing(page, round, 2);
            page.locator("#looker").selectOption("");
            nothing(page, round, 3);
            assertThat(status(page)).containsText("3 kept on this phone; the server cannot be reached");

            round.start();
            page.reload();
            allSent(page, round, 3);
            page.reload();
            assertThat(item(page, round, 1)).containsText("Looked at today by Priya");
            assertThat(item(page, round, 2)).containsText("Looked at today by Tom");
            assertThat(item(page, round, 3)).containsText("Looked at today by the tablet Cellar");
            assertThat(round.looks()).isEqualTo(3);
            assertThat(typedByTheTablet(round)).isEqualTo(2);
        }
    }

    @Test
    void nobody_is_known_to_tick_any_more_after_ten_idle_minutes() {
        try (PhoneRound round = PhoneRound.of(1);
                BrowserContext tablet = chromium.on(Screen.DESKTOP, true)) {
            lay(round);
            Page page = tablet.newPage();
            page.navigate(round.address() + link(round));
            page.locator("form button[type=submit]").click();
            page.locator("#round").waitFor();
            page.locator("#looker").selectOption(new SelectOption().setLabel("Priya"));
            page.evaluate("""
                    () => {
                      const kept = JSON.parse(localStorage.getItem('warmshelf.looker'));
                      localStorage.setItem('warmshelf.looker', JSON.stringify({ ...kept, at: kept.at - 601_000 }));
                    }""");

            nothing(page, round, 1);

            assertThat(page.locator("#looker")).hasValue("");
            allSent(page, round, 1);
            assertThat(typedByTheTablet(round)).isZero();
        }
    }

    private static int typedByTheTablet(PhoneRound round) {
        return round.group()
                .database()
                .sql()
                .fetchCount(ENTRY.join(MEMBER).on(MEMBER.ID.eq(ENTRY.TYPED_BY)), MEMBER.ROLE.eq("tablet"));
    }

    private static String link(PhoneRound round) {
        Browser coordinator = Browser.at(round.address());
        Browser signedIn = round.group().signedIn(round.group().coordinator());
        coordinator.setCookie("warmshelf", Objects.requireNonNull(signedIn.cookie("warmshelf")));
        UUID site = round.group().database().sql().select(SITE.ID).from(SITE).fetchSingle(SITE.ID);
        return RackTablet.link(coordinator, "Cellar", site.toString());
    }

    /** Lays all trays under the lights of a shelf in the cellar. */
    private static void lay(PhoneRound round) {
        round.look(round.tom());
        DSLContext sql = round.group().database().sql();
        UUID rack = UUID.randomUUID();
        UUID shelf = UUID.randomUUID();
        sql.insertInto(RACK)
                .set(RACK.ID, rack)
                .set(RACK.SITE_ID, sql.select(SITE.ID).from(SITE).fetchSingle(SITE.ID))
                .set(RACK.NAME, "North rack")
                .set(RACK.WALK_ORDER, 1)
                .set(RACK.VERSION, 1)
                .execute();
        sql.insertInto(SHELF)
                .set(SHELF.ID, shelf)
                .set(SHELF.RACK_ID, rack)
                .set(SHELF.FROM_TOP, 1)
                .set(SHELF.LIT_PLACES, 4)
                .set(SHELF.LIGHT_WATTS, 80)
                .set(SHELF.VERSION, 1)
                .execute();
        for (int number = 1; number <= trays(round); number++) {
            UUID place = UUID.randomUUID();
            sql.insertInto(PLACE)
                    .set(PLACE.ID, place)
                    .set(PLACE.KIND, "lit")
                    .set(PLACE.LIT_SHELF_ID, shelf)
                    .set(PLACE.NUMBER, number)
                    .execute();
            sql.insertInto(STAY)
                    .set(STAY.ID, UUID.randomUUID())
                    .set(STAY.SOWING_ID, round.sowing(number))
                    .set(STAY.PLACE_ID, place)
                    .set(STAY.FIRST_QUARTER, 1)
                    .set(STAY.QUARTERS, 2)
                    .set(STAY.FROM_DAY, PhoneRound.today().minusDays(3))
                    .set(STAY.TO_DAY, PhoneRound.today().plusDays(30))
                    .set(STAY.MADE_BY, round.tom().id())
                    .set(STAY.MADE_AT, new Audit(Clock.systemUTC()).now())
                    .set(STAY.VERSION, 1)
                    .execute();
        }
    }

    private static int trays(PhoneRound round) {
        return round.group().database().sql().fetchCount(SOWING);
    }
}
