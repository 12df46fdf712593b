package warmshelf.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** Figures of the server, for programs that watch. */
class MetricsTest {
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
    void requests_are_told_by_route_and_class_of_status_and_never_by_what_they_name() {
        Browser ilse = group.signedIn(group.coordinator());
        Script script = Script.of(group, ilse, TokenScope.METRICS);
        ilse.get("/sowings/00000000-0000-0000-0000-000000000007");
        ilse.get("/nowhere/at/all");
        ilse.get("/people");

        Answer answer = script.get("/metrics");

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.header("Content-Type")).startsWith("text/plain; version=0.0.4");
        assertThat(answer.body())
                .contains("warmshelf_request_seconds_count{method=\"GET\",route=\"/people\",status=\"2xx\"} 1\n")
                .contains("warmshelf_request_seconds_count{method=\"GET\",route=\"/sowings/{id}\",status=\"4xx\"} 1\n")
                .contains("warmshelf_request_seconds_count{method=\"GET\",route=\"-\",status=\"4xx\"} 1\n")
                .contains("route=\"/people\",status=\"2xx\",le=\"+Inf\"} 1\n")
                .doesNotContain("nowhere", "00000000-0000");
    }

    @Test
    void the_state_of_the_database_and_the_backups_stands_beside_them() {
        String text = Script.of(group, group.signedIn(group.coordinator()), TokenScope.METRICS)
                .get("/metrics")
                .body();

        assertThat(text)
                .containsPattern("\nwarmshelf_connections_active \\d")
                .containsPattern("\nwarmshelf_connections_waiting 0\\.0\n")
                .contains("\nwarmshelf_slow_queries 0.0\n")
                .contains("\nwarmshelf_backup_age_seconds NaN\n")
                .contains("\nwarmshelf_problems 0.0\n")
                .contains("# TYPE warmshelf_request_seconds histogram\n");
    }

    @Test
    void a_token_of_a_member_and_one_without_the_scope_read_nothing_of_it() {
        assertThat(Script.of(group, group.signedIn(group.member()), TokenScope.METRICS)
                        .get("/metrics")
                        .status())
                .isEqualTo(403);
        assertThat(Script.of(group, group.signedIn(group.coordinator()), TokenScope.LOTS)
                        .get("/metrics")
                        .status())
                .isEqualTo(403);
        assertThat(group.stranger().get("/api/v1/metrics").status()).isEqualTo(401);
    }
}
