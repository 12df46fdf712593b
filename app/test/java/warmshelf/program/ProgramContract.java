package warmshelf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PROGRAM_ANSWER;
import static warmshelf.db.generated.Tables.THERMOMETER;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.net.http.HttpRequest;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
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
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/** What scripts read and send, on every database. The group's clock stands at 2027-03-01T15:00Z, nine in the morning in Duluth. */
abstract class ProgramContract {
    private TestGroup group;
    private Cellar cellar;
    private String mat;
    private Script sensor;

    protected abstract TestDatabase database();

    @BeforeEach
    void open() {
        group = TestGroup.open(database());
        cellar = Cellar.in(group);
        mat = group.database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq("M1"))
                .fetchSingle(MAT.ID)
                .toString();
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
    void a_reading_is_kept_in_its_members_name_as_if_typed() {
        Answer answer = sensor.post(readings(), "k1", "{\"celsius\": 26.44, \"seenAt\": \"2027-03-01T14:30:00Z\"}");

        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        var entry = group.database()
                .sql()
                .selectFrom(ENTRY)
                .where(ENTRY.MAT_ID.isNotNull())
                .fetchSingle();
        assertThat(Script.json(answer).path("id").asText())
                .isEqualTo(entry.getId().toString());
        assertThat(entry.getCelsius()).isEqualByComparingTo(new BigDecimal("26.4"));
        assertThat(entry.getSeenAt().toInstant()).isEqualTo(Instant.parse("2027-03-01T14:30:00Z"));
        assertThat(entry.getMadeBy()).isEqualTo(group.member().id());
        assertThat(group.database()
                        .sql()
                        .fetchCount(
                                AUDIT_LINE,
                                AUDIT_LINE
                                        .ACTION
                                        .eq("read thermometer")
                                        .and(AUDIT_LINE.MEMBER_ID.eq(
                                                group.member().id()))
                                        .and(AUDIT_LINE.TOKEN_NAME.eq("cellar sensor"))))
                .isEqualTo(1);
    }

    @Test
    void what_a_member_does_on_a_page_names_no_token() {
        sensor.post(readings(), "k1", "{\"celsius\": 26}");
        cellar.coordinator().post("/people/links", Map.of("note", "a neighbour", "role", "member"));

        assertThat(group.database().sql().fetchValues(AUDIT_LINE.ACTION, AUDIT_LINE.TOKEN_NAME.isNotNull()))
                .containsExactly("read thermometer");
    }

    @Test
    void a_reading_without_a_moment_was_read_now() {
        sensor.post(readings(), "k1", "{\"celsius\": 26}");

        assertThat(group.database().sql().fetchValue(ENTRY.SEEN_AT, ENTRY.MAT_ID.isNotNull()))
                .isEqualTo(OffsetDateTime.parse("2027-03-01T15:00:00Z"));
    }

    @Test
    void what_is_sent_twice_counts_once_and_gets_its_first_answer_again() {
        Answer first = sensor.post(readings(), "k1", "{\"celsius\": 26}");
        group.clock().advance(Duration.ofMinutes(5));
        Answer second = sensor.post(readings(), "\"k1\"", "{\"celsius\": 26}");

        assertThat(second.status()).isEqualTo(200);
        assertThat(second.body()).isEqualTo(first.body());
        assertThat(kept()).isEqualTo(1);
    }

    @Test
    void the_same_key_with_other_content_is_refused() {
        sensor.post(readings(), "k1", "{\"celsius\": 26}");

        Answer other = sensor.post(readings(), "k1", "{\"celsius\": 27}");

        assertThat(other.status()).isEqualTo(422);
        assertThat(other.body()).contains("This Idempotency-Key came before with other content");
        assertThat(kept()).isEqualTo(1);
    }

    @Test
    void a_key_whose_content_was_refused_may_come_with_better_content() {
        assertThat(sensor.post(readings(), "k1", "{\"celsius\": 99}").status()).isEqualTo(422);

        assertThat(sensor.post(readings(), "k1", "{\"celsius\": 26}").status()).isEqualTo(200);
    }

