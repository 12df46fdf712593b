package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class HealthPagesTest {
    @Test
    void all_is_well_while_the_database_answers() {
        try (TestGroup group = TestGroup.open()) {
            Answer answer = group.stranger().get("/health");

            assertThat(answer.status()).isEqualTo(200);
            assertThat(answer.body())
                    .startsWith("{\"status\":\"ok\",\"database\":\"ok\",\"version\":\"")
                    .contains("\"live\":true,\"ready\":true", "\"problems\":[]");
        }
    }

    @Test
    void a_silent_database_is_told_and_pages_still_answer_with_a_sentence() {
        try (TestGroup group = TestGroup.open()) {
            Browser tom = group.signedIn(group.member());
            group.database().close();

            Answer health = group.stranger().get("/health");
            Answer page = tom.get("/people");

            assertThat(health.status()).isEqualTo(503);
            assertThat(health.body())
                    .contains("\"database\":\"does not answer\"", "\"live\":true,\"ready\":false")
                    .contains("{\"code\":\"database-away\",\"sentence\":\"The database does not answer.\"}");
            assertThat(group.stranger().get("/health/live").status()).isEqualTo(200);
            assertThat(page.status()).isEqualTo(500);
            assertThat(page.body()).contains("Something went wrong on our side").doesNotContain("Hikari");
        }
    }
}
