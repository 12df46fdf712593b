package warmshelf.privacy;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.LETTER;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.PROGRAM_ANSWER;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.net.http.HttpRequest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Person;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

/** What is left of somebody who is erased: nothing, on every database. */
abstract class ErasureContract {
    private static final String SELF = "/settings/erasure";

    private Cellar cellar;
    private TestGroup group;
    private Person tom;
    private KnownPerson known;

    protected abstract TestDatabase database();

    @BeforeEach
    void open() {
        group = TestGroup.open(database());
        cellar = Cellar.in(group);
        tom = group.member();
        known = KnownPerson.in(cellar);
    }

    @AfterEach
    void close() {
        // null where the database is missing and the test is skipped
        if (cellar != null) {
            cellar.close();
        }
    }

    @Test
    void no_word_of_who_erased_themself_is_anywhere_in_the_database() {
        assertThat(WholeDatabase.columnsWith(group.database(), KnownPerson.words(group)))
                .contains(
                        "member.name: Tom Okafor",
                        "member.postcode: 55804",
                        "letter.words: Tom Okafor",
                        "letter.words: " + KnownPerson.EMAIL,
                        "sowing.note: marigold-note");

        Answer answer = cellar.member().post(SELF, Map.of("confirmation", "tom  okafor"));

        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/privacy");
        assertThat(WholeDatabase.columnsWith(group.database(), KnownPerson.words(group)))
                .isEmpty();
        assertThat(cellar.member().get("/today").status()).isEqualTo(303);
        assertThat(signIn().status()).isEqualTo(422);
    }

    @Test
    void what_others_were_told_of_somebody_calls_them_somebody_and_names_before_go_too() {
        Map<String, String> settings =
                new HashMap<>(Map.of("name", "Thomas Okello", "country", "US", "postcode", "55804"));
        settings.putAll(Map.of("temperature", "F", "length", "in", "version", "1"));
        assertThat(cellar.member().post("/settings", settings).status()).isEqualTo(303);

        erase("Thomas Okello", Map.of());

        assertThat(WholeDatabase.columnsWith(
                        group.database(), List.of("Tom Okafor", "Okafor", "Thomas", "Okello", KnownPerson.EMAIL)))
                .isEmpty();
    }

    @Test
    void somebody_who_was_called_by_a_first_name_is_somebody_then() {
        erase(Map.of());

        assertThat(group.database()
                        .sql()
                        .fetchValues(
                                LETTER.WORDS,
                                LETTER.MEMBER_ID.eq(group.coordinator().id())))
                .containsExactly(
                        "Please look after somebody’s peppers (somebody). somebody’s tray 3 stands in the hall.");
    }

    @Test
    void tokens_of_scripts_go_with_what_their_scripts_were_answered() {
        String token = token();
        assertThat(sent(token).status()).isEqualTo(200);
        assertThat(group.database().sql().fetchCount(PROGRAM_ANSWER)).isEqualTo(1);
        assertThat(group.database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.TOKEN_NAME.eq("cellar sensor")))
                .isEqualTo(1);

        erase(Map.of());

