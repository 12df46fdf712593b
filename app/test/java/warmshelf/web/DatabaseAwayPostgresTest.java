package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.db.Database;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Forwarder;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/** A PostgreSQL that goes away and comes back under a running program. */
class DatabaseAwayPostgresTest {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final Pattern SERVER = Pattern.compile("//([^/:]+):(\\d+)/");

    private TestGroup group;
    private Forwarder way;
    private Database database;
    private Server server;
    private Browser tom;

    @BeforeEach
    void start() throws IOException {
        TestDatabase place = TestDatabase.postgres();
        group = TestGroup.open(place);
        Matcher address = SERVER.matcher(place.address());
        assertThat(address.find()).isTrue();
        way = Forwarder.to(address.group(1), Integer.parseInt(address.group(2)));
        database = Database.open(address.replaceFirst("//127.0.0.1:" + way.port() + "/"), null, null);
        server = Server.start(Settings.onFreePort(Path.of("unused")), database, group.clock());
        tom = Browser.at("http://127.0.0.1:" + server.port());
        tom.setCookie("warmshelf", String.valueOf(group.signedIn(group.member()).cookie("warmshelf")));
    }

    @AfterEach
    void stop() throws IOException {
        if (server != null) {
            server.close();
            database.close();
            way.close();
            group.close();
        }
    }

    @Test
    void pages_say_so_with_a_time_to_come_again_and_go_on_by_themselves() {
        assertThat(tom.get("/today").status()).isEqualTo(200);

        way.takeAway();
        Answer page = tom.get("/today");
        Answer entry = tom.post("/sign-out");
        Answer health = tom.get("/health");
        way.giveBack();

        assertThat(page.status()).isEqualTo(503);
        assertThat(page.header("Retry-After")).contains("5");
        assertThat(page.text()).contains("The group’s records cannot be reached at this moment");
        assertThat(entry.status()).isEqualTo(503);
        assertThat(health.status()).isEqualTo(503);
        assertThat(onceItAnswers("/today").status()).isEqualTo(200);
    }

    /** A page as a browser comes to it that follows Retry-After: a lost connection is only found when it is used. */
    private Answer onceItAnswers(String path) {
        Instant end = Instant.now().plus(PATIENCE);
        Answer answer = tom.get(path);
        while (answer.status() == 503 && Instant.now().isBefore(end)) {
            answer = tom.get(path);
        }
        return answer;
    }
}
