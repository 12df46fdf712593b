package warmshelf.jar;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestDatabase;

/** The packaged jar as a group's server. */
class ServeIT {
    @TempDir
    private Path data;

    @Test
    void the_first_start_prints_a_link_that_makes_the_first_coordinator() {
        try (JarServer server = onFile()) {
            Browser browser = server.openGroup();

            Answer sites = browser.get("/sites");

            assertThat(server.browser().get("/health").body()).contains("\"status\":\"ok\"", "\"version\":\"0.");
            assertThat(sites.status()).isEqualTo(200);
            assertThat(sites.text()).contains("Ilse Brandt");
        }
    }

    @Test
    void a_later_start_finds_the_group_and_prints_no_opening_link() {
        String session;
        try (JarServer server = onFile()) {
            session = String.valueOf(server.openGroup().cookie("warmshelf"));
        }

        try (JarServer again = onFile()) {
            Browser browser = again.browser();
            browser.setCookie("warmshelf", session);

            assertThat(browser.get("/sites").text()).contains("Chester Bowl Seed Starters", "Ilse Brandt");
            assertThat(again.lastWords()).doesNotContain("/open/");
        }
    }

    @Test
    void the_jar_brings_its_pages_styles_and_pictures() {
        try (JarServer server = onFile()) {
            Answer page = server.browser().get("/sign-in");

            assertThat(page.status()).isEqualTo(200);
            assertThat(page.body()).contains("stylesheet");
            for (String address : linked(page.body())) {
                assertThat(server.browser().get(address).status()).as(address).isEqualTo(200);
            }
        }
    }

    @Test
    void postgresql_is_served_too() {
        try (TestDatabase place = TestDatabase.postgres();
                JarServer server = JarServer.start("--jdbc-url", place.address())) {
            Browser browser = server.openGroup();

            Answer kept = browser.post(
                    "/seeds", Map.of("crop", "pepper", "variety", "Long red", "year", "2026", "owner", "mine"));

            assertThat(kept.status()).isEqualTo(303);
            assertThat(browser.get("/seeds").text()).contains("Long red");
            assertThat(server.browser().get("/health").body()).contains("\"database\":\"ok\"");
        }
    }

    @Test
    void a_second_server_on_the_same_data_folder_is_refused_with_a_sentence() {
        try (JarServer server = onFile()) {
            JarRun second = JarRun.of("serve", "--port", "0", "--data", data.toString());

            assertThat(second.status()).isEqualTo(2);
            assertThat(second.out()).isEmpty();
            assertThat(second.err()).contains(data.toString(), "in use").doesNotContain("Exception", "\tat ");
            assertThat(server.browser().get("/health").status()).isEqualTo(200);
        }
    }

    @Test
    void the_round_of_a_day_is_printed_from_the_folder_of_a_stopped_server() {
        try (JarServer server = onFile()) {
            server.openGroup();
        }

        JarRun run = JarRun.of("today", "--data", data.toString(), "--date", "2027-03-01");

        assertThat(run.status()).isZero();
        assertThat(run.json().get("date").asText()).isEqualTo("2027-03-01");
        assertThat(run.json().get("checks").isArray()).isTrue();
    }

    @Test
    void a_port_in_use_is_refused_with_a_sentence() {
        try (JarServer server = onFile()) {
            String port = server.address().substring(server.address().lastIndexOf(':') + 1);

            JarRun second = JarRun.of(
                    "serve", "--port", port, "--data", data.resolve("other").toString());

            assertThat(second.status()).isEqualTo(2);
            assertThat(second.err()).contains(port).doesNotContain("Exception");
        }
    }

    private JarServer onFile() {
        return JarServer.start("--data", data.toString(), "--time-zone", "America/Chicago");
    }

    private static java.util.List<String> linked(String page) {
        return java.util.regex.Pattern.compile("(?:href|src)=\"(/static/[^\"]+)\"")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
    }
}
