package warmshelf.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.PageForm;
import warmshelf.words.DayWords;

/** What only shows after hours: midnight while a page is open, the change of the clocks, days without a look, a year's end. */
class HoursLaterTest {
    private Cellar cellar;
    private String sowing;

    @BeforeEach
    void sow() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.tick(sowing, Map.of("step", "sown", "seenOn", "2027-02-20"));
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void a_look_pressed_after_midnight_on_a_page_opened_before_it_counts_for_the_new_day() {
        now("2027-03-02T05:50:00Z");
        PageForm look = look();
        now("2027-03-02T06:10:00Z");

        assertThat(member().post(look.action(), looked(look)).status()).isEqualTo(303);

        assertThat(daysLooked()).containsExactly(LocalDate.of(2027, 3, 2));
        assertThat(openLooks()).isZero();
    }

    @Test
    void a_look_of_the_evening_leaves_the_next_days_look_open() {
        now("2027-03-02T05:50:00Z");
        PageForm look = look();
        member().post(look.action(), looked(look));
        assertThat(openLooks()).isZero();

        now("2027-03-02T06:10:00Z");

        assertThat(openLooks()).isEqualTo(1);
    }

    @Test
    void days_on_which_nobody_looked_leave_one_look_to_do() {
        now("2027-03-05T15:00:00Z");

        assertThat(openLooks()).isEqualTo(1);
        PageForm look = look();
        member().post(look.action(), looked(look));

        assertThat(openLooks()).isZero();
        assertThat(daysLooked()).containsExactly(LocalDate.of(2027, 3, 5));
    }

    /** Duluth's 2 March begins at 06:00 UTC (IANA time zone database); seconds after it the same press is still the same. */
    @ParameterizedTest
    @CsvSource({
        "2027-03-01T20:00:00Z, 2027-03-02T15:00:00Z, 2",
        "2027-03-01T20:00:00Z, 2027-03-02T06:00:20Z, 2",
        "2027-03-02T05:59:50Z, 2027-03-02T06:00:20Z, 1",
        "2027-03-01T20:00:00Z, 2027-03-01T20:00:40Z, 1"
    })
    void the_round_left_open_overnight_tells_of_another_day(Instant first, Instant second, int days) {
        PageForm look = look();
        now(first.toString());
        member().post(look.action(), looked(look));

        now(second.toString());
        member().post(look.action(), looked(look));

        assertThat(daysLooked()).hasSize(days).doesNotHaveDuplicates();
    }

