package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class CrossSitePostTest {
    private static final Map<String, String> INVITATION = Map.of("note", "Nadia", "role", "coordinator");

    private TestGroup group;
    private Browser ilse;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_form_without_the_sessions_token_is_refused_and_changes_nothing() {
        Answer answer = ilse.postAsIs("/people/links", INVITATION);

        assertThat(answer.status()).isEqualTo(403);
        assertThat(answer.text()).contains("nothing was changed", "Go back");
        assertThat(ilse.get("/people").text()).contains("No link is open.");
    }

    @Test
    void the_token_of_another_session_is_refused() {
        String other = String.valueOf(group.signedIn(group.coordinator()).token());

        Answer answer = ilse.postAsIs("/people/links", Map.of("note", "Nadia", "role", "coordinator", "csrf", other));

        assertThat(answer.status()).isEqualTo(403);
    }

    @Test
    void a_script_may_send_the_token_in_a_header() {
        Answer answer =
                ilse.send(ilse.form("/people/links", INVITATION).header("X-CSRF-Token", String.valueOf(ilse.token())));

        assertThat(answer.status()).isEqualTo(303);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-site", "same-site"})
    void a_browser_that_says_the_form_is_from_elsewhere_is_believed(String site) {
        Answer answer = ilse.send(ilse.form("/people/links", INVITATION)
                .header("X-CSRF-Token", String.valueOf(ilse.token()))
                .header("Sec-Fetch-Site", site));

        assertThat(answer.status()).isEqualTo(403);
        assertThat(answer.text()).contains("sent from another site’s page");
    }

    @Test
    void nobody_is_signed_in_by_a_form_of_another_site() {
        Browser stranger = group.stranger();

        Answer answer = stranger.send(stranger.form(
                        "/sign-in",
                        Map.of(
                                "name", group.member().name(),
                                "passphrase", group.member().passphrase()))
                .header("Origin", "https://elsewhere.example"));

        assertThat(answer.status()).isEqualTo(403);
        assertThat(answer.cookiesSet()).noneMatch(cookie -> cookie.startsWith("warmshelf="));
    }

    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
                    same-origin, -,                          seeds.example.org,  false
                    none,        -,                          seeds.example.org,  false
                    cross-site,  https://seeds.example.org,  seeds.example.org,  true
                    -,           -,                          seeds.example.org,  false
                    -,           https://seeds.example.org,  10.0.0.7:7070,      false
                    -,           http://10.0.0.7:7070,       10.0.0.7:7070,      false
                    -,           http://10.0.0.7:8080,       10.0.0.7:7070,      true
                    -,           https://seeds.example.org.evil.example, seeds.example.org, true
                    -,           null,                       seeds.example.org,  true
                    """)
    void where_a_form_comes_from_is_read_from_what_the_browser_says(
            String secFetchSite, String origin, String host, boolean elsewhere) {
        assertThat(new CrossSite("https://seeds.example.org").asks(secFetchSite, origin, host))
                .isEqualTo(elsewhere);
    }
}