    @Test
    void what_was_kept_while_its_answer_was_lost_is_kept_once_after_all() {
        Answer first = sensor.post(readings(), "k1", "{\"celsius\": 26}");
        group.database()
                .sql()
                .update(PROGRAM_ANSWER)
                .setNull(PROGRAM_ANSWER.ANSWER)
                .execute();

        Answer meanwhile = sensor.post(readings(), "k1", "{\"celsius\": 26}");
        group.clock().advance(Duration.ofMinutes(2));
        Answer later = sensor.post(readings(), "k1", "{\"celsius\": 26}");

        assertThat(meanwhile.status()).isEqualTo(409);
        assertThat(meanwhile.header("Retry-After")).isEqualTo("2");
        assertThat(later.status()).isEqualTo(200);
        assertThat(later.body()).isEqualTo(first.body());
        assertThat(kept()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"celsius\": 61}|The temperature in °C was '61'; a number from -10 to 60 is accepted.",
                "{\"celsius\": 1e400}|The temperature in °C was '1E+400'",
                "{\"celsius\": \"26\"}|celsius was \\\"26\\\"; a number is accepted.",
                "{\"celsius\": true}|celsius was true; a number is accepted.",
                "{}|celsius is missing",
                "{\"celsius\": 26, \"fahrenheit\": 80}|fahrenheit is not known here; accepted are: celsius, seenAt.",
                "{\"celsius\": 26, \"seenAt\": \"2027-03-01T15:10:00Z\"}|which is still to come",
                "{\"celsius\": 26, \"seenAt\": \"2026-01-01T00:00:00Z\"}|60 days",
                "{\"celsius\": 26, \"seenAt\": \"2027-03-01\"}|moment such as 2027-03-01T15:00:00Z",
                "{\"celsius\": 26, \"seenAt\": 5}|seenAt was 5; a text in quotation marks is accepted."
            })
    void a_reading_that_cannot_be_used_is_refused_with_its_field_and_nothing_is_kept(String body, String told) {
        Answer answer = sensor.post(readings(), "k1", body);

        assertThat(answer.status()).as(answer.body()).isEqualTo(422);
        assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        assertThat(answer.body()).contains(told);
        assertThat(kept()).isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "26",
                "{\"celsius\": NaN}",
                "{\"celsius\": 26} {}",
                "{\"celsius\": 1, \"celsius\": 2}",
                "{"
            })
    void what_is_no_json_object_is_refused(String body) {
        Answer answer = sensor.post(readings(), "k1", body);

        assertThat(answer.status()).as(answer.body()).isEqualTo(400);
        assertThat(kept()).isZero();
    }

    @Test
    void an_unknown_mat_an_unknown_address_and_another_kind_of_request_are_problems_too() {
        Answer unknown = sensor.post("/mats/" + UUID.randomUUID() + "/readings", "k1", "{\"celsius\": 26}");

        assertThat(unknown.status()).isEqualTo(404);
        assertThat(unknown.body()).contains("There is no such mat");
        assertThat(sensor.get("/nothing").status()).isEqualTo(404);
        assertThat(sensor.get("/nothing").header("Content-Type")).startsWith("application/problem+json");
        assertThat(sensor.get(readings()).status()).isEqualTo(405);
    }

    @Test
    void other_content_too_much_of_it_and_a_missing_key_are_refused() {
        String body = "{\"celsius\": 26}";

        assertThat(sensor.send(sensor.sending(readings(), "k1", body).header("Content-Type", "text/plain"))
                        .status())
                .isEqualTo(415);
        assertThat(sensor.send(sensor.sending(readings(), "k1", body)).status()).isEqualTo(415);
        assertThat(sensor.post(readings(), "k1", "{\"celsius\": 26}" + " ".repeat(10_000_000))
                        .status())
                .isEqualTo(413);
        assertThat(sensor.post(readings(), "two words", body).status()).isEqualTo(400);
        Answer without = sensor.send(sensor.authorized(readings(), "Bearer " + sensor.token())
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
        assertThat(without.status()).isEqualTo(400);
        assertThat(without.body()).contains("Idempotency-Key");
        assertThat(kept()).isZero();
    }

    @Test
    void lists_come_in_parts_that_lead_to_each_other() {
        for (int i = 0; i < 5; i++) {
            cellar.ask(Cellar.peppers());
        }
        Script script = Script.of(group, cellar.member(), TokenScope.SOWINGS, TokenScope.STAYS);

        String address = "/sowings?limit=2&season=2027";
        int seen = 0;
        for (int parts = 0; parts < 3; parts++) {
            JsonNode part = script.json(address);
            seen += part.path("items").size();
            assertThat(part.path("next").isNull()).isEqualTo(parts == 2);
            address = part.path("next").asText().replace("/api/v1", "");
        }
        assertThat(seen).isEqualTo(5);
        assertThat(script.json("/sowings?season=2026").path("items")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "limit=0",
                "limit=201",
                "limit=ten",
                "limit=1&limit=2",
                "after=x",
                "season=1",
                "page=2",
                "from=2027-03-01"
            })
    void what_is_asked_behind_the_question_mark_is_judged(String query) {
        Answer answer = Script.of(group, cellar.member(), TokenScope.SOWINGS).get("/sowings?" + query);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(Script.json(answer).path("errors").path(0).path("field").asText())
                .isEqualTo(query.substring(0, query.indexOf('=')));
    }

    @Test
    void nights_are_kept_all_or_none_and_judged_as_on_their_page() {
        Script script = Script.of(group, cellar.member(), TokenScope.NIGHTS);
        String nights = "/thermometers/" + thermometer("Hall, north wall") + "/nights";

        Answer wrong = script.post(
                nights,
                "k1",
                "{\"nights\": [{\"onDay\": \"2027-02-28\", \"lowestCelsius\": -12.5},"
                        + " {\"onDay\": \"2027-03-02\", \"lowestCelsius\": -9},"
                        + " {\"onDay\": \"2027-02-27\", \"lowestCelsius\": 999}]}");
        Answer right = script.post(
                nights,
                "k2",
                "{\"nights\": [{\"onDay\": \"2027-02-28\", \"lowestCelsius\": -12.54},"
                        + " {\"onDay\": \"2027-03-01\", \"lowestCelsius\": -9}]}");
        Answer again = script.post(nights, "k3", "{\"nights\": [{\"onDay\": \"2027-02-28\", \"lowestCelsius\": -11}]}");

        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body())
                .contains("nights/1/onDay")
                .contains("nights/2/lowestCelsius")
                .doesNotContain("nights/0");
        assertThat(right.body()).contains("\"noted\":2,\"changed\":0");
        assertThat(again.body()).contains("\"noted\":1,\"changed\":1");
        assertThat(group.database()
                        .sql()
                        .select(THERMOMETER_NIGHT.CELSIUS)
                        .from(THERMOMETER_NIGHT)
                        .orderBy(THERMOMETER_NIGHT.ON_DAY)
                        .fetch(row -> row.value1().doubleValue()))
                .containsExactly(-11.0, -9.0);
    }

    @Test
    void a_doubtful_night_is_asked_back_until_the_script_is_sure() {
        Script script = Script.of(group, cellar.member(), TokenScope.NIGHTS);
        String nights = "/thermometers/" + thermometer("Hall, north wall") + "/nights";
        String warm = "{\"nights\": [{\"onDay\": \"2027-02-28\", \"lowestCelsius\": 26}]%s}";

        Answer doubtful = script.post(nights, "k1", warm.formatted(""));
        Answer sure = script.post(nights, "k1", warm.formatted(", \"sure\": true"));

        assertThat(doubtful.status()).isEqualTo(422);
        assertThat(doubtful.body()).contains("If it is right, send it with ‘sure’: true.");
        assertThat(sure.status()).isEqualTo(200);
    }

    @Test
    void a_thermometer_that_is_somebody_elses_or_not_read_any_more_takes_no_nights() {
        Script script = Script.of(group, cellar.member(), TokenScope.NIGHTS);
        String body = "{\"nights\": [{\"onDay\": \"2027-02-28\", \"lowestCelsius\": -5}]}";
        UUID thermometer = thermometer("Hall, north wall");
        group.database()
                .sql()
                .update(THERMOMETER)
                .set(THERMOMETER.MEMBER_ID, group.onDuty().id())
                .execute();

        Answer others = script.post("/thermometers/" + thermometer + "/nights", "k1", body);
        cellar.coordinator().post("/frost/thermometers/" + thermometer + "/retirement");
        Answer retired = Script.of(group, cellar.coordinator(), TokenScope.NIGHTS)
                .post("/thermometers/" + thermometer + "/nights", "k1", body);

        assertThat(others.status()).isEqualTo(404);
        assertThat(retired.status()).isEqualTo(409);
        assertThat(retired.body()).contains("is not read any more");
    }

    @Test
    void ticks_are_judged_as_those_of_a_phone() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.tick(sowing, Map.of("step", "sown", "seenOn", "2027-02-20"));
        Script script = Script.of(group, cellar.member(), TokenScope.TICKS);
        String entry =
                "{\"id\": \"%s\", \"sowing\": \"%s\", \"seenAt\": \"2027-03-01T14:30:00Z\", \"step\": \"look\", \"sprouted\": %d}";
        String body = "{\"sentAt\": \"2027-03-01T15:00:00Z\", \"entries\": [%s, %s]}"
                .formatted(
                        entry.formatted(UUID.randomUUID(), sowing, 3),
                        entry.formatted(UUID.randomUUID(), sowing, 9_999));

        JsonNode answers =
                Script.json(script.post("/round/entries", "k1", body)).path("entries");

        assertThat(answers.path(0).path("answer").asText()).isEqualTo("kept");
        assertThat(answers.path(1).path("answer").asText()).isEqualTo("refused");
        assertThat(answers.path(1).path("sentence").asText()).contains("9999");
        Answer unknown = script.post("/round/entries", "k2", body.replace("sprouted", "sprouting"));
        assertThat(unknown.status()).isEqualTo(422);
        assertThat(unknown.body()).contains("entries/0/sprouting");
    }

    private String readings() {
        return "/mats/" + mat + "/readings";
    }

    private int kept() {
        return group.database().sql().fetchCount(ENTRY, ENTRY.MAT_ID.isNotNull());
    }

    private UUID thermometer(String name) {
        Answer made = cellar.coordinator()
                .post(
                        "/frost/thermometers",
                        Map.of(
                                "name",
                                name,
                                "whose",
                                "group",
                                "where",
                                "point",
                                "latitude",
                                "46.8",
                                "longitude",
                                "-92.1",
                                "elevation",
                                "700"));
        assertThat(made.status()).as(made.text()).isEqualTo(303);
        return group.database().sql().fetchValue(THERMOMETER.ID);
    }
}
