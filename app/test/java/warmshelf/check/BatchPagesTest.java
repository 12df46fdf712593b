package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;

import java.net.http.HttpRequest;
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
import warmshelf.testing.Browser;

/** What a phone sends, over the wire. The group's clock stands at 2027-03-01T15:00Z, nine in the morning in Duluth. */
class BatchPagesTest {
    private static final String SENT = "\"sentAt\":\"2027-03-01T15:00:00Z\"";
    private static final String SEEN = "\"seenAt\":\"2027-03-01T14:30:00Z\"";

    private Cellar cellar;
    private String sowing;

    @BeforeEach
    void sow() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
        cellar.tick(sowing, Map.of("step", "sown", "seenOn", "2027-02-20"));
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void ticks_and_readings_are_kept_with_the_moment_they_were_seen_and_answered_one_by_one() {
        UUID tick = UUID.randomUUID();
        String mat = mat();

        Answer answer = send(batch(look(tick, "\"sprouted\":3"), reading(UUID.randomUUID(), mat, "\"80\"")));

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body())
                .contains("\"id\":\"" + tick + "\",\"answer\":\"kept\",\"sentence\":\"\",\"again\":false");
        assertThat(seenAt(tick)).isEqualTo(OffsetDateTime.parse("2027-03-01T14:30:00Z"));
        assertThat(send(batch(look(tick, "\"sprouted\":3"))).body()).contains("\"answer\":\"kept-before\"");
        assertThat(entries()).isEqualTo(2);
        assertThat(cellar.group().database().sql().fetchCount(ENTRY, ENTRY.MAT_ID.isNotNull()))
                .isEqualTo(1);
    }

    @Test
    void a_look_that_was_entered_already_is_answered_with_the_entry_that_stands_for_it() {
        UUID first = UUID.randomUUID();
        UUID second = UUID.randomUUID();
        send(batch(look(first, "\"sprouted\":3")));

        Answer answer = send(batch(look(second, "\"sprouted\":3")));

        assertThat(answer.body())
                .contains("\"id\":\"" + second + "\",\"answer\":\"kept-before\"")
                .contains("You had entered the same look already, so nothing was added.")
                .contains("\"entry\":\"" + first + "\"");
        assertThat(entries()).isEqualTo(2);
    }

    @Test
    void what_a_grower_gives_away_is_offered_with_the_tick_that_waited_on_the_phone() {
        send(batch(look(UUID.randomUUID(), "\"sprouted\":14,\"giveAway\":4")));

        assertThat(cellar.coordinator().get("/surplus").text()).contains("Lantern Row 4 of Tom");
    }

    @Test
    void whoever_is_signed_out_is_told_so_in_json_and_not_sent_elsewhere() {
        Answer answer = send(cellar.group().stranger(), batch(look(UUID.randomUUID(), "\"sprouted\":3")));

        assertThat(answer.status()).isEqualTo(401);
        assertThat(answer.body()).isEqualTo("{\"signIn\":true}");
        assertThat(entries()).isEqualTo(1);
    }

    @Test
    void nothing_is_kept_under_another_members_name() {
        String body = "{%s,\"member\":\"%s\",\"entries\":[%s]}"
                .formatted(SENT, cellar.group().onDuty().id(), look(UUID.randomUUID(), "\"sprouted\":3"));

        Answer answer = send(body);

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.body()).isEqualTo("{\"otherMember\":true}");
        assertThat(entries()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"Sec-Fetch-Site, cross-site", "Sec-Fetch-Site, same-site", "Origin, https://elsewhere.example"})
    void another_sites_page_sends_nothing(String header, String value) {
        Answer answer = cellar.member()
                .send(request(cellar.member(), batch(look(UUID.randomUUID(), "\"sprouted\":3")))
                        .header(header, value));

        assertThat(answer.status()).isEqualTo(403);
        assertThat(entries()).isEqualTo(1);
    }

    @Test
    void a_form_of_any_site_is_not_taken() {
        Answer answer = cellar.member().postAsIs("/round/entries", Map.of("entries", "[]"));

        assertThat(answer.status()).isEqualTo(415);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "~~ | What was sent has no list 'entries'.",
                "nonsense | What was sent is not JSON.",
                "[] | What was sent has no list 'entries'.",
                "{\"entries\":[]} | 'sentAt' was ''; a moment such as 2027-03-01T15:00:00Z is accepted.",
                "{\"entries\":[],\"sentAt\":\"soon\"} | 'sentAt' was 'soon'; a moment",
                "{\"entries\":[],\"sentAt\":\"+99999-01-01T00:00:00Z\"} | 'sentAt' was '+99999-01-01T00:00:00Z'; a"
                        + " moment",
                "{\"entries\":[]} trailing | What was sent is not JSON."
            })
    void what_cannot_be_read_as_a_whole_is_a_bad_request_with_the_reason(String body, String sentence) {
        Answer answer = send(body);

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()).contains(sentence);
    }

    @Test
    void two_hundred_at_once_are_taken_and_not_one_more() {
        String[] ticks = new String[201];
        for (int i = 0; i < ticks.length; i++) {
            ticks[i] = look(new UUID(5, i), "\"sprouted\":0,\"note\":\"look " + i + "\"");
        }

        assertThat(send(batch(ticks)).body())
                .contains("'entries' holds 201 entries; at most 200 are accepted at once.");
        ticks[200] = "null";
        assertThat(send(batch(java.util.Arrays.copyOf(ticks, 200))).status()).isEqualTo(200);
        assertThat(entries()).isEqualTo(201);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"sprouted\":-1 | Sprouted so far was '-1'; a whole number from 0 to",
                "\"sprouted\":1.5 | Sprouted so far was '1.5'",
                "\"sprouted\":999 | Sprouted so far was '999'",
                "\"sprouted\":true | 'sprouted' was 'true'; text or a number is accepted.",
                "\"sprouted\":[3] | 'sprouted' was '…'; text or a number is accepted.",
                "\"finished\":\"yes\" | 'finished' was 'yes'; true or false is accepted.",
                "\"step\":\"danced\" | What was done was 'danced'; accepted are: look,",
                "\"step\":\"planted-out\" | 'planted out' cannot follow that.",
                "\"step\":\"reading\" | 'thermometer read' cannot follow that.",
                "\"step\":\"undone\" | 'taken back' cannot follow that.",
                "\"problem\":\"frogs\" | The problem was 'frogs'; accepted are: dry,",
                "\"note\":\"\\u0007\" | The note holds a control character",
                "\"lightPlace\":\"window\" | The place under the light was not one of those offered",
                "\"supersedes\":\"x\" | The corrected entry is not a UUID.",
                "\"supersedes\":\"00000000-0000-0000-0000-000000000007\" | The entry to correct is not one of this"
                        + " sowing's.",
                "\"id\":\"7\" | 'id' was '7'; a UUID made by the phone is accepted.",
                "\"sowing\":\"7\" | There is no such sowing.",
                "\"sowing\":null | There is no such sowing.",
                "\"sowing\":\"00000000-0000-0000-0000-000000000007\" | There is no such sowing.",
                "\"seenAt\":\"soon\" | 'seenAt' was 'soon'; a moment such as",
                "\"seenAt\":null | 'seenAt' was ''; a moment such as",
                "\"seenAt\":\"2027-03-01T15:02:01Z\" | It was ticked or read at 2027-03-01T09:02:01 by this device's clock,"
                        + " which is still to come.",
                "\"seenAt\":\"2026-12-29T15:00:00Z\" | The day it was seen was 2026-12-29; at most 60 days back is"
                        + " accepted."
            })
    void a_fault_is_named_and_what_is_beside_it_is_kept(String field, String sentence) {
        UUID good = UUID.randomUUID();

        Answer answer = send(batch(look(UUID.randomUUID(), field), look(good, "\"sprouted\":1")));

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body())
                .contains(sentence, "\"answer\":\"refused\"", "\"id\":\"" + good + "\",\"answer\":\"kept\"");
        assertThat(entries()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"warm\" | The temperature in °F was 'warm'; a number from 14 to 140 is accepted.",
                "141 | The temperature in °F was '141'",
                "null | The temperature in °F was ''"
            })
    void a_reading_that_is_no_temperature_is_refused(String typed, String sentence) {
        assertThat(send(batch(reading(UUID.randomUUID(), mat(), typed))).body())
                .contains(sentence, "\"answer\":\"refused\"");
    }

    @Test
    void a_mat_that_is_not_there_is_named() {
        assertThat(send(batch(reading(UUID.randomUUID(), "7", "80"))).body()).contains("There is no such mat.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "5", "[]", "{}", "\"x\""})
    void what_is_no_entry_at_all_is_refused_alone(String odd) {
        Answer answer = send(batch(odd, look(UUID.randomUUID(), "\"sprouted\":1")));

        assertThat(answer.status()).isEqualTo(200);
        assertThat(entries()).isEqualTo(2);
    }

    @Test
    void a_phone_whose_clock_is_wrong_is_put_right_and_told() {
        UUID tick = UUID.randomUUID();
        String body = "{\"sentAt\":\"2027-03-01T17:00:00Z\",\"entries\":[%s]}"
                .formatted(look(tick, "\"seenAt\":\"2027-03-01T16:30:00Z\",\"sprouted\":2,\"note\":\"bent\""));

        Answer answer = send(body);

        assertThat(answer.body()).contains("(The phone's clock was 2 hours fast; the time was put right.)");
        assertThat(seenAt(tick)).isEqualTo(OffsetDateTime.parse("2027-03-01T14:30:00Z"));
        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .contains("bent (The phone's clock was 2 hours fast; the time was put right.)");
    }

    @Test
    void a_sowings_page_says_that_two_were_kept_and_which_counts() {
        send(batch(
                look(UUID.randomUUID(), "\"sprouted\":5,\"seenAt\":\"2027-03-01T14:40:00Z\""),
                look(
                        UUID.randomUUID(),
                        "\"sprouted\":7,\"seenAt\":\"2027-03-01T14:20:00Z\",\"pageAt\":\"2027-03-01T12:00:00Z\"")));

        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .containsPattern("7 so far[^.]*kept; the one seen later that day counts")
                .containsPattern("5 so far[^.]*more than one was kept for this day; this one, seen last, counts");
    }

    private String look(UUID id, String fields) {
        // a field that is named twice counts as named last
        return "{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",%s,%s}".formatted(id, sowing, SEEN, fields);
    }

    private static String reading(UUID id, String mat, String typed) {
        return "{\"id\":\"%s\",\"mat\":\"%s\",\"unit\":\"F\",\"celsius\":%s,%s}".formatted(id, mat, typed, SEEN);
    }

    private static String batch(String... entries) {
        return "{%s,\"entries\":[%s]}".formatted(SENT, String.join(",", entries));
    }

    private String mat() {
        return cellar.group()
                .database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq("M1"))
                .fetchSingle(MAT.ID)
                .toString();
    }

    private Answer send(String body) {
        return send(cellar.member(), body);
    }

    private static Answer send(Browser browser, String body) {
        return browser.send(request(browser, body));
    }

    private static HttpRequest.Builder request(Browser browser, String body) {
        return browser.request("/round/entries")
                .header("Content-Type", "application/json")
                .header("Accept", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    private OffsetDateTime seenAt(UUID tick) {
        return cellar.group()
                .database()
                .sql()
                .select(ENTRY.SEEN_AT)
                .from(ENTRY)
                .where(ENTRY.ID.eq(tick))
                .fetchSingle(ENTRY.SEEN_AT);
    }

    private int entries() {
        return cellar.group().database().sql().fetchCount(ENTRY, ENTRY.SOWING_ID.eq(UUID.fromString(sowing)));
    }
}
