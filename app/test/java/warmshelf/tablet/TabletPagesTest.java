package warmshelf.tablet;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;

import java.net.http.HttpRequest;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.RackTablet;

/** A tablet in the cellar, from the coordinator who makes it to the ticks that come from it. */
class TabletPagesTest {
    private Cellar cellar;
    private String sowing;
    private String link;
    private Browser tablet;

    @BeforeEach
    void sow() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        // the day on which the stay begins, and one on which there is something to look at
        cellar.group().clock().advance(Duration.ofDays(23));
        cellar.tick(sowing, Map.of("step", "sown"));
        cellar.group().clock().advance(Duration.ofDays(3));
        String site = Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/([0-9a-f-]{36})/racks/new");
        link = RackTablet.link(cellar.coordinator(), "Cellar", site);
        tablet = RackTablet.opened(cellar.group().stranger(), link);
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void the_link_is_shown_once_with_a_code_and_lets_in_once() {
        assertThat(cellar.coordinator().get("/tablets").body()).doesNotContain("/tablet/");
        assertThat(cellar.group().stranger().get(link).status()).isEqualTo(410);
        assertThat(cellar.group().stranger().postAsIs(link, Map.of()).status()).isEqualTo(410);
        assertThat(cellar.group().stranger().get(link + "x").status()).isEqualTo(404);
        assertThat(cellar.coordinator().get("/people").text()).doesNotContain("Cellar");
    }

    @Test
    void it_shows_the_round_of_its_site_and_no_way_to_other_pages() {
        Answer today = tablet.get("/today");

        assertThat(today.text()).contains("Hall cellar", "Lantern Row", "Tom", "Who is ticking?");
        assertThat(today.body())
                .contains(">Priya</option>")
                .doesNotContain("href=\"/sowings/" + sowing + "\"", "href=\"/mats", "Okafor", "href=\"/settings");
        assertThat(today.header("X-Warmshelf-Member")).hasSize(36);
        assertThat(tablet.get("/today?show=one").status()).isEqualTo(200);
        assertThat(tablet.get("/today/items/" + sowing).status()).isEqualTo(200);
    }

    @Test
    void any_other_page_is_refused_with_a_sentence() {
        for (String page :
                new String[] {"/settings", "/people", "/sowings/" + sowing, "/tablets", "/racks", "/files"}) {
            Answer answer = tablet.get(page);

            assertThat(answer.status()).as(page).isEqualTo(403);
            assertThat(answer.text()).as(page).contains("This tablet shows the round of its site and may only tick");
        }
        assertThat(tablet.post("/sign-out").status()).isEqualTo(403);
        assertThat(tablet.post("/ask/gathered").status()).isEqualTo(403);
        assertThat(tablet.get("/today").status()).isEqualTo(200);
    }

    @Test
    void a_tick_is_the_tablets_own_until_somebody_says_that_they_tick() {
        assertThat(tick(Map.of("step", "look", "sprouted", "2")).status()).isEqualTo(303);
        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .contains("looked by the tablet Cellar, 2 so far")
                .doesNotContain("typed in");

        Answer chosen = tablet.post(
                "/today/looker", Map.of("looker", cellar.group().onDuty().id().toString()));
        assertThat(chosen.location()).isEqualTo("/today");
        assertThat(tablet.get("/today").text()).contains("now counts as seen by Priya");
        tick(Map.of("step", "look", "sprouted", "3", "problem", "mould"));

        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .contains("looked by Priya, 3 so far", "(on the tablet Cellar)");
        tablet.post("/today/looker", Map.of("looker", ""));
        tick(Map.of("step", "look", "sprouted", "4"));
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("looked by the tablet Cellar, 4 so far");
    }

    @Test
    void who_ticks_is_known_for_ten_minutes_and_must_be_of_the_group() {
        Answer chosen = tablet.post(
                "/today/looker", Map.of("looker", cellar.group().onDuty().id().toString()));

        assertThat(chosen.cookiesSet())
                .anyMatch(cookie -> cookie.contains("warmshelf-looker")
                        && cookie.contains("Max-Age=600")
                        && cookie.contains("HttpOnly")
                        && cookie.contains("SameSite=Strict"));
        Answer nobody =
                tablet.post("/today/looker", Map.of("looker", UUID.randomUUID().toString()));
        assertThat(nobody.status()).isEqualTo(422);
        assertThat(nobody.text()).contains("a member from the list is accepted");
        assertThat(cellar.member().post("/today/looker", Map.of("looker", "")).status())
                .isEqualTo(404);
    }

