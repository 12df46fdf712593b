package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class OpeningPagesTest {
    private TestGroup installation;

    @BeforeEach
    void open() {
        installation = TestGroup.unopened();
    }

    @AfterEach
    void close() {
        installation.close();
    }

    @Test
    void the_first_coordinator_names_the_group_and_is_signed_in() {
        Browser browser = installation.stranger();

        Answer answer = browser.postAsIs(path(), form());
        Answer settings = browser.get("/settings/group");

        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/sites");
        assertThat(settings.typed("groupName")).isEqualTo("Hillside Seed Starters");
        assertThat(browser.get("/people").text()).contains("Ilse Brandt Coordinator");
    }

    @Test
    void the_form_proposes_the_season_that_comes_next() {
        Answer page = installation.stranger().get(path());

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.typed("groupSeason")).isEqualTo("2027");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    groupName        |             | Group’s name is empty
                    groupZone        | Middle/Earth| Time zone was 'Middle/Earth'
                    groupTemperature | K           | Temperatures in was 'K'; accepted are: C, F.
                    groupCountry     | XX          | please choose one from the list
                    groupPostcode    |             | Group’s postcode is empty
                    groupSeason      | next        | Season was 'next'; a whole number from 2,000 to 2,200 is accepted.
                    name             |             | Your name is empty
                    passphrase       | short       | Passphrase has 5 characters
                    """)
    void wrong_input_is_explained_and_the_link_stays_open(String field, String typed, String sentence) {
        String path = path();
        Map<String, String> form = new HashMap<>(form());
        form.put(field, typed == null ? "" : typed);

        Answer answer = installation.stranger().postAsIs(path, form);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("postcode")).isEqualTo("55803");
        assertThat(installation.stranger().postAsIs(path, form()).status()).isEqualTo(303);
    }

    @Test
    void a_fresh_link_voids_the_one_before() {
        String before = path();
        String fresh = path();

        assertThat(installation.stranger().get(before).status()).isEqualTo(410);
        assertThat(installation.stranger().get(fresh).status()).isEqualTo(200);
    }

    @Test
    void a_group_is_opened_once_only() {
        String path = path();
        installation.stranger().postAsIs(path, form());

        Answer again = installation.stranger().postAsIs(path, form());

        assertThat(again.status()).isEqualTo(410);
        assertThat(installation.openingPath()).isEmpty();
    }

    @Test
    void before_opening_the_pages_for_strangers_work() {
        Browser stranger = installation.stranger();

        assertThat(stranger.get("/sign-in").status()).isEqualTo(200);
        assertThat(stranger.get("/help").status()).isEqualTo(200);
        assertThat(stranger.get("/people").status()).isEqualTo(303);
        assertThat(stranger.get("/nowhere").status()).isEqualTo(404);
    }

    private String path() {
        return installation.openingPath().orElseThrow();
    }

    private static Map<String, String> form() {
        return Map.of(
                "groupName", "Hillside Seed Starters",
                "groupZone", "America/Chicago",
                "groupTemperature", "F",
                "groupLength", "in",
                "groupCountry", "US",
                "groupPostcode", "55811",
                "groupSeason", "2027",
                "name", "Ilse Brandt",
                "postcode", "55803",
                "passphrase", "green lamp on a shelf");
    }
}
