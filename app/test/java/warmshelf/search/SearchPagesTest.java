package warmshelf.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.words.PartOfList;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SearchPagesTest {
    private Cellar cellar;
    private String sowing;

    @BeforeAll
    void open() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        MemberStore members =
                new MemberStore(cellar.group().database(), cellar.group().audit());
        for (int each = 0; each <= PartOfList.LINES; each++) {
            members.add(
                    cellar.group().database().sql(),
                    new NewMember("Éloïse %03d Farfield".formatted(each), "US", "55803", "none"),
                    false,
                    "for a test");
        }
    }

    @AfterAll
    void close() {
        cellar.close();
    }

    @Test
    void every_page_has_the_field_and_it_is_answered_without_a_script() {
        assertThat(cellar.member().get("/frost").body()).contains("action=\"/search\"", "name=\"find\"");
    }

    @Test
    void a_sowing_and_its_seed_are_found_by_part_of_the_variety_and_lead_to_their_pages() {
        Answer answer = cellar.coordinator().get("/search?find=LANTERN");

        assertThat(answer.body()).contains("href=\"/sowings/" + sowing + "\"", "href=\"/seeds/");
        assertThat(answer.text()).contains("Sowings: 1", "Seed: 1");
        assertThat(cellar.coordinator().get(firstLink(answer, "/seeds/")).status())
                .isEqualTo(200);
    }

    @Test
    void places_are_found_too() {
        Answer answer = cellar.coordinator().get("/search?find=mat+m1");

        assertThat(answer.text()).contains("Places: 1");
        assertThat(cellar.coordinator().get(firstLink(answer, "/mats/")).status())
                .isEqualTo(200);
    }

    @Test
    void many_hits_come_page_by_page_whatever_the_accents_and_capitals_typed() {
        Answer first = cellar.coordinator().get("/search?find=eloise");

        assertThat(first.text()).contains("People: 51", "Page 1 of 2").doesNotContain("Éloïse 050");
        assertThat(cellar.coordinator().get("/search?find=eloise&page=2").text())
                .contains("Éloïse 050", "Page 2 of 2")
                .doesNotContain("Éloïse 000");
    }

    @Test
    void members_find_people_by_what_they_are_called_only() {
        assertThat(cellar.coordinator().get("/search?find=brandt").text()).contains("People: 1");
        assertThat(cellar.member().get("/search?find=brandt").text()).contains("Nothing found");
        assertThat(cellar.member().get("/search?find=ilse").text()).contains("People: 1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "?find=", "?find=%20%20"})
    void an_empty_search_says_what_to_do(String query) {
        assertThat(cellar.member().get("/search" + query).text()).contains("Nothing to look for yet");
    }

    @ParameterizedTest
    @ValueSource(strings = {"%25", "_", "%25%25", "%27%3B--", "%5C"})
    void signs_that_a_database_might_read_otherwise_are_only_signs(String sign) {
        Answer answer = cellar.coordinator().get("/search?find=" + sign);

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.text()).contains("Nothing found");
    }

    @Test
    void what_is_too_long_or_no_page_is_refused_with_the_reason_and_kept() {
        Answer answer = cellar.coordinator().get("/search?find=" + "a".repeat(81));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("What to find");
        assertThat(answer.typed("find")).hasSize(81);
        assertThat(cellar.coordinator().get("/search?find=a&page=none").status())
                .isEqualTo(422);
    }

    @Test
    void strangers_find_nothing() {
        assertThat(cellar.group().stranger().get("/search?find=a").status()).isEqualTo(303);
    }

    private static String firstLink(Answer answer, String begins) {
        return begins + Cellar.first(answer.body(), "href=\"" + begins + "([0-9a-f-]+)");
    }
}
