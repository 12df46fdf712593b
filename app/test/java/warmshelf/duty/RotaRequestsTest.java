package warmshelf.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.DUTY_AWAY;
import static warmshelf.db.generated.Tables.DUTY_WILLING;
import static warmshelf.db.generated.Tables.SITE;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** My days, the proposal and swaps, pressed through their pages. */
class RotaRequestsTest {
    private static final String NOBODY = "00000000-0000-0000-0000-000000000007";

    private Cellar cellar;
    private UUID site;
    private String tom;
    private String priya;
    private Browser priyaBrowser;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        site = cellar.group().database().sql().select(SITE.ID).from(SITE).fetchSingle(SITE.ID);
        tom = cellar.group().member().id().toString();
        priya = cellar.group().onDuty().id().toString();
        priyaBrowser = cellar.group().signedIn(cellar.group().onDuty());
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void weekdays_are_kept_for_oneself_and_by_a_coordinator_for_others() {
        assertThat(can(cellar.member(), tom, 1).status()).isEqualTo(303);
        assertThat(can(cellar.coordinator(), priya, 2).location()).isEqualTo("/duty/mine?member=" + priya);

        assertThat(cellar.member().get("/duty/mine").body()).contains("value=\"" + site + "/1\" checked");
        assertThat(cellar.coordinator().get("/duty/mine?member=" + priya).body())
                .contains("value=\"" + site + "/2\" checked");
        assertThat(can(cellar.member(), priya, 3).status()).isEqualTo(403);
        assertThat(cellar.member().get("/duty/mine?member=" + priya).status()).isEqualTo(403);
        assertThat(cellar.coordinator().get("/duty/mine?member=" + NOBODY).status())
                .isEqualTo(404);
        assertThat(cellar.group().database().sql().fetchCount(DUTY_WILLING)).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"SITE/8", "SITE/0", "SITE", NOBODY + "/1", "monday"})
    void a_tick_that_is_no_weekday_at_a_site_is_refused(String tick) {
        Answer answer = cellar.member().post("/duty/mine", Map.of("can", tick.replace("SITE", site.toString())));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("One of the ticks names a weekday or a site that there is not");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2027-03-09 | 2027-03-05 | The last day was '2027-03-05', before the first, '2027-03-09'",
                "2027-02-20 | 2027-03-05 | The first day was '2027-02-20'; a date from today, 2027-03-01,",
                "2027-03-09 | 2028-06-01 | at most 366 days at once are accepted",
                "soon | 2027-03-05 | The first day was 'soon'; a date such as 2027-03-01 is accepted",
                "2040-01-01 | 2040-01-02 | to two years ahead is accepted"
            })
    void days_away_that_are_none_come_back_with_what_is_accepted(String first, String last, String sentence) {
        Answer answer = cellar.member().post("/duty/mine/away", Map.of("first", first, "last", last));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.body()).contains("value=\"" + first + "\"", "value=\"" + last + "\"");
        assertThat(cellar.group().database().sql().fetchCount(DUTY_AWAY)).isZero();
    }

    @Test
    void days_away_are_kept_shown_and_taken_away_again_by_their_owner_only() {
        cellar.member().post("/duty/mine/away", Map.of("first", "2027-03-05", "last", ""));
        String page = cellar.member().get("/duty/mine").body();
        String removal = Cellar.first(page, "action=\"(/duty/mine/away/[^\"]+/removal)\"");

        assertThat(page).contains("5 Mar 2027");
        assertThat(priyaBrowser.post(removal, Map.of()).status()).isEqualTo(403);
        assertThat(cellar.member().post(removal, Map.of()).status()).isEqualTo(303);
        assertThat(cellar.member().post(removal, Map.of()).status()).isEqualTo(404);
    }

    @Test
    void a_proposal_is_shown_then_kept_and_what_is_by_hand_stays() {
        everyDay(cellar.group().member().id());
        everyDay(cellar.group().onDuty().id());
        cellar.coordinator()
                .post(
                        "/duty",
                        Map.of(
                                "duty/" + site + "/2027-03-02",
                                cellar.group().coordinator().id().toString()));

        Answer shown = cellar.coordinator().get("/duty/proposal?from=2027-03-01&days=4&site=all");
        assertThat(shown.status()).isEqualTo(200);
        assertThat(shown.text()).contains("3 empty days are filled", "Mon 1 Mar Priya (new)", "Tue 2 Mar Ilse");
        assertThat(lines()).isEqualTo(1);

        Map<String, String> proposal = new HashMap<>();
        for (String field : Cellar.all(shown.body(), "name=\"(duty/[^\"]+)\"")) {
            proposal.put(field, Cellar.first(shown.body(), "name=\"" + field + "\" value=\"([^\"]+)\""));
        }
        give("2027-03-03", cellar.group().coordinator().id().toString());
        assertThat(cellar.coordinator().post("/duty/proposal", proposal).status())
                .isEqualTo(303);
        assertThat(cellar.coordinator().get("/duty").text())
                .contains("2 days are kept. Left as they are by now: Wed 3 Mar.");
        assertThat(cellar.member().get("/duty").text())
                .contains("Mon 1 Mar (today) Priya", "Tue 2 Mar Ilse", "Wed 3 Mar Ilse");
        assertThat(lines()).isEqualTo(4);
    }

    @Test
    void days_that_nobody_can_take_are_named() {
        can(cellar.member(), tom, 1);

        assertThat(cellar.coordinator()
                        .get("/duty/proposal?from=2027-03-01&days=2")
                        .text())
                .contains("Nobody can take:", "Hall cellar: Tue 2 Mar");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from=2027-02-28 | a date from today, 2027-03-01, to a year ahead is accepted",
                "from=never | The first day was 'never'",
                "days=0 | How many days was '0'; a whole number from 1 to 84 is accepted",
                "days=9999 | a whole number from 1 to 84 is accepted",
                "site=" + NOBODY + " | The site was '" + NOBODY + "'"
            })
    void a_span_that_cannot_be_filled_is_refused_with_what_is_accepted(String query, String sentence) {
        Answer answer = cellar.coordinator().get("/duty/proposal?" + query);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
    }

    @Test
    void a_proposal_with_past_days_or_unknown_people_keeps_nothing() {
        for (Map<String, String> fields : List.of(
                Map.of("duty/" + site + "/2027-02-27", tom),
                Map.of("duty/" + site + "/2027-03-04", NOBODY),
                Map.of("duty/" + site + "/someday", tom))) {
            assertThat(cellar.coordinator().post("/duty/proposal", fields).status())
                    .isEqualTo(422);
        }
        assertThat(cellar.member().get("/duty/proposal").status()).isEqualTo(403);
        assertThat(cellar.member().post("/duty/proposal", Map.of()).status()).isEqualTo(403);
        assertThat(lines()).isZero();
    }

    @Test
    void a_swap_is_asked_seen_on_today_and_taken() {
        give("2027-03-04", tom);
        assertThat(ask("2027-03-04", "anyone", "none").location()).isEqualTo("/duty/swaps");

        Answer today = priyaBrowser.get("/today");
        assertThat(today.text()).contains("Tom asks everyone: can you take Thu 4 Mar at Hall cellar?");
        assertThat(priyaBrowser.get("/duty").text()).contains("can you take Thu 4 Mar at Hall cellar?");
        assertThat(cellar.coordinator().get("/duty/swaps").text())
                .contains("Tom: Thu 4 Mar at Hall cellar, asked of anyone: waiting for an answer.");
        String taking = Cellar.first(today.body(), "action=\"(/duty/swaps/[^\"]+/taking)\"");
        assertThat(priyaBrowser.post(taking, Map.of("then", "/today")).location())
                .isEqualTo("/today");

        assertThat(cellar.member().get("/duty/swaps").text()).contains("taken by Priya");
        Answer late = cellar.coordinator().post(taking, Map.of());
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("Priya has Thu 4 Mar at Hall cellar by now.");
        assertThat(cellar.member().get("/today").text()).doesNotContain("can you take");
    }

    @Test
    void one_who_cannot_is_asked_no_more_and_the_asker_can_withdraw() {
        give("2027-03-04", tom);
        ask("2027-03-04", "anyone", "none");
        String page = priyaBrowser.get("/duty/swaps").body();
        String refusal = Cellar.first(page, "action=\"(/duty/swaps/[^\"]+/refusal)\"");

        assertThat(priyaBrowser.post(refusal, Map.of()).status()).isEqualTo(303);
        assertThat(priyaBrowser.get("/today").text()).doesNotContain("can you take");
        assertThat(priyaBrowser.post(refusal, Map.of()).status()).isEqualTo(409);
        assertThat(cellar.member().get("/duty/swaps").text()).contains("One has said no.");
        String withdrawal = refusal.replace("refusal", "withdrawal");
        assertThat(priyaBrowser.post(withdrawal, Map.of()).status()).isEqualTo(409);
        assertThat(cellar.member().post(withdrawal, Map.of()).status()).isEqualTo(303);
        assertThat(cellar.coordinator().get("/today").text()).doesNotContain("can you take");
        assertThat(cellar.member()
                        .post("/duty/swaps/" + NOBODY + "/taking", Map.of())
                        .status())
                .isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                NOBODY + " | none | Whom you ask was",
                "TOM | none | Whom you ask was yourself",
                "anyone | soon | The day in exchange was 'soon'",
                "anyone | SITE/2027-03-06 | a day on which another member is on duty is accepted",
                "ILSE | SITE/2027-03-05 | is not a day of the person you ask"
            })
    void a_swap_that_cannot_be_asked_comes_back_with_the_reason(String whom, String inReturn, String sentence) {
        give("2027-03-04", tom);
        give("2027-03-05", priya);

        Answer answer = ask(
                "2027-03-04",
                whom.replace("TOM", tom)
                        .replace("ILSE", cellar.group().coordinator().id().toString()),
                inReturn.replace("SITE", site.toString()));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
    }

    @Test
    void days_that_are_not_ones_own_or_past_have_no_form() {
        give("2027-03-05", priya);

        for (String turn : List.of(site + "/2027-03-05", site + "/2027-03-09", "nothing", site + "/soon", "")) {
            assertThat(cellar.member().get("/duty/swaps/new?turn=" + turn).status())
                    .isEqualTo(404);
        }
    }

    private Answer can(Browser by, String member, int weekday) {
        return by.post("/duty/mine", Map.of("member", member, "can", site + "/" + weekday));
    }

    private void everyDay(UUID member) {
        for (int weekday = 1; weekday <= 7; weekday++) {
            cellar.group()
                    .database()
                    .sql()
                    .insertInto(DUTY_WILLING)
                    .columns(DUTY_WILLING.fields())
                    .values(member, site, weekday)
                    .execute();
        }
    }

    private void give(String day, String member) {
        assertThat(cellar.coordinator()
                        .post("/duty", Map.of("duty/" + site + "/" + day, member))
                        .status())
                .isEqualTo(303);
    }

    private Answer ask(String day, String whom, String inReturn) {
        Map<String, String> fields = new HashMap<>(Map.of("turn", site + "/" + day, "whom", whom));
        fields.put("inReturn", inReturn);
        return cellar.member().post("/duty/swaps", fields);
    }

    private int lines() {
        return cellar.group().database().sql().fetchCount(DUTY);
    }
}
