package warmshelf.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SOWING;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

class SupplyPagesTest {
    private Cellar cellar;
    private Browser member;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        member = cellar.member();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void without_sowings_nothing_is_needed() {
        assertThat(member.get("/supplies").text()).contains("Nothing is needed.");
    }

    @Test
    void what_was_asked_for_stands_on_the_list_with_cautions_and_how_it_is_reckoned() {
        cellar.ask(Cellar.peppers());

        String list = member.get("/supplies").text();

        assertThat(list)
                .contains("Seed compost")
                .contains("Vermiculite or perlite, to cover seed")
                .contains("Pots of 9 cm (3.5 in)")
                .contains("Compost can carry Legionella")
                .contains("People over 50, smokers and the ill are most at risk")
                .contains("Never for treated seed")
                .contains("Cell volumes are from memory")
                .containsPattern(
                        "Seed compost [0-9.]+ quarts to find The group needs [0-9.]+ quarts \\([^)]+\\), of that [0-9.]+ quarts for your sowings[.] [^.]+[.] Nobody brings any yet");
    }

    @Test
    void what_is_sown_needs_no_seed_compost_any_more() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.tick(sowing, Map.of("step", "sown"));

        assertThat(member.get("/supplies").text())
                .doesNotContain("Seed compost")
                .contains("Pots of 9 cm");
    }

    @Test
    void a_promise_lowers_what_is_still_to_find_until_it_is_taken_off() {
        cellar.ask(Cellar.peppers());

        assertThat(member.post("/supplies", promise(Map.of())).status()).isEqualTo(303);

        String page = member.get("/supplies").body();
        assertThat(page).contains("Tom: 3 quarts").contains("(peat-free)").contains("quarts over");
        String change = Cellar.first(page, "(/supplies/[0-9a-f-]{36}/change)");
        String taken = Cellar.first(member.get(change).body(), "(/supplies/[0-9a-f-]{36}/taking-back)");
        member.post(Cellar.first(page, "(/supplies/[0-9a-f-]{36}/brought)"), Map.of());
        assertThat(member.get("/supplies").body()).contains("Tom: 3 quarts, brought");
        assertThat(member.post(taken, Map.of()).status()).isEqualTo(303);
        assertThat(member.get("/supplies").body()).doesNotContain("Tom: 3 quarts");
        assertThat(member.post(taken, Map.of()).status()).isEqualTo(303);
        assertThat(member.get("/supplies").text()).contains("off the list already");
    }

    @Test
    void only_coordinators_say_what_the_group_has_and_change_what_others_promised() {
        Browser other = cellar.group().signedIn(cellar.group().onDuty());
        member.post("/supplies", promise(Map.of()));
        String change = Cellar.first(member.get("/supplies").body(), "(/supplies/[0-9a-f-]{36}/change)");
        String taken = change.replace("change", "taking-back");

        assertThat(other.get("/supplies").body()).doesNotContain(change);
        assertThat(other.post(taken, Map.of()).status()).isEqualTo(403);
        assertThat(other.post("/supplies", promise(Map.of("whose", "cupboard"))).status())
                .isEqualTo(422);
        assertThat(cellar.coordinator()
                        .post("/supplies", promise(Map.of("whose", "cupboard", "item", "pots", "amount", "30")))
                        .status())
                .isEqualTo(303);
        assertThat(other.get("/supplies").text()).contains("In the cupboard: 30");
        assertThat(cellar.coordinator().post(taken, Map.of()).status()).isEqualTo(303);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            amount | 0      | How many quarts was '0'; a number from 0.01 to 2113.38
            amount | -3     | How many quarts was '-3'
            amount | 1e9    | How many quarts was '1e9'
            amount | plenty | How many quarts was 'plenty'
            amount | ''     | How many quarts was ''
            item   | gold   | What was 'gold'; choose one from the list.
            """)
    void bad_promises_come_back_with_a_sentence_and_with_what_was_typed(String field, String text, String sentence) {
        Answer again = member.post("/supplies", promise(Map.of(field, text)));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains(sentence);
        assertThat(again.body()).contains("value=\"peat-free\"");
    }

    @Test
    void a_volume_from_memory_is_told_as_a_range_and_in_steps_to_look_for() {
        cellar.ask(Cellar.peppers());

        assertThat(member.get("/supplies").text())
                .containsPattern(
                        "Potting compost [0-9.]+ quarts to find The group needs [0-9.]+ quarts \\([0-9.]+ quarts to [0-9.]+ quarts\\)")
                .contains("So look for 5 quarts");
    }

    @Test
    void a_promise_is_changed_by_whose_it_is_and_a_mark_by_mistake_is_undone() {
        member.post("/supplies", promise(Map.of()));
        String change = Cellar.first(member.get("/supplies").body(), "(/supplies/[0-9a-f-]{36}/change)");
        Map<String, String> form = Cellar.hiddenFields(member.get(change).body(), change);

        assertThat(member.get(change).typed("amount")).isEqualTo("3");
        assertThat(member.post(change, with(form, "12.5")).status()).isEqualTo(303);
        assertThat(member.get(change).typed("amount")).isEqualTo("12.5");
        member.post(change.replace("change", "brought"));
        assertThat(member.get("/supplies").text()).contains("quarts, brought");
        assertThat(member.post(change.replace("change", "not-brought")).status())
                .isEqualTo(303);
        assertThat(member.get("/supplies").text()).doesNotContain("quarts, brought");
    }

    @Test
    void a_change_is_refused_where_it_is_not_ones_own_is_nonsense_or_comes_too_late() {
        member.post("/supplies", promise(Map.of()));
        String change = Cellar.first(member.get("/supplies").body(), "(/supplies/[0-9a-f-]{36}/change)");
        Map<String, String> form = Cellar.hiddenFields(member.get(change).body(), change);
        Browser other = cellar.group().signedIn(cellar.group().onDuty());

        assertThat(other.get(change).status()).isEqualTo(403);
        assertThat(other.post(change, with(form, "5")).status()).isEqualTo(403);
        Answer nonsense = member.post(change, with(form, "-4"));
        assertThat(nonsense.status()).isEqualTo(422);
        assertThat(nonsense.typed("amount")).isEqualTo("-4");
        assertThat(cellar.coordinator().post(change, with(form, "5")).status()).isEqualTo(303);
        assertThat(member.post(change, with(form, "6")).status()).isEqualTo(409);
        assertThat(member.get(change).typed("amount")).isEqualTo("5");
    }

    @Test
    void what_an_earlier_spring_meant_to_sow_and_forgot_needs_nothing_in_this_one() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.group()
                .database()
                .sql()
                .update(SOWING)
                .set(SOWING.SEASON, 2026)
                .where(SOWING.ID.eq(UUID.fromString(sowing)))
                .execute();

        assertThat(member.get("/supplies").text()).contains("Nothing is needed.");
    }

    private static Map<String, String> with(Map<String, String> form, String amount) {
        Map<String, String> typed = new HashMap<>(form);
        typed.put("amount", amount);
        return typed;
    }

    @Test
    void pieces_are_whole_ones() {
        Answer again = member.post("/supplies", promise(Map.of("item", "pots", "amount", "2.5")));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains("How many was '2.5'; a whole number from 1 to 10,000 is accepted.");
    }

    private static Map<String, String> promise(Map<String, String> changed) {
        Map<String, String> typed =
                new HashMap<>(Map.of("item", "sowing-compost", "amount", "3", "whose", "mine", "note", "peat-free"));
        typed.putAll(changed);
        return typed;
    }
}