        assertThat(group.database().sql().fetchCount(PROGRAM_TOKEN)).isZero();
        assertThat(group.database().sql().fetchCount(PROGRAM_ANSWER)).isZero();
        assertThat(group.database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.TOKEN_NAME.isNotNull()))
                .isZero();
        assertThat(sent(token).status()).isEqualTo(401);
    }

    private String token() {
        String page = cellar.member()
                .post("/tokens", Map.of("name", "cellar sensor", "readings-write", "yes"))
                .body();
        return Cellar.first(page, "value=\"(warmshelf_[^\"]+)");
    }

    private Answer sent(String token) {
        String mat = String.valueOf(group.database().sql().fetchValue(MAT.ID, MAT.NAME.eq("M1")));
        Browser script = group.stranger();
        return script.send(script.request("/api/v1/mats/" + mat + "/readings")
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", "\"first\"")
                .POST(HttpRequest.BodyPublishers.ofString("{\"celsius\": 26}")));
    }

    @Test
    void what_happened_stays_without_a_name() {
        int lines = group.database().sql().fetchCount(AUDIT_LINE);
        int letters = group.database().sql().fetchCount(LETTER);

        erase(Map.of());

        assertThat(group.database().sql().fetchCount(SOWING)).isEqualTo(2);
        assertThat(group.database().sql().fetchCount(ENTRY)).isEqualTo(1);
        assertThat(group.database().sql().fetchCount(AUDIT_LINE)).isGreaterThan(lines);
        assertThat(group.database().sql().fetchCount(LETTER)).isEqualTo(letters - 1);
        assertThat(requestOf(known.waiting)).isEqualTo("withdrawn");
        assertThat(group.database().sql().fetchValues(LOT.OWNER_ID)).containsOnlyNulls();
        assertThat(cellar.coordinator().get("/sowings/" + known.sowing).text()).contains("Former member 1");
        assertThat(cellar.coordinator().get("/people").text()).doesNotContain("Former member");
    }

    @Test
    void photos_stay_or_go_as_the_person_chooses() {
        erase(Map.of());
        assertThat(bytesOfPhoto()).isEqualTo(4);
    }

    @Test
    void photos_go_too_where_the_person_wants_that() {
        erase(Map.of("photos", "yes"));
        assertThat(bytesOfPhoto()).isZero();
    }

    @Test
    void the_page_says_first_in_figures_what_goes_and_what_stays() {
        String page = cellar.member().get(SELF).text();

        assertThat(page)
                .contains("2 sowings stay without a name")
                .contains("2 requests that are not sown yet")
                .contains("1 promise to bring something")
                .contains("1 device that shows notices")
                .contains("3 letters and messages")
                .contains("1 photo, unless you choose below that it goes too")
                .contains("4 notes, on seed")
                .contains("2 lots of seed are the group’s");
    }

    @Test
    void nobody_is_erased_by_a_slip_and_what_was_chosen_is_kept() {
        Answer answer = cellar.member().post(SELF, Map.of("confirmation", "Tom", "photos", "yes"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("please type the name as it stands here: Tom Okafor");
        assertThat(answer.body()).contains("name=\"photos\" value=\"yes\" checked");
        assertThat(cellar.member().get("/today").status()).isEqualTo(200);
    }

    @Test
    void the_passphrase_confirms_it_as_well_as_the_name() {
        assertThat(cellar.member()
                        .post(SELF, Map.of("confirmation", tom.passphrase()))
                        .status())
                .isEqualTo(303);
    }

    @Test
    void a_coordinator_erases_only_who_has_left_and_nobody_takes_that_back() {
        String page = "/people/" + tom.id() + "/erasure";
        assertThat(cellar.coordinator().get(page).status()).isEqualTo(409);
        assertThat(cellar.coordinator()
                        .post(page, Map.of("confirmation", tom.name()))
                        .status())
                .isEqualTo(409);
        leave();

        assertThat(cellar.coordinator().get(page).text()).contains("Erase Tom Okafor");
        Answer answer = cellar.coordinator().post(page, Map.of("confirmation", tom.name()));

        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        assertThat(WholeDatabase.columnsWith(group.database(), KnownPerson.words(group)))
                .isEmpty();
        assertThat(cellar.coordinator().post("/people/" + tom.id() + "/return").status())
                .isEqualTo(404);
        assertThat(cellar.coordinator()
                        .post("/people/" + tom.id() + "/leaving/undo")
                        .status())
                .isEqualTo(409);
        assertThat(cellar.coordinator().get(page).status()).isEqualTo(404);
    }

    @Test
    void the_only_coordinator_names_another_first() {
        Browser ilse = cellar.coordinator();
        Map<String, String> confirmed = new HashMap<>(Map.of("confirmation", "Ilse Brandt"));
        assertThat(ilse.get(SELF).text()).contains("Who coordinates the group from then on");
        assertThat(ilse.post(SELF, confirmed).status()).isEqualTo(422);
        confirmed.put("successor", new UUID(0, 5).toString());
        assertThat(ilse.post(SELF, confirmed).status()).isEqualTo(422);

        confirmed.put("successor", tom.id().toString());
        Answer answer = ilse.post(SELF, confirmed);

        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        assertThat(group.database()
                        .sql()
                        .select(MEMBER.ROLE)
                        .from(MEMBER)
                        .where(MEMBER.ID.eq(tom.id()))
                        .fetchSingle()
                        .value1())
                .isEqualTo("coordinator");
        assertThat(cellar.member().get("/settings/group").status()).isEqualTo(200);
    }

    @Test
    void a_table_that_waits_to_be_taken_in_is_dropped_with_its_names() {
        Answer sent = new Upload()
                .field("kind", "members")
                .file("names.csv", "name,role\nTom Okafor,member\nNew Person,member\n")
                .post(cellar.coordinator(), "/files/incoming");
        assertThat(sent.status()).as(sent.text()).isEqualTo(303);
        assertThat(cellar.coordinator().get(sent.location()).status()).isEqualTo(200);

        erase(Map.of());

        assertThat(cellar.coordinator().get(sent.location()).status()).isIn(404, 410);
    }

    private void erase(Map<String, String> more) {
        erase(tom.name(), more);
    }

    private void erase(String name, Map<String, String> more) {
        Map<String, String> fields = new HashMap<>(more);
        fields.put("confirmation", name);
        Answer answer = cellar.member().post(SELF, fields);
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
    }

    private void leave() {
        String page = "/people/" + tom.id() + "/leaving";
        Map<String, String> decided = new HashMap<>();
        Cellar.all(cellar.coordinator().get(page).body(), "name=\"([a-z]+/[^\"]+)\"")
                .forEach(field -> decided.put(
                        field,
                        switch (field.substring(0, field.indexOf('/'))) {
                            case "request" -> "withdrawn";
                            case "tray" -> "kept";
                            case "turn" -> "emptied";
                            default -> "to-group";
                        }));
        Answer answer = cellar.coordinator().post(page, decided);
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
    }

    private Answer signIn() {
        return group.stranger().post("/sign-in", Map.of("name", tom.name(), "passphrase", tom.passphrase()));
    }

    private String requestOf(String sowing) {
        return group.database()
                .sql()
                .select(SPACE_REQUEST.STATE)
                .from(SPACE_REQUEST)
                .where(SPACE_REQUEST.SOWING_ID.eq(UUID.fromString(sowing)))
                .fetchSingle()
                .value1();
    }

    private int bytesOfPhoto() {
        return group.database()
                .sql()
                .select(PHOTO.JPEG)
                .from(PHOTO)
                .where(PHOTO.ID.eq(known.photo))
                .fetchSingle()
                .value1()
                .length;
    }
}
