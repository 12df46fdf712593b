package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.DiskRoom;
import warmshelf.group.SessionStore;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.MutableClock;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

/** A disk that is full, by a threshold that no disk reaches. The bench FullDiskBench fills a real one. */
class FullDiskTest {
    private static final long MORE_THAN_ANY_DISK_HAS = Long.MAX_VALUE / 8;

    @TempDir
    private Path data;

    private final MutableClock clock = new MutableClock(TestGroup.MORNING);
    private Database database;
    private DiskRoom room;
    private Server server;
    private List<Person> cast;

    @BeforeEach
    void live() {
        database = Settings.onFreePort(data).openDatabase();
        room = database.room().orElseThrow();
        cast = TestGroup.moveIn(database, new Audit(clock));
        server = Server.start(Settings.onFreePort(data), database, clock);
    }

    @AfterEach
    void stop() {
        server.close();
        database.close();
    }

    @Test
    void writing_waits_reading_goes_on_and_all_goes_on_by_itself_when_there_is_room() {
        room.keepFree(0);
        Browser ilse = signedIn(cast.get(0));
        assertThat(lot(ilse).status()).isEqualTo(303);

        room.keepFree(room.free() * 5 / 4);
        Answer refused = lot(ilse);
        assertThat(refused.status()).isEqualTo(503);
        assertThat(refused.header("Retry-After")).isEqualTo("60");
        assertThat(refused.text()).contains("The disk of the server is full, so nothing was saved.");
        assertThat(ticks(ilse).status()).as("a phone keeps them upon it").isEqualTo(503);
        assertThat(ilse.get("/seeds").status()).isEqualTo(200);
        assertThat(ilse.get("/today").text())
                .contains("The disk of the server is full.", "Make room on it, then all goes on by itself");
        assertThat(signedIn(cast.get(1)).get("/today").text())
                .as("somebody who signs in meanwhile")
                .contains("The disk of the server is full.", "Tell a coordinator");
        assertThat(ilse.get("/health").body())
                .contains("\"ready\":true", "\"disk\":{\"state\":\"full\",\"writes\":false}", "\"disk-full\"");

        room.keepFree(room.free() * 2 / 3);
        assertThat(ilse.get("/today").text()).contains("The disk of the server is filling.");
        assertThat(signedIn(cast.get(1)).get("/today").text()).doesNotContain("is filling");
        assertThat(ilse.get("/health").body()).contains("\"disk-low\"", "\"writes\":true");

        room.keepFree(0);
        assertThat(lot(ilse).status()).isEqualTo(303);
        assertThat(ilse.get("/today").text()).doesNotContain("The disk of the server");
    }

    @Test
    void what_the_program_writes_by_itself_waits_too_once_half_of_the_rest_is_gone() {
        room.keepFree(MORE_THAN_ANY_DISK_HAS);
        Browser stranger = Browser.at("http://127.0.0.1:" + server.port());

        Answer answer = stranger.post(
                "/sign-in",
                Map.of("name", "Ilse Brandt", "passphrase", cast.get(0).passphrase()));

        assertThat(answer.status()).isEqualTo(503);
        assertThat(answer.text()).contains("The disk of the server is full");
        assertThat(stranger.get("/sign-in").status()).isEqualTo(200);
    }

    private Browser signedIn(Person person) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.setCookie("warmshelf", new SessionStore(database, clock).open(person.id()));
        return browser;
    }

    private static Answer ticks(Browser browser) {
        return browser.send(browser.request("/round/entries")
                .header("Accept", "application/json")
                .header("X-CSRF-Token", String.valueOf(browser.token()))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"entries\":[]}")));
    }

    private static Answer lot(Browser browser) {
        return browser.post(
                "/seeds", Map.of("crop", "pepper", "variety", "Cellar Red", "year", "2026", "owner", "group"));
    }
}
