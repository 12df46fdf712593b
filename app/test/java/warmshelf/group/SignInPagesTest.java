package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

class SignInPagesTest {
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
    void a_member_signs_in_by_name_in_any_capitals_and_passphrase() {
        Browser browser = group.stranger();

        Answer answer = signIn(browser, "  tom  OKAFOR ", group.member().passphrase());

        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/");
        assertThat(browser.get("/settings").text()).contains("Tom Okafor");
    }

    @Test
    void the_session_cookie_cannot_be_read_by_scripts_and_does_not_cross_sites() {
        Answer answer = signIn(group.stranger(), "Tom Okafor", group.member().passphrase());

        assertThat(answer.cookiesSet())
                .filteredOn(cookie -> cookie.startsWith("warmshelf="))
                .singleElement()
                .asString()
                .contains("HttpOnly", "SameSite=Lax", "Path=/", "Max-Age=34560000");
    }

    @Test
    void whoever_comes_by_every_few_weeks_stays_signed_in_all_year() {
        Browser browser = group.stranger();
        Answer signedIn = signIn(browser, "Tom Okafor", group.member().passphrase());
        Instant forgotten = group.clock().instant().plusSeconds(maxAge(signedIn));

        for (int visit = 1; visit <= 18; visit++) {
            group.clock().advance(Duration.ofDays(20));

            assertThat(browser.get("/settings").status()).as("visit " + visit).isEqualTo(200);
            assertThat(group.clock().instant())
                    .as("the browser still has the cookie at visit " + visit)
                    .isBefore(forgotten);
        }
    }

    @Test
    void whoever_stays_away_for_longer_than_a_month_signs_in_again() {
        Browser browser = group.stranger();
        signIn(browser, "Tom Okafor", group.member().passphrase());

        group.clock().advance(Duration.ofDays(30).plusSeconds(1));

        assertThat(browser.get("/settings").location()).isEqualTo("/sign-in?then=%2Fsettings");
        assertThat(browser.post("/settings", Map.of("name", "Tom")).status()).isEqualTo(401);
    }

    private static long maxAge(Answer answer) {
        return Long.parseLong(answer.cookiesSet().get(0).replaceAll(".*Max-Age=(\\d+).*", "$1"));
    }

    @Test
    void a_token_planted_before_signing_in_opens_nothing_afterwards() {
        Browser browser = group.stranger();
        browser.setCookie("warmshelf", "planted");

        signIn(browser, "Tom Okafor", group.member().passphrase());
        Browser planter = group.stranger();
        planter.setCookie("warmshelf", "planted");

        assertThat(browser.cookie("warmshelf")).isNotEqualTo("planted");
        assertThat(planter.get("/people").status()).isEqualTo(303);
    }

    @Test
    void signing_in_again_ends_the_session_before() {
        Browser browser = group.signedIn(group.member());
        String before = browser.cookie("warmshelf");

        signIn(browser, "Tom Okafor", group.member().passphrase());
        Browser old = group.stranger();
        old.setCookie("warmshelf", String.valueOf(before));

        assertThat(old.get("/people").status()).isEqualTo(303);
        assertThat(browser.get("/people").status()).isEqualTo(200);
    }

