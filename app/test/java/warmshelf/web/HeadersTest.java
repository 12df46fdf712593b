package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HeadersTest {
    private static final Map<String, String> OPENING = Map.ofEntries(
            Map.entry("groupName", "Hillside Seed Starters"),
            Map.entry("groupZone", "America/Chicago"),
            Map.entry("groupTemperature", "F"),
            Map.entry("groupLength", "in"),
            Map.entry("groupCountry", "US"),
            Map.entry("groupPostcode", "55811"),
            Map.entry("groupSeason", "2027"),
            Map.entry("name", "Ilse Brandt"),
            Map.entry("postcode", "55803"),
            Map.entry("passphrase", "green lamp on a shelf"));

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
    void pages_forbid_what_they_do_not_need() {
        for (String path : new String[] {"/sign-in", "/nowhere", "/people"}) {
            Answer answer = group.stranger().get(path);

            assertThat(answer.header("Content-Security-Policy"))
                    .contains(
                            "default-src 'none'",
                            "object-src 'none'",
                            "script-src 'self'",
                            "frame-ancestors 'none'",
                            "base-uri 'none'")
                    .doesNotContain("unsafe");
            assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(answer.header("Referrer-Policy")).isEqualTo("same-origin");
            assertThat(answer.header("Permissions-Policy")).contains("geolocation=()");
            assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
            assertThat(answer.header("Server")).isEmpty();
        }
    }

    @Test
    void pages_hold_no_script_or_style_that_the_policy_would_stop() {
        for (String path : new String[] {"/people", "/settings", "/settings/group", "/help", "/numbers", "/frost"}) {
            Answer answer = group.signedIn(group.coordinator()).get(path);

            assertThat(answer.status()).as(path).isEqualTo(200);
            assertThat(answer.body()).doesNotContainPattern("<style|\\sstyle=|\\son[a-z]+=|<script(?![^>]*\\ssrc=)");
        }
    }

    @Test
    void pages_are_utf_8_and_sent_compressed_to_who_takes_it() {
        Browser stranger = group.stranger();

        Answer plain = stranger.get("/help");
        Answer compressed = stranger.send(
                stranger.request("/help").header("Accept-Encoding", "gzip").GET());

        assertThat(plain.header("Content-Type")).isEqualToIgnoringCase("text/html;charset=utf-8");
        assertThat(plain.body()).contains("Where the numbers come from");
        Answer smaller = stranger.send(stranger.request("/help")
                .header("Accept-Encoding", "gzip, deflate, br, zstd")
                .GET());
        assertThat(compressed.header("Content-Encoding")).isEqualTo("gzip");
        assertThat(smaller.header("Content-Encoding")).isEqualTo("br");
    }

    @Test
    void styles_are_kept_for_good_under_an_address_that_changes_with_them() {
        Browser stranger = group.stranger();
        Matcher address = Pattern.compile("/static/[0-9a-f]{12}/css/app.css")
                .matcher(stranger.get("/sign-in").body());
        assertThat(address.find()).isTrue();

        Answer exact = stranger.get(address.group());
        Answer old = stranger.get(address.group().replaceAll("[0-9a-f]{12}", "000000000000"));

        assertThat(exact.status()).isEqualTo(200);
        assertThat(exact.header("Content-Type")).startsWith("text/css");
        assertThat(exact.header("Cache-Control")).contains("immutable");
        assertThat(old.status()).isEqualTo(200);
        assertThat(old.header("Cache-Control")).isEqualTo("public, max-age=300");
    }

    @Test
    void nothing_outside_the_folder_of_styles_is_served() {
        for (String file : new String[] {
            "../db/reference/crops.csv", "..%2fdb%2freference%2fcrops.csv", "css", "css/", "css/none.css", "logback.xml"
        }) {
            assertThat(group.stranger().get("/static/000000000000/" + file).status())
                    .as(file)
                    .isIn(400, 404);
        }
    }

    @Test
    void head_answers_as_get_does_without_the_page() {
        Browser stranger = group.stranger();

        Answer page = stranger.send(stranger.request("/help").method("HEAD", HttpRequest.BodyPublishers.noBody()));
        Answer closed = stranger.send(stranger.request("/people").method("HEAD", HttpRequest.BodyPublishers.noBody()));

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body()).isEmpty();
        assertThat(closed.status()).isEqualTo(303);
    }

    @Test
    void the_bare_address_leads_to_today() {
        assertThat(group.stranger().get("/").location()).isEqualTo("/today");
    }

    @Test
    void behind_https_the_cookie_is_bound_to_the_host_and_browsers_are_told_to_stay_with_https() {
        Settings settings = new Settings(
                "127.0.0.1",
                0,
                "https://seeds.example.org",
                Path.of("unused"),
                null,
                null,
                null,
                Set.of(),
                ZoneId.of("UTC"),
                null,
                null);
        try (TestDatabase place = TestDatabase.h2();
                Server server = Server.start(settings, place.database(), new MutableClock(TestGroup.MORNING))) {
            Browser browser = Browser.at("http://127.0.0.1:" + server.port());
            String link = server.openingLink().orElseThrow();

            Answer opened = browser.postAsIs(link.substring("https://seeds.example.org".length()), OPENING);

            assertThat(opened.header("Strict-Transport-Security")).isEqualTo("max-age=31536000");
            assertThat(opened.cookiesSet())
                    .anySatisfy(cookie -> assertThat(cookie)
                            .startsWith("__Host-warmshelf=")
                            .contains("Secure", "HttpOnly", "Path=/")
                            .doesNotContain("Domain"));
            assertThat(browser.get("/people").status()).isEqualTo(200);
        }
    }
}
