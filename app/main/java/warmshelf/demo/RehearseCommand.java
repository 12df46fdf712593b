package warmshelf.demo;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import warmshelf.Output;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.group.SessionStore;
import warmshelf.web.SessionCookie;

/**
 * Starts a server with the demo group, asks for its pages and ends, so that Java can write down which classes a start needs and as
 * what it read them. A Java that is told of that file starts in about half of the time, and without it all the same.
 */
@Command(
        name = "rehearse",
        description =
                "Start once with the invented group of the demo, ask for the main pages, and end. Java notes meanwhile what a"
                        + " start needs when it is told to, and later starts take about half of the time; the handbook's page on backup"
                        + " says how, under upgrades.",
        footerHeading = "%n",
        footer = {"Prints pages: how many answered."},
        mixinStandardHelpOptions = true)
public final class RehearseCommand implements Callable<Integer> {
    private static final List<String> PAGES = List.of(
            "/today",
            "/today?show=all",
            "/racks",
            "/weeks",
            "/requests",
            "/sowings",
            "/ask",
            "/seeds",
            "/people",
            "/duty",
            "/plans",
            "/findings",
            "/supplies",
            "/frost");
    private static final List<String> FOR_STRANGERS = List.of("/sign-in", "/help");
    private static final int OK = 200;

    @Override
    public Integer call() throws IOException {
        Path folder = DemoFolder.make();
        try (Database database = Settings.onFreePort(folder).openDatabase()) {
            DemoDay day = DemoDay.on(Clock.systemUTC().instant());
            Clock clock = day.clock(Clock.systemUTC());
            database.together(() -> DemoGroup.fill(database, clock.instant()));
            try (Server server = Server.start(Settings.onFreePort(folder), database, clock)) {
                String cookie = new SessionCookie(false).sent(session(database, clock));
                int answered = answered(server, FOR_STRANGERS, "") + answered(server, PAGES, cookie);
                Output.json(Map.of("pages", answered));
            }
        } finally {
            DemoFolder.delete(folder);
        }
        return 0;
    }

    private static String session(Database database, Clock clock) {
        Member coordinator = new MemberStore(database, new Audit(clock))
                .all().stream().filter(Member::coordinator).findFirst().orElseThrow();
        return new SessionStore(database, clock).open(coordinator.id());
    }

    private static int answered(Server server, List<String> pages, String cookie) throws IOException {
        int answered = 0;
        for (String path : pages) {
            URI address = URI.create("http://127.0.0.1:" + server.port() + path);
            HttpURLConnection asked = (HttpURLConnection) address.toURL().openConnection();
            asked.setInstanceFollowRedirects(false);
            asked.setRequestProperty("Cookie", cookie);
            asked.setRequestProperty("Accept-Encoding", "br");
            if (asked.getResponseCode() == OK) {
                asked.getInputStream().readAllBytes();
                answered++;
            }
            asked.disconnect();
        }
        return answered;
    }
}
