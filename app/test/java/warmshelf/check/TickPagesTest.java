package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;

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

class TickPagesTest {
    private Cellar cellar;
    private String sowing;

    @BeforeEach
    void askForSpace() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void any_member_may_tick_anyones_sowing() {
        Answer answer = cellar.group()
                .signedIn(cellar.group().onDuty())
                .post("/sowings/" + sowing + "/entries", Map.of("step", "sown", "then", "/today"));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/today");
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("Priya");
    }

    @Test
    void strangers_and_pages_of_elsewhere_cannot_tick() {
        assertThat(cellar.group()
                        .stranger()
                        .postAsIs("/sowings/" + sowing + "/entries", Map.of("step", "sown"))
                        .status())
                .isEqualTo(401);
        assertThat(cellar.member()
                        .postAsIs("/sowings/" + sowing + "/entries", Map.of("step", "sown", "csrf", "made-up"))
                        .status())
                .isEqualTo(403);
        assertThat(entries()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"17", "nonsense", "00000000-0000-0000-0000-000000000007"})
    void an_address_that_names_no_sowing_is_not_found(String id) {
        assertThat(cellar.member().get("/sowings/" + id).status()).isEqualTo(404);
        assertThat(cellar.member().get("/sowings/" + id + "/entry").status()).isEqualTo(404);
        assertThat(cellar.member().post("/sowings/" + id + "/withdrawal").status())
                .isEqualTo(404);
        assertThat(cellar.tick(id, Map.of("step", "sown")).status()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sprouted | 999 | Sprouted so far was '999'; a whole number from 0 to",
                "sprouted | -1 | Sprouted so far was '-1'",
                "seenOn | 2027-03-02 | The day it was seen was 2027-03-02, which is still to come; today is 2027-03-01.",
                "seenOn | 2026-12-30 | The day it was seen was 2026-12-30; at most 60 days back is accepted."
            })
    void a_fault_is_named_and_the_note_stays_in_the_form(String field, String typed, String sentence) {
        cellar.tick(sowing, Map.of("step", "sown"));

        Answer answer = cellar.tick(sowing, Map.of("step", "look", "note", "two <b>bent</b> ones", field, typed));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence, "two <b>bent</b> ones");
        assertThat(answer.body()).contains("two &lt;b&gt;bent&lt;/b&gt; ones").doesNotContain("<b>bent");
        assertThat(answer.typed(field)).isEqualTo(typed);
        assertThat(entries()).isEqualTo(1);
    }

    @Test
    void a_step_that_cannot_follow_is_a_conflict_and_keeps_what_was_typed() {
        Answer answer = cellar.tick(sowing, Map.of("step", "planted-out", "note", "already?"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("is planned; 'planted out' cannot follow that.", "already?");
        assertThat(entries()).isZero();
    }

    @Test
    void a_tick_for_a_sowing_that_has_ended_is_a_conflict() {
        cellar.tick(sowing, Map.of("step", "sown"));
        cellar.tick(sowing, Map.of("step", "gave-up"));

        Answer answer = cellar.tick(sowing, Map.of("step", "look", "sprouted", "3"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("has ended (given up); nothing more is entered for it.");
        assertThat(cellar.member().get("/sowings/" + sowing + "/entry").text()).contains("This sowing has ended");
    }

    @Test
    void a_tick_sent_twice_is_kept_once_and_says_so_kindly() {
        Map<String, String> tick = Map.of("id", UUID.randomUUID().toString(), "step", "sown");
        cellar.tick(sowing, tick);

        Answer again = cellar.tick(sowing, tick);

        assertThat(again.status()).isEqualTo(303);
        assertThat(cellar.member().get(again.location()).text()).contains("This was kept before; nothing was added.");
        assertThat(entries()).isEqualTo(1);
    }

    @Test
    void going_on_leads_nowhere_outside_this_site() {
        Answer answer = cellar.tick(sowing, Map.of("step", "sown", "then", "https://elsewhere.example/today"));

        assertThat(answer.location()).isEqualTo("/sowings/" + sowing);
    }

    private int entries() {
        return cellar.group().database().sql().fetchCount(ENTRY, ENTRY.SOWING_ID.eq(UUID.fromString(sowing)));
    }
}