    @Test
    void a_wrong_passphrase_and_an_unknown_name_get_the_same_answer_and_the_name_is_kept() {
        Answer wrong = signIn(group.stranger(), "Tom Okafor", "three cold trays");
        Answer unknown = signIn(group.stranger(), "Nobody Here", "three cold trays");

        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.typed("name")).isEqualTo("Tom Okafor");
        assertThat(wrong.body()).doesNotContain("three cold trays");
        assertThat(wrong.text().replace("Tom Okafor", ""))
                .isEqualTo(unknown.text().replace("Nobody Here", ""));
        assertThat(wrong.text()).contains("No one here has this name with this passphrase");
    }

    @Test
    void an_empty_form_says_what_is_missing() {
        Answer answer = signIn(group.stranger(), "", "");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Your name is empty").contains("Passphrase is empty");
    }

    @Test
    void after_signing_in_one_is_where_one_wanted_to_be() {
        Browser browser = group.stranger();

        Answer turnedAway = browser.get("/people?order=name");
        Answer page = browser.get(turnedAway.location());

        assertThat(turnedAway.status()).isEqualTo(303);
        assertThat(page.typed("then")).isEqualTo("/people?order=name");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example", "people", "/a\nb"})
    void signing_in_never_leads_to_another_site(String wanted) {
        Answer answer = group.stranger()
                .postAsIs(
                        "/sign-in",
                        Map.of(
                                "name",
                                "Tom Okafor",
                                "passphrase",
                                group.member().passphrase(),
                                "then",
                                wanted));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/");
    }

    @Test
    void guessing_one_name_is_stopped_after_ten_tries_and_the_wait_is_told() {
        for (int i = 0; i < 10; i++) {
            assertThat(signIn(group.stranger(), "Tom Okafor", "guess number " + i)
                            .status())
                    .isEqualTo(422);
        }

        Answer eleventh = signIn(group.stranger(), "Tom Okafor", group.member().passphrase());
        group.clock().advance(Duration.ofMinutes(1));
        Answer later = signIn(group.stranger(), "Tom Okafor", group.member().passphrase());

        assertThat(eleventh.status()).isEqualTo(429);
        assertThat(eleventh.text()).contains("Please wait 60 seconds");
        assertThat(later.status()).isEqualTo(303);
    }

    @Test
    void a_device_that_signed_in_before_lets_its_owner_in_while_others_guess_at_the_name() {
        Browser own = group.stranger();
        signIn(own, "Tom Okafor", group.member().passphrase());
        own.post("/sign-out");
        guessOften("Tom Okafor");

        assertThat(signIn(group.stranger(), "Tom Okafor", group.member().passphrase())
                        .status())
                .isEqualTo(429);
        assertThat(signIn(own, "Tom Okafor", group.member().passphrase()).status())
                .isEqualTo(303);
    }

    @Test
    void a_device_is_known_for_its_owner_only_and_has_no_endless_tries_either() {
        Browser own = group.stranger();
        signIn(own, "Tom Okafor", group.member().passphrase());
        own.post("/sign-out");
        guessOften(group.coordinator().name());

        assertThat(signIn(own, group.coordinator().name(), group.coordinator().passphrase())
                        .status())
                .isEqualTo(429);
        for (int i = 0; i < 10; i++) {
            signIn(own, "Tom Okafor", "guess number " + i);
        }
        assertThat(signIn(own, "Tom Okafor", "one more guess").status()).isEqualTo(429);
    }

    @Test
    void guessing_at_a_name_from_outside_does_not_keep_its_owner_from_changing_the_passphrase() {
        Browser own = group.signedIn(group.member());
        guessOften("Tom Okafor");

        Answer changed = own.post(
                "/settings/passphrase",
                Map.of("current", group.member().passphrase(), "passphrase", "four cold frames outside"));

        assertThat(changed.status()).isEqualTo(303);
    }

    private void guessOften(String name) {
        for (int i = 0; i < 11; i++) {
            signIn(group.stranger(), name, "guess number " + i);
        }
    }

    @Test
    void a_session_not_used_for_thirty_days_ends_and_a_used_one_goes_on() {
        Browser used = group.signedIn(group.member());
        Browser unused = group.signedIn(group.member());

        group.clock().advance(Duration.ofDays(20));
        used.get("/people");
        group.clock().advance(Duration.ofDays(20));

        assertThat(used.get("/people").status()).isEqualTo(200);
        assertThat(unused.get("/people").status()).isEqualTo(303);
    }

    @Test
    void signing_out_ends_the_session_itself_and_not_only_the_cookie() {
        Browser browser = group.signedIn(group.member());
        String token = String.valueOf(browser.cookie("warmshelf"));

        Answer answer = browser.post("/sign-out");
        browser.setCookie("warmshelf", token);

        assertThat(answer.location()).isEqualTo("/sign-in");
        assertThat(browser.get("/people").status()).isEqualTo(303);
    }

    @Test
    void a_stolen_database_holds_no_token_that_opens_a_session() {
        Browser browser = group.signedIn(group.member());

        String stored =
                group.database().sql().fetch("select * from member_session").formatCSV();

        assertThat(stored).doesNotContain(String.valueOf(browser.cookie("warmshelf")));
    }

    @Test
    void reading_a_sign_in_link_does_not_use_it_up_but_signing_in_does() {
        String path = signInLink(1);

        Answer preview = group.stranger().get(path);
        Answer first = group.stranger().postAsIs(path, Map.of());
        Answer second = group.stranger().postAsIs(path, Map.of());

        assertThat(preview.text()).contains("Sign in as Tom Okafor");
        assertThat(first.status()).isEqualTo(303);
        assertThat(second.status()).isEqualTo(410);
        assertThat(second.text()).contains("This link has been used already");
    }

    @Test
    void a_sign_in_link_can_set_a_new_passphrase() {
        Answer byLink = group.stranger().postAsIs(signInLink(1), Map.of("passphrase", "a lamp over lettuce"));

        assertThat(byLink.status()).isEqualTo(303);
        assertThat(signIn(group.stranger(), "Tom Okafor", "a lamp over lettuce").status())
                .isEqualTo(303);
        assertThat(signIn(group.stranger(), "Tom Okafor", group.member().passphrase())
                        .status())
                .isEqualTo(422);
    }

    @Test
    void a_new_passphrase_that_is_too_short_leaves_the_link_unused() {
        String path = signInLink(1);

        Answer answer = group.stranger().postAsIs(path, Map.of("passphrase", "short"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("New passphrase has 5 characters; from 12 to 200 are accepted");
        assertThat(group.stranger().postAsIs(path, Map.of()).status()).isEqualTo(303);
    }

    @Test
    void a_sign_in_link_ends_after_a_day_and_an_unknown_one_is_not_found() {
        String once = signInLink(1);
        String lasting = signInLink(null);
        group.clock().advance(Duration.ofHours(25));

        assertThat(group.stranger().get(once).status()).isEqualTo(410);
        assertThat(group.stranger().get(lasting).status())
                .as("one for a demo, which may run for weeks")
                .isEqualTo(200);
        assertThat(group.stranger().get("/in/" + Token.random()).status()).isEqualTo(404);
    }

    private String signInLink(@Nullable Integer uses) {
        Person tom = group.member();
        Member member =
                new MemberStore(group.database(), group.audit()).find(tom.id()).orElseThrow();
        String token = new LinkStore(group.database(), group.audit())
                .makeSignIn(member, group.coordinator().id(), uses);
        return LinkPurpose.SIGN_IN.address(token);
    }

    private static Answer signIn(Browser browser, String name, String passphrase) {
        return browser.postAsIs("/sign-in", Map.of("name", name, "passphrase", passphrase));
    }
}
