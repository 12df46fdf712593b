package warmshelf.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.SessionStore;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.MutableClock;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

/**
 * Fills a real disk to the last, twice, and looks whether anything that was acknowledged is lost. Its argument is a folder on a small
 * disk of its own, as an administrator makes by {@code mount -t tmpfs -o size=40m tmpfs FOLDER}.
 */
final class FullDiskBench {
    private static final int LONGEST_TRIES = 300;

    private final Path folder;
    private final MutableClock clock = new MutableClock(TestGroup.MORNING);
    private final Set<String> acknowledged = new HashSet<>();
    private int number;

    private FullDiskBench(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        new FullDiskBench(Path.of(arguments[0])).run();
    }

    private void run() throws IOException, InterruptedException {
        Path data = folder.resolve("data");
        List<Person> cast;
        try (Database database = Settings.onFreePort(data).openDatabase()) {
            cast = TestGroup.moveIn(database, new Audit(clock));
            database.room().orElseThrow().keepFree(8_000_000);
            try (Server server = Server.start(Settings.onFreePort(data), database, clock)) {
                Browser browser = signedIn(server, database, cast.get(0));
                say("with room", write(browser, 50), browser);
                Path filler = fill();
                say("filled by another program, 8 MB to be kept free", write(browser, 50), browser);
                database.room().orElseThrow().keepFree(0);
                say("the same, nothing kept free", write(browser, 100), browser);
                database.room().orElseThrow().keepFree(8_000_000);
                Files.delete(filler);
                say("room again, after " + untilWritten(browser) + " ms", write(browser, 50), browser);
            }
        }
        try (Database again = Settings.onFreePort(data).openDatabase();
                Server server = Server.start(Settings.onFreePort(data), again, clock)) {
            Browser browser = signedIn(server, again, cast.get(0));
            long lost = acknowledged.stream()
                    .filter(lot -> browser.get(lot).status() != 200)
                    .count();
            System.out.printf("acknowledged %d, lost %d%n", acknowledged.size(), lost);
        }
    }

    private Browser signedIn(Server server, Database database, Person person) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.setCookie("warmshelf", new SessionStore(database, clock).open(person.id()));
        return browser;
    }

    /** What so many tries came to, by status. */
    private Map<Integer, Integer> write(Browser browser, int times) {
        Map<Integer, Integer> answers = new TreeMap<>();
        for (int i = 0; i < times; i++) {
            answers.merge(write(browser), 1, Integer::sum);
        }
        return answers;
    }

    private int write(Browser browser) {
        Answer answer = browser.post(
                "/seeds", Map.of("crop", "pepper", "variety", "Jar " + ++number, "year", "2026", "owner", "group"));
        if (answer.status() == 303) {
            acknowledged.add(answer.location());
        }
        return answer.status();
    }

    private long untilWritten(Browser browser) throws InterruptedException {
        long begun = System.nanoTime();
        for (int tries = 0; write(browser) != 303 && tries < LONGEST_TRIES; tries++) {
            Thread.sleep(100);
        }
        return (System.nanoTime() - begun) / 1_000_000;
    }

    private Path fill() {
        Path filler = folder.resolve("filler");
        try (OutputStream out = Files.newOutputStream(filler)) {
            for (int size = 1 << 20; size >= 1; size /= 4) {
                fill(out, new byte[size]);
            }
        } catch (IOException full) {
            return filler;
        }
        return filler;
    }

    private static void fill(OutputStream out, byte[] block) {
        try {
            while (true) {
                out.write(block);
            }
        } catch (IOException full) {
            return;
        }
    }

    private void say(String when, Map<Integer, Integer> answers, Browser browser) {
        try {
            System.out.printf(
                    "%s: writing %s, reading %d and %d, %d KB free%n",
                    when,
                    answers,
                    browser.get("/seeds").status(),
                    browser.get("/today").status(),
                    Files.getFileStore(folder).getUsableSpace() / 1000);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