    @Test
    void the_page_of_one_entry_left_open_overnight_tells_of_another_day_and_sent_twice_of_one() {
        String page = "/sowings/" + sowing + "/entry";
        PageForm entry = PageForm.on(page, member().get(page).body()).stream()
                .filter(form -> form.action().equals("/sowings/" + sowing + "/entries"))
                .findFirst()
                .orElseThrow();
        Map<String, String> fields = new HashMap<>(looked(entry));
        fields.put("note", "nothing yet");
        fields.put("step", "look");
        member().post(entry.action(), fields);
        member().post(entry.action(), fields);
        assertThat(daysLooked()).hasSize(1);

        now("2027-03-02T15:00:00Z");
        member().post(entry.action(), fields);

        assertThat(daysLooked()).containsExactly(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 3, 2));
    }

    /** The United States change their clocks on the second Sunday of March and the first of November (Energy Policy Act 2005). */
    @ParameterizedTest
    @CsvSource({
        "2027-03-14T05:59:00Z, 2027-03-13",
        "2027-03-14T06:00:00Z, 2027-03-14",
        "2027-03-14T08:30:00Z, 2027-03-14",
        "2027-03-15T04:59:00Z, 2027-03-14",
        "2027-03-15T05:00:00Z, 2027-03-15",
        "2027-11-07T04:59:00Z, 2027-11-06",
        "2027-11-07T05:00:00Z, 2027-11-07",
        "2027-11-07T06:30:00Z, 2027-11-07",
        "2027-11-07T07:30:00Z, 2027-11-07",
        "2027-11-08T05:59:00Z, 2027-11-07",
        "2027-11-08T06:00:00Z, 2027-11-08",
        "2028-01-01T05:59:00Z, 2027-12-31",
        "2028-01-01T06:00:00Z, 2028-01-01",
        "2028-02-29T18:00:00Z, 2028-02-29"
    })
    void a_tick_belongs_to_the_day_in_the_groups_zone(Instant moment, LocalDate day) {
        now(moment.toString());
        UUID id = UUID.randomUUID();
        Answer answer = member().post(
                        "/sowings/" + sowing + "/entries",
                        Map.of("id", id.toString(), "step", "look", "sprouted", "0", "note", "nothing yet"));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(seenOn(id)).isEqualTo(day);
    }

    /**
     * Days as the IANA time zone database has them: in Cairo the last Friday of April begins at one o'clock, and Auckland is
     * thirteen hours ahead in its summer.
     */
    @ParameterizedTest
    @CsvSource({
        "Africa/Cairo, 2027-04-29T21:59:59Z, 2027-04-29",
        "Africa/Cairo, 2027-04-29T22:00:00Z, 2027-04-30",
        "Africa/Cairo, 2027-04-30T20:59:59Z, 2027-04-30",
        "Africa/Cairo, 2027-04-30T21:00:00Z, 2027-05-01",
        "Pacific/Auckland, 2027-12-31T10:59:59Z, 2027-12-31",
        "Pacific/Auckland, 2027-12-31T11:00:00Z, 2028-01-01",
        "Pacific/Auckland, 2028-04-01T12:30:00Z, 2028-04-02"
    })
    void a_day_without_a_midnight_and_a_year_that_ends_in_summer_are_days_like_others(
            String zone, Instant moment, LocalDate day) {
        cellar.group()
                .database()
                .sql()
                .update(GROUP_PROFILE)
                .set(GROUP_PROFILE.TIME_ZONE, zone)
                .execute();
        now(moment.toString());
        UUID id = UUID.randomUUID();

        Answer answer = member().post(
                        "/sowings/" + sowing + "/entries",
                        Map.of("id", id.toString(), "step", "look", "sprouted", "0", "note", "nothing yet"));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(seenOn(id)).isEqualTo(day);
        for (String page : List.of("/today", "/sowings", "/racks", "/weeks", "/ask")) {
            assertThat(member().get(page).status()).as(page).isEqualTo(200);
        }
        assertThat(member().get("/today").text()).contains("Today, " + DayWords.day(day));
    }

    @Test
    void every_page_answers_on_the_last_and_the_first_day_of_a_year() {
        for (String moment : List.of("2027-12-31T18:00:00Z", "2028-01-01T06:00:30Z")) {
            now(moment);
            for (String page :
                    List.of("/today", "/today?show=all", "/sowings", "/ask", "/racks", "/weeks", "/seeds/new")) {
                assertThat(member().get(page).status()).as(moment + " " + page).isEqualTo(200);
            }
            for (String page : List.of("/requests", "/plans", "/duty", "/duty/proposal", "/supplies", "/sites")) {
                assertThat(cellar.group()
                                .signedIn(cellar.group().coordinator())
                                .get(page)
                                .status())
                        .as(moment + " " + page)
                        .isEqualTo(200);
            }
        }
    }

    private void now(String moment) {
        cellar.group().clock().set(Instant.parse(moment));
    }

    /** Signed in anew, because a session does not last as long as these tests go on. */
    private Browser member() {
        return cellar.group().signedIn(cellar.group().member());
    }

    private PageForm look() {
        return looks().get(0);
    }

    private int openLooks() {
        return looks().size();
    }

    private List<PageForm> looks() {
        return PageForm.on("/today", member().get("/today").body()).stream()
                .filter(form -> form.action().equals("/sowings/" + sowing + "/entries"))
                .filter(form -> "look".equals(form.fields().get("step")))
                .filter(form -> form.fields().containsKey("sprouted"))
                .toList();
    }

    private static Map<String, String> looked(PageForm form) {
        Map<String, String> fields = new HashMap<>(form.fields());
        // the token of this sign-in, which post() adds
        fields.remove("csrf");
        fields.put("sprouted", "0");
        return fields;
    }

    private List<LocalDate> daysLooked() {
        return cellar.group()
                .database()
                .sql()
                .select(ENTRY.SEEN_ON)
                .from(ENTRY)
                .where(ENTRY.STEP.eq("look"))
                .orderBy(ENTRY.SEEN_ON)
                .fetch(ENTRY.SEEN_ON);
    }

    private LocalDate seenOn(UUID id) {
        return cellar.group()
                .database()
                .sql()
                .select(ENTRY.SEEN_ON)
                .from(ENTRY)
                .where(ENTRY.ID.eq(id))
                .fetchSingle(ENTRY.SEEN_ON);
    }
}
