package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/**
 * Every route whose address names something, asked by a stranger, a member, its owner, a coordinator and their scripts: for what is
 * theirs, for what is somebody else's, and for what is not there. A route that comes later has to be named in the list.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class RoutesByOwnerTest {
    /** Hidden, forbidden, or told that it is not for them to decide. */
    private static final Set<Integer> REFUSED = Set.of(403, 404, 409);

    /** What is gone already, or was never there, is as it should be, and what is wrong with the form is told first. */
    private static final Set<String> NO_404_FOR_WHAT_IS_NOT_THERE = Set.of(
            "POST /ask/gathered/{id}/removal",
            "POST /ask/gathered/{id}/return",
            "POST /frost/stations/{id}/removal",
            "POST /notes/{id}/dismissal",
            "POST /problems/{entry}/dismissal",
            "POST /racks/{id}/clearing",
            "POST /reminders/devices/{id}/test",
            "POST /sowings/{id}/first-choice",
            "POST /sowings/{id}/freed-place",
            "POST /sowings/{id}/surplus/takings");

    /** Done without a word whether it is there or not, and only to what is one's own. */
    private static final Set<String> SAYS_NOTHING =
            Set.of("POST /ask/gathered/{id}/removal", "POST /ask/gathered/{id}/return", "POST /notes/{id}/dismissal");

    /** The form has to name a second thing, somebody has to have asked for it, or it has to be on today's round. */
    private static final Set<String> NEEDS_MORE = Set.of(
            "GET /today/items/{id}",
            "GET /sowings/{id}/seed",
            "POST /sowings/{id}/seed",
            "POST /frost/thermometers/{id}/removed-nights",
            "POST /plans/out-of-service/{id}/moves");

    private OwnedThings things;

    @BeforeAll
    void fill() {
        things = new OwnedThings();
    }

    @AfterAll
    void close() {
        things.close();
    }

    @Test
    @Order(1)
    void every_route_that_names_something_is_in_the_list_and_no_other() {
        Set<String> there = things.rights().stream()
                .filter(right -> right.path().contains("{") && !right.method().equals("HEAD"))
                .filter(right -> !right.path().startsWith("/static/"))
                .map(right -> right.method() + " " + right.path())
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(NamingRoute.all()).extracting(NamingRoute::name).containsExactlyInAnyOrderElementsOf(there);
    }

    @Test
    @Order(2)
    void nobody_gets_at_what_is_not_theirs_and_nothing_changes_by_trying() {
        Map<String, Long> before = rows();
        List<String> let = new ArrayList<>();
        int tried = 0;
        for (NamingRoute route : ofRows()) {
            OwnedThings.Thing thing = things.of(route);
            String address = route.of(thing.id());
            if (ask(things.stranger(), route, address) != turnedAway(route)) {
                let.add("a stranger at " + route.name());
            }
            for (UUID person : notLetIn(route, thing)) {
                tried++;
                int status = ask(person, route, address);
                if (!REFUSED.contains(status) && !(status == 303 && SAYS_NOTHING.contains(route.name()))) {
                    let.add("%d for %s at %s".formatted(status, who(person), route.name()));
                }
            }
        }

        assertThat(let).isEmpty();
        assertThat(tried).isGreaterThan(80);
        assertThat(rows()).isEqualTo(before);
    }

    @Test
    @Order(3)
    void what_is_not_there_is_told_so_to_everybody_and_nothing_changes() {
        Map<String, Long> before = rows();
        Set<String> otherwise = new TreeSet<>();
        List<String> wrong = new ArrayList<>();
        for (NamingRoute route : ofRows()) {
            String address = route.of(UUID.randomUUID());
            int forMember = ask(things.member(), route, address);
            int forCoordinator = ask(things.coordinator(), route, address);
            if (forMember != (isForCoordinators(route) ? 403 : forCoordinator)) {
                wrong.add("%d for a member, %d for a coordinator at %s"
                        .formatted(forMember, forCoordinator, route.name()));
            }
            if (forCoordinator != 404) {
                otherwise.add(route.name());
            }
        }

        assertThat(wrong).isEmpty();
        assertThat(otherwise).isEqualTo(new TreeSet<>(NO_404_FOR_WHAT_IS_NOT_THERE));
        assertThat(rows()).isEqualTo(before);
    }

    /** Last, since some of what is let through is done. */
    @Test
    @Order(4)
    void those_for_whom_a_thing_is_get_through_to_it() {
        List<String> kept = new ArrayList<>();
        for (NamingRoute route : ofRows()) {
            OwnedThings.Thing thing = things.of(route);
            for (UUID person : letIn(route, thing)) {
                int status = ask(person, route, route.of(thing.id()));
                boolean refused = status == 401 || status == 403 || (status == 404 && !needsMore(route));
                if (refused || status >= 500) {
                    kept.add("%d for %s at %s".formatted(status, who(person), route.name()));
                }
            }
        }

        assertThat(kept).isEmpty();
    }

    private static boolean needsMore(NamingRoute route) {
        boolean namesTwo = route.address().indexOf('{') != route.address().lastIndexOf('{');
        return namesTwo || NEEDS_MORE.contains(route.name());
    }

    /** What is only read comes first, then what is written, then what ends a thing. */
    private static List<NamingRoute> ofRows() {
        return NamingRoute.all().stream()
                .filter(NamingRoute::namesARow)
                .sorted(Comparator.comparing(NamingRoute::changes))
                .toList();
    }

    private List<UUID> notLetIn(NamingRoute route, OwnedThings.Thing thing) {
        UUID other = things.anotherThan(thing.owner());
        if (isForCoordinators(route)) {
            return List.of(other, things.member());
        }
        return switch (route.openTo()) {
            case OWNER ->
                thing.owner().equals(things.coordinator()) ? List.of(other) : List.of(other, things.coordinator());
            case OWNER_OR_COORDINATOR -> List.of(other);
            default -> List.of();
        };
    }

    private List<UUID> letIn(NamingRoute route, OwnedThings.Thing thing) {
        if (isForCoordinators(route)) {
            return List.of(things.coordinator());
        }
        return switch (route.openTo()) {
            case OWNER -> List.of(thing.owner());
            case OWNER_OR_COORDINATOR -> List.of(things.coordinator());
            default -> List.of(things.anotherThan(thing.owner()));
        };
    }

    private boolean isForCoordinators(NamingRoute route) {
        return role(route) == Role.COORDINATOR || role(route) == Role.SITE_COORDINATOR;
    }

    private Role role(NamingRoute route) {
        return things.rights().stream()
                .filter(right ->
                        right.method().equals(route.method()) && right.path().equals(route.address()))
                .findFirst()
                .orElseThrow()
                .role();
    }

    private String who(UUID person) {
        return person.equals(things.coordinator()) ? "a coordinator" : "a member";
    }

    private static int turnedAway(NamingRoute route) {
        return route.changes() ? 401 : 303;
    }

    /** Leaves out sign-ins: who was about, and when, is noted whatever they ask for. */
    private Map<String, Long> rows() {
        Map<String, Long> rows = things.rows();
        List.of("member_session", "submission", "program_answer").forEach(rows::remove);
        return rows;
    }

    private int ask(UUID person, NamingRoute route, String address) {
        Browser browser = things.as(person);
        if (!route.isForScripts()) {
            return ask(browser, route, address);
        }
        Answer answer = things.stranger()
                .send(things.stranger()
                        .request(address)
                        .header("Authorization", "Bearer " + things.token(person))
                        .header("Idempotency-Key", UUID.randomUUID().toString())
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString("{}")));
        return answer.status();
    }

    private static int ask(Browser browser, NamingRoute route, String address) {
        return (route.changes() ? browser.post(address, Map.of()) : browser.get(address)).status();
    }
}
