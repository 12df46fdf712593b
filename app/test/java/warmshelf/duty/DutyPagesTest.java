package warmshelf.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.SITE;

import java.util.HashMap;
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
        assertThat(cellar.member().get("/duty").text()).contains("Mon 1 Mar (today) Priya Nair");
        assertThat(cellar.member().get("/today").text()).contains("Priya Nair");
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

    private int lines() {
        return cellar.group().database().sql().fetchCount(DUTY);
    }
}
