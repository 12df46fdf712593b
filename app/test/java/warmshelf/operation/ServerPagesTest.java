package warmshelf.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.LETTER;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.SessionStore;
import warmshelf.reminder.MailServer;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.MutableClock;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;
import warmshelf.web.Role;

class ServerPagesTest {
    private static final MutableClock CLOCK = new MutableClock(TestGroup.MORNING);

    @TempDir
    private Path folder;

    @Test
    void a_coordinator_reads_versions_file_disk_and_backup() {
        try (Database database = Database.inFolder(folder)) {
            Person ilse = TestGroup.moveIn(database, new Audit(CLOCK)).get(0);
            try (Server server = Server.start(settings(null), database, CLOCK)) {
                String page = text(server, database, ilse);

                assertThat(page)
                        .contains("unpackaged, started a moment ago, on 1 Mar 2027 at 09:00")
                        .contains(System.getProperty("java.version"))
                        .containsPattern("H2 2\\.[0-9.]+ .*; its file has 0\\.\\d MB")
                        .containsPattern("[0-9.]+ GB free")
                        .contains("no mail server is set up", "nothing is being worked out")
                        .contains("this one alone");
            }
        }
    }

    @Test
    void letters_that_were_given_up_are_told_first() {
        try (Database database = Database.inFolder(folder)) {
            Person ilse = TestGroup.moveIn(database, new Audit(CLOCK)).get(0);
            MailServer mail = new MailServer("127.0.0.1", 1, null, null, "a@example.org", MailServer.Security.NONE);
            try (Server server = Server.start(settings(mail), database, CLOCK)) {
                assertThat(text(server, database, ilse)).contains("0 to be sent, 0 given up in 7 days");

                giveUp(database, ilse.id(), 1);
                giveUp(database, ilse.id(), 8);

                assertThat(text(server, database, ilse))
                        .contains("1 letter was given up in the last 7 days")
                        .contains("0 to be sent, 1 given up in 7 days")
                        .doesNotContain("All is well");
            }
        }
    }

    @Test
    void faults_and_requests_are_counted() {
        try (TestGroup group = TestGroup.with(routes -> routes.get(
                "/broken",
                ctx -> {
                    throw new IllegalStateException("for a test");
                },
                Role.MEMBER))) {
            Browser ilse = group.signedIn(group.coordinator());
            assertThat(ilse.get("/broken").status()).isEqualTo(500);

            assertThat(ilse.get("/server").text())
                    .contains("All is well. 1 request was answered since the start, 1 of them with a fault");
        }
    }

    private static String text(Server server, Database database, Person person) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.setCookie("warmshelf", new SessionStore(database, CLOCK).open(person.id()));
        Answer answer = browser.get("/server");
        assertThat(answer.status()).isEqualTo(200);
        return answer.text();
    }

    private Settings settings(@Nullable MailServer mail) {
        return new Settings("127.0.0.1", 0, null, folder, null, null, null, Set.of(), ZoneId.of("UTC"), mail, null);
    }

    private static void giveUp(Database database, UUID member, int daysAgo) {
        var at = TestGroup.MORNING.atOffset(ZoneOffset.UTC).minusDays(daysAgo);
        database.sql()
                .insertInto(LETTER)
                .set(Map.of(
                        LETTER.ID,
                        UUID.randomUUID(),
                        LETTER.MEMBER_ID,
                        member,
                        LETTER.ABOUT,
                        "morning " + daysAgo,
                        LETTER.ADDRESS,
                        "ilse@example.org",
                        LETTER.SUBJECT,
                        "Today",
                        LETTER.WORDS,
                        "Look",
                        LETTER.MADE_AT,
                        at,
                        LETTER.DUE_AT,
                        at,
                        LETTER.TRIES,
                        5,
                        LETTER.GIVEN_UP_AT,
                        at))
                .execute();
    }
}
