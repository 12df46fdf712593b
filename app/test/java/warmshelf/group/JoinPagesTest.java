package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class JoinPagesTest {
    private TestGroup group;

    @BeforeEach
    void open() {
        group = TestGroup.open();
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void the_page_says_who_invites_to_what() {
        Answer page = group.stranger().get(group.invitation(false));

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains("Ilse invites you to join as a member", TestGroup.NAME);
    }

    @Test
    void a_person_joins_by_the_link_and_is_signed_in() {
        Browser browser = group.stranger();

        Answer answer = browser.postAsIs(group.invitation(false), person());

        assertThat(answer.status()).isEqualTo(303);
        assertThat(browser.get("/people").text()).contains("Nadia Kowal").doesNotContain("Invite someone");
    }

    @Test
    void a_link_for_a_coordinator_makes_one() {
        Browser browser = group.stranger();

        browser.postAsIs(group.invitation(true), person());

        assertThat(browser.get("/people").text()).contains("Invite someone");
    }

    @Test
    void a_link_used_twice_is_refused_with_the_reason() {
        String path = group.invitation(false);
        group.stranger().postAsIs(path, person());

        Answer again = group.stranger().postAsIs(path, person("name", "Second Comer"));

        assertThat(again.status()).isEqualTo(410);
        assertThat(again.text()).contains("This link has been used already; it works once only.");
        assertThat(group.signedIn(group.member()).get("/people").text()).doesNotContain("Second Comer");
    }

    @Test
    void of_many_people_with_one_link_at_the_same_moment_one_gets_in() throws Exception {
        String path = group.invitation(false);
        ExecutorService crowd = Executors.newFixedThreadPool(6);

        List<Future<Integer>> answers = crowd.invokeAll(IntStream.range(0, 6)
                .mapToObj(i -> (Callable<Integer>) () -> group.stranger()
                        .postAsIs(path, person("name", "Comer " + i))
                        .status())
                .toList());
        crowd.shutdown();

        assertThat(answers).extracting(Future::get).containsOnly(303, 410).containsOnlyOnce(303);
    }

    @Test
    void an_expired_link_is_gone_and_an_unknown_one_is_not_found() {
        String path = group.invitation(false);
        group.clock().advance(Duration.ofDays(15));

        assertThat(group.stranger().get(path).status()).isEqualTo(410);
        assertThat(group.stranger().get("/join/" + Token.random()).status()).isEqualTo(404);
    }

    @Test
    void a_link_for_one_purpose_does_not_serve_another() {
        String token = group.invitation(true).substring("/join/".length());

        assertThat(group.stranger().get("/in/" + token).status()).isEqualTo(404);
        assertThat(group.stranger().get("/open/" + token).status()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    name       |                    | Your name is empty
                    name       | TOM okafor         | somebody here has already
                    country    | XX                 | please choose one from the list
                    postcode   |                    | Your postcode is empty
                    postcode   | 55<04              | Your postcode was '55<04', which is not one of the United States
                    postcode   | 55840              | similar ones are
                    passphrase | short              | Passphrase has 5 characters; from 12 to 200 are accepted
                    passphrase | aaaabbbbccccdddd   | repeats the same few characters
                    passphrase | nadia  kowal       | is your name
                    """)
    void wrong_input_is_explained_and_the_rest_is_kept(String field, String typed, String sentence) {
        String path = group.invitation(false);

        Answer answer = group.stranger().postAsIs(path, person(field, typed == null ? "" : typed));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed(field.equals("postcode") ? "name" : "postcode"))
                .isEqualTo(field.equals("postcode") ? "Nadia Kowal" : "55812");
        assertThat(group.stranger().postAsIs(path, person()).status()).isEqualTo(303);
    }

    @Test
    void a_postcode_of_another_country_is_taken_by_its_form() {
        String path = group.invitation(false);
        Map<String, String> abroad = new HashMap<>(person("country", "CA"));
        abroad.put("postcode", "p7b 1a1");
        Browser browser = group.stranger();

        Answer answer = browser.postAsIs(path, abroad);

        assertThat(answer.status()).isEqualTo(303);
        assertThat(browser.get("/settings").typed("postcode")).isEqualTo("P7B 1A1");
    }

    @Test
    void a_passphrase_is_never_shown_again() {
        Answer answer = group.stranger().postAsIs(group.invitation(false), person("postcode", ""));

        assertThat(answer.body()).doesNotContain("green lamp on a shelf");
    }

    @Test
    void a_name_full_of_marks_is_shown_as_typed_and_never_as_markup() {
        Browser browser = group.stranger();

        browser.postAsIs(group.invitation(false), person("name", "<b>Bo</b> & \"co\""));

        assertThat(browser.get("/people").body())
                .contains("&lt;b&gt;Bo&lt;/b&gt; &amp; &quot;co&quot;")
                .doesNotContain("<b>Bo");
    }

    @Test
    void a_name_of_ten_megabytes_is_refused_with_a_page_and_a_long_one_with_a_sentence() {
        String path = group.invitation(false);

        Answer huge = group.stranger().postAsIs(path, person("name", "n".repeat(10_000_000)));
        Answer longer = group.stranger().postAsIs(path, person("name", "n".repeat(100_000)));

        assertThat(huge.status()).isEqualTo(413);
        assertThat(huge.text()).contains("at most 1 MB is accepted");
        assertThat(longer.status()).isEqualTo(422);
        assertThat(longer.text()).contains("Your name has 100,000 characters; at most 60 fit.");
    }

    @Test
    void joining_leaves_a_line_that_says_who_and_how() {
        group.stranger().postAsIs(group.invitation(false), person());

        assertThat(group.database()
                        .sql()
                        .fetch("select action, detail from audit_line")
                        .formatCSV())
                .contains("join,by a link: a neighbour");
    }

    private static Map<String, String> person() {
        return Map.of(
                "name", "Nadia Kowal",
                "country", "US",
                "postcode", "55812",
                "passphrase", "green lamp on a shelf");
    }

    private static Map<String, String> person(String field, String typed) {
        Map<String, String> person = new HashMap<>(person());
        person.put(field, typed);
        return person;
    }
}
