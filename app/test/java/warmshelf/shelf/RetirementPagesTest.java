package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.STAY;

import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class RetirementPagesTest {
    private Cellar cellar;
    private Site site;
    private Mat mat;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        site = new ShelvingStore(cellar.group().database().sql()).all().get(0);
        mat = site.racks().get(0).shelves().get(0).mats().get(0);
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    private String address() {
        return "/sites/mats/" + mat.id() + "/retirement";
    }

    @Test
    void a_mat_is_retired_shown_so_offered_no_more_and_brought_back() {
        String waiting = cellar.ask(Cellar.peppers());
        assertThat(cellar.coordinator()
                        .get("/sites/mats/" + mat.id() + "/change")
                        .body())
                .contains(address());
        assertThat(cellar.coordinator().get("/requests/" + waiting).text()).contains("Mat M1");

        Answer retired = cellar.coordinator().post(address(), Map.of("from", "2027-03-01"));

        assertThat(retired.location()).as(retired.text()).isEqualTo("/sites");
        assertThat(cellar.coordinator().get("/sites").text())
                .contains(
                        "mat M1 is retired from Mon 1 Mar on. Its history stays", "retired from Mon 1 Mar on · Change");
        assertThat(cellar.coordinator().get("/requests/" + waiting).text()).doesNotContain("M1, place");
        assertThat(cellar.coordinator().get("/racks").body()).doesNotContain("/mats/" + mat.id());
        assertThat(cellar.coordinator().get("/racks?day=2027-02-28").body()).contains("/mats/" + mat.id());
        assertThat(cellar.coordinator().get("/weeks?from=2027-03-08").body()).doesNotContain("/mats/" + mat.id());
        assertThat(cellar.coordinator().get("/mats/" + mat.id()).status()).isEqualTo(200);

        assertThat(cellar.coordinator().get(address()).text()).contains("It is retired from Mon 1 Mar on");
        cellar.coordinator().post(address() + "/end");
        assertThat(cellar.coordinator().get("/sites").text())
                .contains("mat M1 is in use again.")
                .doesNotContain("retired from");
        assertThat(cellar.coordinator().get("/requests/" + waiting).text()).contains("Mat M1");
    }

    @Test
    void what_lies_there_beyond_the_day_is_listed_with_how_to_move_it() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        UUID stay = cellar.group()
                .database()
                .sql()
                .select(STAY.ID)
                .from(STAY)
                .where(STAY.SOWING_ID.eq(UUID.fromString(sowing)))
                .orderBy(STAY.FROM_DAY)
                .limit(1)
                .fetchSingle(STAY.ID);

        Answer answer = cellar.coordinator().post("/sites/" + site.id() + "/retirement", Map.of("from", "2027-03-02"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text())
                .contains("A tray lies here on Tue 2 Mar or later", "Mat M1, place 1", "out of service");
        assertThat(answer.body()).contains("href=\"/stays/" + stay, "value=\"2027-03-02\"");
        assertThat(cellar.coordinator().get("/sites").text()).doesNotContain("retired from");
    }

    @Test
    void weeks_say_from_when_on_a_mat_is_to_be_retired() {
        cellar.coordinator().post(address(), Map.of("from", "2027-03-20"));

        assertThat(cellar.coordinator().get("/weeks").body()).contains("Mat M1 is retired from Sat 20 Mar on");
        assertThat(cellar.coordinator().get("/weeks").text()).doesNotContain("Mat M1 · out of service");
        assertThat(cellar.coordinator().get("/racks").body()).contains("/mats/" + mat.id());
    }

    @Test
    void nobody_is_down_to_look_at_a_site_that_is_retired() {
        cellar.coordinator().post("/sites/" + site.id() + "/retirement", Map.of("from", "2027-03-01"));

        assertThat(cellar.coordinator().get("/duty").body()).doesNotContain("duty/" + site.id());
        Answer written = cellar.coordinator()
                .post(
                        "/duty",
                        Map.of(
                                "from",
                                "2027-03-01",
                                "duty/" + site.id() + "/2027-03-02",
                                cellar.group().member().id().toString()));
        assertThat(written.status()).isEqualTo(422);
    }

    @ParameterizedTest
    @CsvSource({
        "'', 'The first day was ‘‘'",
        "soon, 'The first day was ‘soon’'",
        "2027-02-28, 'The first day was 2027-02-28; a day from 2027-03-01 to 2028-04-04 is accepted'",
    })
    void a_day_that_cannot_be_is_told_and_nothing_typed_is_lost(String from, String sentence) {
        Answer answer = cellar.coordinator().post(address(), Map.of("from", from));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text().replace("'", "‘").replace("’", "‘")).contains(sentence.replace("’", "‘"));
        assertThat(answer.body()).contains("value=\"" + from + "\"");
    }

    @Test
    void members_retire_nothing() {
        assertThat(cellar.member().get(address()).status()).isEqualTo(403);
        assertThat(cellar.member().post(address(), Map.of("from", "2027-03-01")).status())
                .isEqualTo(403);
        assertThat(cellar.member().post(address() + "/end").status()).isEqualTo(403);
    }
}
