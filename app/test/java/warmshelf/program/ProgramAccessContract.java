package warmshelf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/** Who comes in by a token, and how often, on every database. The group's clock stands at 2027-03-01T15:00Z. */
abstract class ProgramAccessContract {
    private TestGroup group;
    private Cellar cellar;
    private Script sensor;

    protected abstract TestDatabase database();

    @BeforeEach
    void open() {
        group = TestGroup.open(database());
        cellar = Cellar.in(group);
        sensor = Script.of(group, cellar.member(), TokenScope.READINGS);
    }

    @AfterEach
    void close() {
        // null where the database is missing and the test is skipped
        if (cellar != null) {
            cellar.close();
        }
    }

    @Test
    void a_token_that_lacks_the_scope_is_told_which() {
        Answer answer = sensor.get("/lots");

        assertThat(answer.status()).isEqualTo(403);
        assertThat(answer.header("WWW-Authenticate"))
                .isEqualTo("Bearer realm=\"warmshelf\", error=\"insufficient_scope\", scope=\"lots:read\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Bearer", "Bearer a b", "Bearer ä", "Basic abc", "Bearer warmshelf_unknown"})
    void whoever_has_no_good_token_is_asked_for_one(String authorization) {
        Answer answer = sensor.send(sensor.authorized("/token", authorization).GET());

        assertThat(answer.status()).isEqualTo(401);
        assertThat(answer.header("WWW-Authenticate")).startsWith("Bearer realm=\"warmshelf\", error=\"invalid_token\"");
        assertThat(answer.body()).contains("\"status\":401");
    }

    @Test
    void a_token_in_an_address_is_refused_even_where_one_came_in_the_header() {
        Answer answer = sensor.get("/token?access_token=" + sensor.token());

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()).contains("A token stands in the address").doesNotContain(sensor.token());
    }

    @Test
    void a_token_works_through_its_last_day_and_no_longer() {
        Script script = Script.with(
                group,
                Script.token(
                        cellar.member(), Map.of("name", "for a day", "endsOn", "2027-03-02"), TokenScope.READINGS));

        // 23:59 on that day in Duluth, which is UTC-6
        group.clock().set(Instant.parse("2027-03-03T05:59:00Z"));
        assertThat(script.get("/token").status()).isEqualTo(200);
        group.clock().set(Instant.parse("2027-03-03T06:00:00Z"));
        Answer ended = script.get("/token");

        assertThat(ended.status()).isEqualTo(401);
        assertThat(ended.body()).contains("This token worked until 2027-03-02");
    }

    @Test
    void a_revoked_token_lets_nobody_in_and_its_day_of_use_stays() {
        sensor.get("/token");
        String id = group.database().sql().fetchValue(PROGRAM_TOKEN.ID).toString();
        assertThat(group.database().sql().fetchValue(PROGRAM_TOKEN.LAST_USED_ON))
                .isEqualTo(LocalDate.of(2027, 3, 1));

        cellar.member().post("/tokens/" + id + "/revocation");

        assertThat(sensor.get("/token").status()).isEqualTo(401);
        assertThat(sensor.get("/token").body()).contains("This token was revoked");
    }

    @Test
    void whoever_left_has_no_working_token_and_none_again_when_they_come_back() {
        String leaving = "/people/" + group.member().id() + "/leaving";
        assertThat(cellar.coordinator().post(leaving).status()).isEqualTo(303);
        Answer gone = sensor.get("/token");
        cellar.coordinator().post("/people/" + group.member().id() + "/return");
        Answer back = sensor.get("/token");

        assertThat(gone.status()).isEqualTo(401);
        assertThat(gone.body()).contains("has left the group");
        assertThat(back.status()).isEqualTo(401);
        assertThat(back.body()).contains("This token was revoked");
    }

    @Test
    void a_token_does_no_more_than_its_member_may_at_that_moment() {
        cellar.ask(Cellar.peppers());
        Script script = Script.of(group, cellar.coordinator(), TokenScope.SOWINGS);
        assertThat(script.json("/sowings").path("items")).hasSize(1);
        assertThat(Script.of(group, group.signedIn(group.onDuty()), TokenScope.SOWINGS)
                        .json("/sowings")
                        .path("items"))
                .isEmpty();

        cellar.coordinator().post("/people/" + group.member().id() + "/role", Map.of("role", "coordinator"));
        cellar.member().post("/people/" + group.coordinator().id() + "/role", Map.of("role", "member"));

        assertThat(script.json("/sowings").path("items")).isEmpty();
        assertThat(script.json("/token").path("coordinator").asBoolean()).isFalse();
    }

    @Test
    void whoever_asks_too_often_is_told_how_long_to_wait() {
        for (int i = 0; i < 120; i++) {
            assertThat(sensor.get("/token").status()).isEqualTo(200);
        }
        Answer tooOften = sensor.get("/token");
        group.clock().advance(Duration.ofSeconds(1));

        assertThat(tooOften.status()).isEqualTo(429);
        assertThat(tooOften.header("Retry-After")).isEqualTo("1");
        assertThat(tooOften.body()).contains("\"status\":429");
        assertThat(sensor.get("/token").status()).isEqualTo(200);
    }

    @Test
    void wrong_tokens_are_slowed_down_by_their_address_while_good_ones_go_on() {
        for (int i = 0; i < 20; i++) {
            assertThat(Script.with(group, "warmshelf_" + i).get("/token").status())
                    .isEqualTo(401);
        }
        assertThat(Script.with(group, "warmshelf_x").get("/token").status()).isEqualTo(429);
        assertThat(sensor.get("/token").status()).isEqualTo(200);
    }
}
