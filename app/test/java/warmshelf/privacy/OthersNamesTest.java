package warmshelf.privacy;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MEMBER;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.demo.FilledDemo;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.MutableClock;
import warmshelf.testing.PageForm;
import warmshelf.testing.PageWalk;
import warmshelf.testing.TestDatabase;
import warmshelf.web.Role;

/** Members see each other by first names: the demo group with all that lies there, read as one of its members. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OthersNamesTest {
    private static final Instant NOW = Instant.parse("2027-05-08T17:00:00Z");
    private static final int EACH_KIND = 3;
    private static final Pattern TOKEN = Pattern.compile("value=\"(warmshelf_[^\"]+)");
    private static final Pattern FEED = Pattern.compile("(/calendar/[^\"<]+\\.ics)");

    private TestDatabase place;
    private Server server;
    private Browser member;
    private Browser coordinator;
    private List<String> lastNames;

    @BeforeAll
    void open() {
        place = TestDatabase.h2();
        FilledDemo demo = FilledDemo.in(place.database(), new MutableClock(NOW));
        server = Server.start(Settings.onFreePort(Path.of("unused")), place.database(), new MutableClock(NOW));
        member = signedIn(demo.member());
        coordinator = signedIn(demo.coordinator());
        lastNames = place.database().sql().select(MEMBER.NAME).from(MEMBER).fetch(MEMBER.NAME).stream()
                .filter(name -> !name.equals(demo.member()))
                .map(name -> name.substring(name.indexOf(' ') + 1))
                .toList();
        assertThat(lastNames).hasSizeGreaterThan(10);
    }

    @AfterAll
    void close() {
        server.close();
        place.close();
    }

    private Browser signedIn(String name) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.post("/sign-in", Map.of("name", name, "passphrase", FilledDemo.PASSPHRASE));
        return browser;
    }

    @Test
    void no_page_and_no_file_tells_a_member_another_ones_last_name() {
        List<String> starts = new ArrayList<>(PageWalk.EVERYWHERE);
        server.rights().stream()
                .filter(right -> right.method().equals("GET") && right.role() == Role.MEMBER)
                .map(right -> right.path())
                .filter(path -> !path.contains("{"))
                .forEach(starts::add);

        PageWalk walk = PageWalk.inSearchOf(member, EACH_KIND, starts, lastNames);

        assertThat(walk.seen()).isGreaterThan(120);
        assertThat(walk.said()).isEmpty();
    }

    @Test
    void a_coordinator_finds_the_whole_names_among_the_people_and_in_the_tables() {
        Map<String, List<String>> said = PageWalk.inSearchOf(
                        coordinator, 1, List.of("/people", "/files/tables/members.csv"), lastNames)
                .said();

        assertThat(said.get("/people")).hasSameSizeAs(lastNames);
        assertThat(said.get("/files/tables/members.csv")).hasSameSizeAs(lastNames);
    }

    @Test
    void no_answer_to_a_members_script_tells_another_ones_last_name() {
        String token = token(member);
        Map<String, String> answers = new TreeMap<>();
        server.rights().stream()
                .filter(right -> right.method().equals("GET") && right.role() == Role.PROGRAM)
                // figures of the server are for coordinators and tell of nobody
                .filter(right -> !right.path().contains("{") && !right.path().endsWith("/metrics"))
                .forEach(right -> answers.put(right.path(), asked(right.path(), token)));
        answers.put("/api/v1/round?show=all", asked("/api/v1/round?show=all", token));

        assertThat(answers).hasSizeGreaterThan(6);
        assertThat(answers.get("/api/v1/round?show=all")).contains("\"grower\":\"Elsie\"");
        answers.forEach((path, answer) -> assertThat(answer).as(path).doesNotContain(lastNames));
    }

    @Test
    void no_feed_tells_another_ones_last_name() {
        String page = member.post("/reminders/calendar").body();
        List<String> feeds =
                FEED.matcher(page).results().map(found -> found.group(1)).toList();

        assertThat(feeds).isNotEmpty();
        feeds.forEach(feed ->
                assertThat(member.get(feed).body()).contains("BEGIN:VEVENT").doesNotContain(lastNames));
    }

    private static String token(Browser person) {
        PageForm form = PageForm.on("/tokens", person.get("/tokens").body()).stream()
                .filter(each -> each.action().equals("/tokens"))
                .findFirst()
                .orElseThrow();
        Map<String, String> fields = new HashMap<>(form.fields());
        fields.put("name", "cellar sensor");
        Answer answer = person.post("/tokens", fields);
        return TOKEN.matcher(answer.body())
                .results()
                .findFirst()
                .orElseThrow(() -> new AssertionError(answer.text()))
                .group(1);
    }

    private String asked(String path, String token) {
        Browser script = Browser.at("http://127.0.0.1:" + server.port());
        Answer answer = script.send(
                script.request(path).header("Authorization", "Bearer " + token).GET());
        assertThat(answer.status()).as(path + " " + answer.text()).isEqualTo(200);
        return answer.body();
    }
}
