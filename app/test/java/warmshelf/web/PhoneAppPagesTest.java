package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;

/** What a phone asks for to keep the round. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PhoneAppPagesTest {
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
    void the_manifest_names_icons_that_are_there() {
        Answer manifest = group.stranger().get("/manifest.webmanifest");

        assertThat(manifest.header("Content-Type")).startsWith("application/manifest+json");
        List<String> icons = found(manifest.body(), "\"src\":\"([^\"]+)\"");
        assertThat(icons).hasSize(4);
        assertThat(icons)
                .allSatisfy(
                        icon -> assertThat(group.stranger().get(icon).status()).isEqualTo(200));
        assertThat(manifest.body()).contains("\"start_url\":\"/today\"", "\"purpose\":\"maskable\"");
        assertThat(group.stranger().get("/sign-in").body()).contains("rel=\"manifest\" href=\"/manifest.webmanifest\"");
    }

    @Test
    void the_worker_is_asked_for_anew_and_names_what_it_keeps_by_content() {
        Answer worker = group.stranger().get("/worker.js");

        assertThat(worker.header("Content-Type")).startsWith("text/javascript");
        assertThat(worker.header("Cache-Control")).isEqualTo("no-cache");
        assertThat(worker.body()).containsPattern("const VERSION = \"[0-9a-f]{12}\";");
        List<String> shell = found(worker.body().lines().skip(1).findFirst().orElseThrow(), "\"(/static/[^\"]+)\"");
        assertThat(shell).anyMatch(address -> address.endsWith("/css/app.css"));
        assertThat(shell)
                .allSatisfy(address -> assertThat(group.stranger().get(address).header("Cache-Control"))
                        .contains("immutable"));
    }

    @Test
    void every_file_that_today_links_is_kept_by_the_worker() {
        String worker = group.stranger().get("/worker.js").body();
        String today = group.signedIn(group.member()).get("/today").body();

        assertThat(found(today, "(?:src|href)=\"(/static/[^\"]+)\""))
                .isNotEmpty()
                .allSatisfy(address -> assertThat(worker).contains(address));
    }

    @Test
    void the_page_for_no_signal_has_nothing_of_the_group_members_and_leads_to_today() {
        Answer page = group.stranger().get("/offline");

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body()).contains("No connection", "href=\"/today\"").doesNotContain("Sign out");
    }

    private static List<String> found(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(result -> result.group(1))
                .toList();
    }
}