    @Test
    void what_waited_without_signal_is_kept_once_with_who_pressed() {
        UUID priya = cellar.group().onDuty().id();
        String entry = "{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",\"sprouted\":\"5\",\"seenBy\":\"%s\",%s}"
                .formatted(UUID.randomUUID(), sowing, priya, "\"seenAt\":\"2027-03-27T14:30:00Z\"");

        assertThat(send(tablet, entry).body()).contains("\"answer\":\"kept\"");
        assertThat(send(tablet, entry).body()).contains("\"answer\":\"kept-before\"");
        assertThat(cellar.group()
                        .database()
                        .sql()
                        .fetchCount(ENTRY, ENTRY.MADE_BY.eq(priya), ENTRY.TYPED_BY.isNotNull()))
                .isEqualTo(1);
    }

    @Test
    void a_member_cannot_tick_in_anothers_name_by_the_same_field() {
        UUID priya = cellar.group().onDuty().id();
        String entry = "{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",\"sprouted\":\"5\",\"seenBy\":\"%s\",%s}"
                .formatted(UUID.randomUUID(), sowing, priya, "\"seenAt\":\"2027-03-27T14:30:00Z\"");

        assertThat(send(cellar.member(), entry).body()).contains("\"answer\":\"kept\"");
        assertThat(cellar.group().database().sql().fetchCount(ENTRY, ENTRY.MADE_BY.eq(priya)))
                .isZero();
    }

    @Test
    void what_never_lay_at_its_site_is_not_its_to_tick() {
        String elsewhere = cellar.ask(Cellar.peppers());

        assertThat(tablet.get("/sowings/" + elsewhere + "/entry").status()).isEqualTo(403);
        Answer answer = tablet.post("/sowings/" + elsewhere + "/entries", Map.of("step", "look"));
        assertThat(answer.status()).isEqualTo(403);
        assertThat(answer.text()).contains("what lies at its own site only");
        String entry = "{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",%s}"
                .formatted(UUID.randomUUID(), elsewhere, "\"seenAt\":\"2027-03-27T14:30:00Z\"");
        assertThat(send(tablet, entry).body()).contains("\"answer\":\"refused\"", "its own site only");
    }

    @Test
    void a_thermometer_is_read_on_it() {
        UUID mat = cellar.group()
                .database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq("M1"))
                .fetchSingle(MAT.ID);

        assertThat(tablet.post("/mats/" + mat + "/readings", Map.of("celsius", "80"))
                        .status())
                .isEqualTo(303);
        assertThat(tablet.get("/today").text()).contains("by the tablet Cellar");
    }

    @Test
    void a_lost_tablet_is_ended_at_once_and_whoever_holds_it_is_at_the_door() {
        String page = cellar.coordinator().get("/tablets").body();
        assertThat(cellar.coordinator().get("/tablets").text()).contains("27 Mar 2027, 10:00");
        String id = Cellar.first(page, "/tablets/([0-9a-f-]{36})/end");

        assertThat(cellar.member().post("/tablets/" + id + "/end").status()).isEqualTo(403);
        assertThat(cellar.coordinator().post("/tablets/" + id + "/end").location())
                .isEqualTo("/tablets");

        assertThat(tablet.get("/today").location()).startsWith("/sign-in");
        assertThat(send(tablet, "").status()).isEqualTo(401);
        assertThat(cellar.coordinator().get("/tablets").text()).contains("Ended 27 Mar 2027 by Ilse");
        assertThat(cellar.coordinator().post("/tablets/" + id + "/link").status())
                .isEqualTo(410);
    }

    @Test
    void a_name_and_a_site_are_asked_for() {
        Answer answer = cellar.coordinator().post("/tablets", Map.of("name", "", "site", "x"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Name", "Site");
        String site = Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/([0-9a-f-]{36})/racks/new");
        Answer taken = cellar.coordinator().post("/tablets", Map.of("name", "CELLAR", "site", site));
        assertThat(taken.status()).isEqualTo(422);
        assertThat(taken.text()).contains("there is a tablet of that name");
        assertThat(taken.typed("name")).isEqualTo("CELLAR");
    }

    private Answer tick(Map<String, String> fields) {
        return tablet.post("/sowings/" + sowing + "/entries", fields);
    }

    private static Answer send(Browser browser, String entry) {
        String body = "{\"sentAt\":\"2027-03-27T15:00:00Z\",\"entries\":[%s]}".formatted(entry);
        return browser.send(browser.request("/round/entries")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }
}
