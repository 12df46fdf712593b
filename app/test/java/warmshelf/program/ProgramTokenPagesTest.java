package warmshelf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.group.Token;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class ProgramTokenPagesTest {
    private TestGroup group;
    private Browser tom;
    private Browser ilse;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        tom = group.signedIn(group.member());
        ilse = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void nothing_is_ticked_beforehand() {
        assertThat(tom.get("/tokens").body()).contains("type=\"checkbox\"").doesNotContain(" checked");
    }

    @Test
    void a_token_is_shown_once_with_a_line_to_try_it_and_kept_only_as_a_hash() {
        Answer made = tom.post("/tokens", Map.of("name", "cellar sensor", "readings-write", "yes"));
        String token = made.body().replaceAll("(?s).*value=\"(warmshelf_[^\"]+)\".*", "$1");

        assertThat(token).matches("warmshelf_[A-Za-z0-9_-]{43}");
        assertThat(made.body())
                .contains("curl -H &#39;Authorization: Bearer " + token + "&#39; http://127.0.0.1:" + group.port()
                        + "/api/v1/token");
        assertThat(tom.get("/tokens").body()).doesNotContain(token).contains("cellar sensor");
        var row = group.database().sql().selectFrom(PROGRAM_TOKEN).fetchSingle();
        assertThat(row.getTokenHash()).isEqualTo(Token.hash(token));
        assertThat(row.toString()).doesNotContain(token);
        assertThat(row.getScopes()).isEqualTo("readings:write");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name|''|What it is for is empty",
                "lots-read|''|Nothing is ticked",
                "endsOn|2027-02-28|The last day was 2027-02-28; today, 2027-03-01, or a later day",
                "endsOn|soon|The last day was 'soon'; a date such as 2027-03-01"
            })
    void what_cannot_be_used_is_told_and_nothing_typed_is_lost(String field, String typed, String told) {
        Map<String, String> fields = new HashMap<>(Map.of("name", "garden", "lots-read", "yes"));
        fields.put(field, typed);

        Answer answer = tom.post("/tokens", fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(told);
        assertThat(answer.typed("name")).isEqualTo(fields.get("name"));
        assertThat(group.database().sql().fetchCount(PROGRAM_TOKEN)).isZero();
    }

    @Test
    void a_member_sees_and_revokes_their_own_and_a_coordinator_everybodys() {
        Script.token(tom, Map.of("name", "of tom"), TokenScope.LOTS);
        Script.token(ilse, Map.of("name", "of ilse"), TokenScope.LOTS);

        assertThat(tom.get("/tokens").text()).contains("of tom").doesNotContain("of ilse");
        assertThat(ilse.get("/tokens").text()).contains("of tom").contains("of ilse");
        assertThat(tom.post(revocation("of ilse")).status()).isEqualTo(404);
        assertThat(ilse.post(revocation("of tom")).status()).isEqualTo(303);
        assertThat(ilse.get("/tokens").text()).contains("‘of tom’ is revoked").doesNotContain("of tom Tom");
        assertThat(ilse.post(revocation("of tom")).status()).isEqualTo(404);
    }

    @Test
    void nobody_has_more_than_twenty() {
        for (int i = 0; i < ProgramTokenStore.MOST_OF_A_MEMBER; i++) {
            Script.token(tom, Map.of("name", "number " + i), TokenScope.LOTS);
        }
        Answer answer = tom.post("/tokens", Map.of("name", "one more", "lots-read", "yes"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("You have 20 tokens already");
    }

    @Test
    void a_strange_name_is_shown_as_it_was_typed() {
        Script.token(tom, Map.of("name", "<b>\"Kühlschrank\" 冷</b>"), TokenScope.LOTS);

        assertThat(tom.get("/tokens").body()).doesNotContain("<b>").contains("冷");
    }

    private String revocation(String name) {
        return "/tokens/"
                + group.database()
                        .sql()
                        .select(PROGRAM_TOKEN.ID)
                        .from(PROGRAM_TOKEN)
                        .where(PROGRAM_TOKEN.NAME.eq(name))
                        .fetchSingle(PROGRAM_TOKEN.ID)
                + "/revocation";
    }
}
