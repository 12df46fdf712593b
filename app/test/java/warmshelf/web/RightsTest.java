package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.http.HttpRequest;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.RackTablet;
import warmshelf.testing.TestGroup;

/** Walks over every address there is, so that a new one cannot forget its right. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RightsTest {
    private static final String SENTENCE = "This tablet shows the round of its site and may only tick there.";
    private static final String ANY_ID = "00000000-0000-0001-0000-000000000002";

    private TestGroup group;

    @BeforeAll
    void open() {
        group = TestGroup.open();
    }

    @AfterAll
    void close() {
        group.close();
    }

    @Test
    void a_stranger_gets_no_further_than_the_door_of_anything_that_is_not_for_anyone() {
        for (RouteRight right : group.server().rights()) {
            if (right.role() == Role.ANYONE) {
                continue;
            }
            Answer answer = ask(group.stranger(), right);

            if (right.method().equals("POST") || right.role() == Role.PROGRAM) {
                assertThat(answer.status()).as(right.toString()).isEqualTo(401);
            } else {
                assertThat(answer.status()).as(right.toString()).isEqualTo(303);
                assertThat(answer.location()).as(right.toString()).startsWith("/sign-in?then=%2F");
            }
        }
    }

    @Test
    void a_member_is_refused_at_everything_that_is_for_coordinators() {
        Browser tom = group.signedIn(group.member());
        for (RouteRight right : group.server().rights()) {
            if (right.role() == Role.COORDINATOR || right.role() == Role.SITE_COORDINATOR) {
                assertThat(ask(tom, right).status()).as(right.toString()).isEqualTo(403);
            }
        }
    }

    @Test
    void scripts_of_strangers_get_json_and_no_redirect() {
        for (RouteRight right : group.server().rights()) {
            boolean forPeople = right.role() != Role.ANYONE && right.role() != Role.PROGRAM;
            if (forPeople && right.method().equals("GET")) {
                Answer answer = group.stranger().getJson(path(right));

                assertThat(answer.status()).as(right.toString()).isEqualTo(401);
                assertThat(answer.header("Content-Type")).startsWith("application/json");
                assertThat(answer.body()).contains("\"error\":\"You are signed out");
            }
        }
    }

    @Test
    void a_browsers_sign_in_opens_nothing_that_is_for_programs() {
        Browser coordinator = group.signedIn(group.coordinator());
        for (RouteRight right : group.server().rights()) {
            if (right.role() == Role.PROGRAM) {
                assertThat(ask(coordinator, right).status())
                        .as(right.toString())
                        .isEqualTo(401);
            }
        }
    }

    @Test
    void the_addresses_open_to_anyone_are_these_and_no_others() {
        Set<String> open = new TreeSet<>();
        group.server().rights().stream()
                .filter(right -> right.role() == Role.ANYONE)
                .forEach(right -> open.add(right.path()));

        assertThat(open)
                .containsExactly(
                        "/",
                        "/api/v1/openapi.json",
                        "/calendar/{token}",
                        "/health",
                        "/health/live",
                        "/help",
                        "/in/{token}",
                        "/join/{token}",
                        "/manifest.webmanifest",
                        "/numbers",
                        "/offline",
                        "/open/{token}",
                        "/privacy",
                        "/sign-in",
                        "/sign-in/passkey",
                        "/sign-in/passkey/question",
                        "/static/{hash}/<file>",
                        "/tablet/{token}",
                        "/worker.js");
    }

    @Test
    void a_tablet_at_a_rack_gets_at_the_round_and_at_nothing_else() {
        Browser coordinator = group.signedIn(group.coordinator());
        String site = RackTablet.site(coordinator, "Hall cellar");
        Browser tablet = RackTablet.opened(group.stranger(), RackTablet.link(coordinator, "Cellar", site));
        Set<String> open = new TreeSet<>();
        for (RouteRight right : group.server().rights()) {
            if (right.role() == Role.TABLET) {
                open.add(right.path());
                Answer answer = ask(tablet, right);

                assertThat(answer.status()).as(right.toString()).isNotEqualTo(401);
                assertThat(answer.location()).as(right.toString()).doesNotContain("sign-in");
                assertThat(answer.text()).as(right.toString()).doesNotContain(SENTENCE);
            } else if (right.role() != Role.ANYONE && right.role() != Role.PROGRAM) {
                Answer answer = ask(tablet, right);

                assertThat(answer.status()).as(right.toString()).isEqualTo(403);
                assertThat(right.method().equals("HEAD") ? SENTENCE : answer.text())
                        .as(right.toString())
                        .contains(SENTENCE);
            }
        }

        assertThat(open)
                .containsExactly(
                        "/mats/{id}/readings",
                        "/round/entries",
                        "/round/photos",
                        "/sowings/{id}/entries",
                        "/sowings/{id}/entry",
                        "/today",
                        "/today/items/{id}",
                        "/today/looker");
    }

    /** What it sends back would hold the cookie, which no script is to see. */
    @Test
    void trace_is_refused_at_every_address_and_sends_nothing_back() {
        Browser coordinator = group.signedIn(group.coordinator());
        for (RouteRight right : group.server().rights()) {
            Answer answer = coordinator.send(coordinator
                    .request(path(right))
                    .header("X-Marked", "warm trays")
                    .method("TRACE", HttpRequest.BodyPublishers.noBody()));

            assertThat(answer.status()).as(right.toString()).isIn(403, 404, 405);
            assertThat(answer.body()).as(right.toString()).doesNotContain("warm trays", "warmshelf=");
        }
    }

    @Test
    void a_route_without_exactly_one_role_stops_the_start() {
        Pages roleless = routes -> routes.get("/forgotten", ctx -> ctx.result("open to all"));
        Pages twofold = routes -> routes.get("/unclear", ctx -> ctx.result("for whom?"), Role.MEMBER, Role.ANYONE);

        assertThatThrownBy(() -> TestGroup.with(roleless))
                .hasMessageContaining("GET /forgotten: each route names exactly one role");
        Pages nowhere = routes -> routes.get("/jars/{id}", ctx -> ctx.result("where?"), Role.SITE_COORDINATOR);
        assertThatThrownBy(() -> TestGroup.with(nowhere))
                .hasMessageContaining("GET /jars/{id}: nobody can say at which site that is");
        assertThatThrownBy(() -> TestGroup.with(twofold)).hasMessageContaining("GET /unclear");
    }

    private static Answer ask(Browser browser, RouteRight right) {
        return switch (right.method()) {
            case "POST" -> browser.post(path(right), Map.of());
            case "HEAD" ->
                browser.send(browser.request(path(right)).method("HEAD", HttpRequest.BodyPublishers.noBody()));
            default -> browser.get(path(right));
        };
    }

    private static String path(RouteRight right) {
        return right.path().replaceAll("[{<][^}>]*[}>]", ANY_ID);
    }
}
