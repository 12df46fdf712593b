package warmshelf.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.SITE;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.group.MemberStore;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class DutyPagesTest {
    private Cellar cellar;
    private UUID site;
    private String priya;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        site = cellar.group().database().sql().select(SITE.ID).from(SITE).fetchSingle(SITE.ID);
        priya = cellar.group().onDuty().id().toString();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void the_rota_is_written_read_by_everyone_and_shown_on_today() {
        Answer kept = cellar.coordinator().post("/duty", Map.of("duty/" + site + "/2027-03-01", priya));

        assertThat(kept.status()).isEqualTo(303);
        assertThat(cellar.member().get("/duty").text()).contains("Mon 1 Mar (today) Priya");
        assertThat(cellar.member().get("/today").text()).contains("Priya");
        assertThat(cellar.group()
                        .signedIn(cellar.group().onDuty())
                        .get("/today")
                        .status())
                .isEqualTo(200);
        assertThat(cellar.group().database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq("set duty")))
                .isEqualTo(1);
    }

    @Test
    void nobody_on_duty_takes_the_name_off_again() {
        cellar.coordinator().post("/duty", Map.of("duty/" + site + "/2027-03-01", priya));

        cellar.coordinator().post("/duty", Map.of("duty/" + site + "/2027-03-01", ""));

        assertThat(lines()).isZero();
    }

    @Test
    void only_coordinators_write_the_rota() {
        Map<String, String> fields = new HashMap<>(Map.of("duty/" + site + "/2027-03-01", priya));

        assertThat(cellar.member().post("/duty", fields).status()).isEqualTo(403);
        assertThat(cellar.group().stranger().postAsIs("/duty", fields).status()).isEqualTo(401);
        fields.put("csrf", "made-up");
        assertThat(cellar.coordinator().postAsIs("/duty", fields).status()).isEqualTo(403);
        assertThat(lines()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"soon", "2027-02-30", "1999-01-01", "9999-01-01", "-1", "%00"})
    void a_first_day_that_is_none_is_refused_with_what_is_accepted(String from) {
        Answer answer = cellar.member().get("/duty?from=" + from);

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.text()).contains("a date such as 2027-03-01 is accepted, within two years of today.");
    }

    @Test
    void a_first_day_shows_the_two_weeks_from_it() {
        assertThat(cellar.member().get("/duty?from=2027-04-05").text())
                .contains("Mon 5 Apr", "Sun 18 Apr")
                .doesNotContain("Mon 19 Apr");
    }

    @ParameterizedTest
    @CsvSource({
        "duty/SITE/2027-03-01, 00000000-0000-0000-0000-000000000007",
        "duty/SITE/2027-03-01, nobody in particular",
        "duty/SITE/someday, ''",
        "duty/SITE, ''",
        "duty/SITE/2027-03-01/9, ''",
        "duty/00000000-0000-0000-0000-000000000007/2027-03-01, ''"
    })
    void one_line_that_names_what_is_not_there_refuses_the_whole_rota(String field, String value) {
        Answer answer = cellar.coordinator()
                .post(
                        "/duty",
                        Map.of("duty/" + site + "/2027-03-02", priya, field.replace("SITE", site.toString()), value));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("One line of the rota names a site or a person");
        assertThat(lines()).isZero();
    }

    @Test
    void past_days_are_not_changed_and_show_who_had_them_though_they_have_left() {
        cellar.coordinator().post("/duty", Map.of("duty/" + site + "/2027-03-01", priya));
        cellar.group().clock().set(TestGroup.MORNING.plus(Duration.ofDays(2)));
        assertThat(cellar.coordinator()
                        .post("/people/" + priya + "/leaving", Map.of())
                        .status())
                .isEqualTo(303);

        Answer page = cellar.coordinator().get("/duty?from=2027-03-01");
        assertThat(page.text()).contains("Mon 1 Mar Priya (has left)");
        assertThat(page.body()).doesNotContain("name=\"duty/" + site + "/2027-03-01");

        Answer refused = cellar.coordinator().post("/duty", Map.of("duty/" + site + "/2027-03-01", ""));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("Mon 1 Mar is past, and stays as it was");
        assertThat(lines()).isEqualTo(1);
    }

    @Test
    void a_day_to_come_of_someone_who_has_left_stays_until_somebody_else_is_chosen() {
        String field = "duty/" + site + "/2027-03-05";
        cellar.coordinator().post("/duty", Map.of(field, priya));
        MemberStore members =
                new MemberStore(cellar.group().database(), cellar.group().audit());
        cellar.group()
                .database()
                .sql()
                .transaction(inside -> members.leave(
                        inside.dsl(),
                        UUID.fromString(priya),
                        cellar.group().coordinator().id()));
        assertThat(cellar.coordinator().get("/duty").body()).contains(" selected>Priya (has left)<");

        cellar.coordinator().post("/duty", Map.of(field, priya, field.replace("duty/", "was/"), priya));
        assertThat(lines()).isEqualTo(1);

        cellar.coordinator().post("/duty", Map.of(field, "", field.replace("duty/", "was/"), priya));
        assertThat(lines()).isZero();
    }

    @Test
    void a_page_opened_before_another_change_does_not_undo_it() {
        String field = "duty/" + site + "/2027-03-05";
        String tom = cellar.group().member().id().toString();
        cellar.coordinator().post("/duty", Map.of(field, priya));

        // untouched on the page that was opened while the day was empty
        cellar.coordinator().post("/duty", Map.of(field, "", field.replace("duty/", "was/"), ""));
        assertThat(lines()).isEqualTo(1);

        Answer refused = cellar.coordinator()
                .post("/duty", Map.of(field, tom, field.replace("duty/", "was/"), "", "from", "2027-03-01"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("Fri 5 Mar was changed by somebody else");
        assertThat(refused.body()).contains("value=\"" + tom + "\" selected");
    }

    @Test
    void an_hour_is_kept_or_refused_with_what_is_accepted() {
        assertThat(cellar.member().get("/duty").text()).contains("the day’s checks are done by 18:00");

        Answer wrong = cellar.coordinator().post("/duty/hours", Map.of("hour-" + site, "25:00"));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.text())
                .contains("The hour at Hall cellar was '25:00'; a time from 0:00 to 23:59 such as 18:00 is accepted");
        assertThat(wrong.body()).contains("value=\"25:00\"");

        cellar.coordinator().post("/duty/hours", Map.of("hour-" + site, "7:30", "together-" + site, "yes"));
        assertThat(cellar.member().get("/duty").text()).contains("the day’s checks are done by 07:30");
        assertThat(cellar.coordinator().get("/duty").body()).contains("value=\"yes\" checked");

        cellar.coordinator().post("/duty/hours", Map.of("hour-" + site, ""));
        assertThat(cellar.member().get("/duty").text()).contains("no hour is set");
        assertThat(cellar.member().post("/duty/hours", Map.of()).status()).isEqualTo(403);
    }

    @Test
    void after_the_hour_a_coordinator_reads_what_is_late_and_the_stand_in_sees_the_whole_round() {
        String tom = cellar.group().member().id().toString();
        Browser standIn = cellar.group().signedIn(cellar.group().onDuty());
        assertThat(standIn.post("/duty/mine", Map.of("can", site + "/1")).status())
                .isEqualTo(303);
        cellar.coordinator().post("/duty", Map.of("duty/" + site + "/2027-03-01", tom));
        String sowing = cellar.ask(Cellar.peppers());
        assertThat(cellar.placeAsSuggested(sowing).status()).isEqualTo(303);
        LocalDate day = firstDayWithSomethingToDo();
        cellar.coordinator().post("/duty", Map.of("duty/" + site + "/" + day, tom));
        standIn.post("/duty/mine", Map.of("can", site + "/" + day.getDayOfWeek().getValue()));
        assertThat(standIn.get("/today").text()).doesNotContain("You stand in today");

        cellar.group()
                .clock()
                .set(day.atTime(18, 0).atZone(ZoneId.of("America/Chicago")).toInstant());

        assertThat(standIn.get("/today").text())
                .contains("You stand in today at Hall cellar: Tom has not looked by 18:00.", "The whole round");
        assertThat(cellar.coordinator().get("/today").text()).contains("Tom is on duty, Priya stands in.");
        assertThat(cellar.coordinator().get("/duty").text()).contains("the round was not done by 18:00");
        assertThat(cellar.member().get("/duty").text()).doesNotContain("the round was not done");
    }

    /** Goes forward in the mornings until Today has something to do. */
    private LocalDate firstDayWithSomethingToDo() {
        for (int days = 0; days < 60; days++) {
            cellar.group().clock().set(TestGroup.MORNING.plus(Duration.ofDays(days)));
            cellar.member().get("/today");
            if (cellar.coordinator().get("/today").text().contains("The whole round: 1 to do")) {
                return TestGroup.TODAY.plusDays(days);
            }
        }
        throw new AssertionError("nothing is ever to do");
    }

    private int lines() {
        return cellar.group().database().sql().fetchCount(DUTY);
    }
}
