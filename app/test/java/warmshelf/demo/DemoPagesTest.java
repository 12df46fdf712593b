package warmshelf.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.check.TodayStore;
import warmshelf.db.Audit;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestDatabase;

/** Every page that a member, a coordinator and the person on duty can reach by a link on the demo's first day. */
class DemoPagesTest {
    private static final Instant NOW = Instant.parse("2027-05-08T17:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 8);
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)");
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-[0-9a-f-]{27}");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
    private static final Pattern VALUE = Pattern.compile("=[^&#]*");
    /** Of the pages that differ only by what they are about, this many of each kind. */
    private static final int EACH_KIND = 40;
    /** Whoever may see more sees the same pages too; of those some are enough. */
    private static final int SOME_OF_EACH_KIND = 10;
    /** A page of a day leads to the day before and after, without an end. */
    private static final int DAYS_OF_EACH_KIND = 5;

    private static TestDatabase place;
    private static Server server;
    private static List<DemoLinks.SignIn> links;

    @BeforeAll
    static void open() {
        place = TestDatabase.h2();
        DemoGroup.fill(place.database(), NOW);
        MutableClock clock = new MutableClock(NOW);
        Audit audit = new Audit(clock);
        server = Server.start(Settings.onFreePort(Path.of("unused")), place.database(), clock);
        links = new DemoLinks(new MemberStore(place.database(), audit), new LinkStore(place.database(), audit))
                .make(new TodayStore(place.database()).onDuty(TODAY));
    }

    @AfterAll
    static void close() {
        server.close();
        place.close();
    }

    @Test
    void the_links_sign_in_a_member_a_coordinator_and_the_person_on_duty_and_do_so_twice() {
        assertThat(links).hasSize(3);
        for (DemoLinks.SignIn link : links) {
            for (int time = 0; time < 2; time++) {
                Answer today = signedIn(link).get("/today");

                assertThat(today.status()).as(link.who()).isEqualTo(200);
            }
        }
    }

    @Test
    void everyone_signs_in_by_name_with_the_passphrase_that_is_told() {
        Answer signedIn = Browser.at("http://127.0.0.1:" + server.port())
                .post("/sign-in", Map.of("name", "Dev Anand", "passphrase", DemoGroup.PASSPHRASE));

        assertThat(signedIn.status()).isEqualTo(303);
    }

    @Test
    void every_page_that_a_member_finds_a_link_to_answers() {
        everyPageAnswers(
                links.get(0),
                EACH_KIND,
                "/ask",
                "/sowings",
                "/racks",
                "/weeks",
                "/seeds",
                "/frost",
                "/duty",
                "/settings");
    }

    @Test
    void every_page_that_a_coordinator_finds_a_link_to_answers() {
        everyPageAnswers(
                links.get(1),
                SOME_OF_EACH_KIND,
                "/requests",
                "/racks",
                "/weeks",
                "/sites",
                "/people",
                "/settings/group");
    }

    @Test
    void every_page_that_the_person_on_duty_finds_a_link_to_answers() {
        everyPageAnswers(links.get(2), SOME_OF_EACH_KIND, "/today?show=all", "/help", "/numbers", "/racks");
    }

    private static void everyPageAnswers(DemoLinks.SignIn link, int eachKind, String... alsoFrom) {
        Browser browser = signedIn(link);
        Deque<String> toSee = new ArrayDeque<>(List.of("/today"));
        toSee.addAll(List.of(alsoFrom));
        Set<String> seen = new HashSet<>();
        Set<String> met = new HashSet<>(toSee);
        Map<String, Set<String>> ofKind = new java.util.HashMap<>();
        SoftAssertions check = new SoftAssertions();
        while (!toSee.isEmpty()) {
            String path = toSee.removeFirst();
            String kind = kind(path);
            Set<String> same = ofKind.computeIfAbsent(kind, each -> new TreeSet<>());
            if (path.startsWith("/static")
                    || same.size() >= (kind.contains("#") ? DAYS_OF_EACH_KIND : eachKind)
                    || !seen.add(path)) {
                continue;
            }
            same.add(path);
            Answer answer = browser.get(path);
            check.assertThat(answer.status()).as(path).isIn(200, 303);
            Matcher found = LINK.matcher(answer.body());
            while (found.find()) {
                String next = found.group(1).replace("&amp;", "&");
                // each page leads to a hundred that were met before
                if (met.add(next)) {
                    toSee.add(next);
                }
            }
        }
        check.assertThat(seen).as("pages seen").contains(alsoFrom).hasSizeGreaterThan(40);
        check.assertAll();
    }

    /** An address without what tells one thing, day or choice from another of its kind. */
    private static String kind(String path) {
        return VALUE.matcher(DAY.matcher(ID.matcher(path).replaceAll("*")).replaceAll("#"))
                .replaceAll("");
    }

    private static Browser signedIn(DemoLinks.SignIn link) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        assertThat(browser.get(link.path()).status()).isEqualTo(200);
        assertThat(browser.post(link.path()).status()).isEqualTo(303);
        return browser;
    }
}
