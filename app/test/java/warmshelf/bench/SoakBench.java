package warmshelf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.db.Database;
import warmshelf.demo.FilledDemo;
import warmshelf.testing.Browser;
import warmshelf.testing.PoolOf;

/**
 * What only shows after hours: the demo group lives through most of a year in an hour (or the minutes given as the first word),
 * over both changes of the clocks and into the next year, while people read, tick, ask, place and move, and the pool retires its
 * connections every few seconds. Counts each answer that was not expected and each fault that was logged.
 */
public final class SoakBench {
    private static final Instant FROM = Instant.parse("2027-02-20T15:00:00Z");
    private static final Duration WHOLE = Duration.ofDays(320);
    private static final Duration RETIRED_EVERY = Duration.ofSeconds(5);
    private static final String ASK =
            "/ask/plan?crop=%s&lot=&variety=Long+red&seedYear=2026&source=packet&storage=unknown&plants=6&method=cells"
                    + "&heat=warm&after=light&container=half-tray&where=outdoors&cellsInATray=72&risk=";

    private SoakBench() {}

    public static void main(String[] words) throws IOException, InterruptedException {
        Duration length = Duration.ofMinutes(words.length > 0 ? Long.parseLong(words[0]) : 60);
        Path folder = Files.createTempDirectory("warmshelf-soak-bench");
        boolean asExpected;
        try (Database database = Database.inFolder(folder)) {
            asExpected = soak(folder, database, length);
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
        System.exit(asExpected ? 0 : 1);
    }

    private static boolean soak(Path folder, Database database, Duration length)
            throws IOException, InterruptedException {
        QuickClock start = new QuickClock(FROM, Duration.ofMillis(1), Duration.ofDays(1));
        FilledDemo demo = FilledDemo.in(database, start);
        QuickClock clock = new QuickClock(FROM, WHOLE, length);
        SoakTally tally = new SoakTally();
        try (Server server = Server.start(Settings.onFreePort(folder), database, clock)) {
            AtomicBoolean goesOn = new AtomicBoolean(true);
            List<Thread> people = new ArrayList<>();
            for (SoakPerson person : people(server, demo, clock, tally, goesOn)) {
                Thread thread = new Thread(person);
                thread.start();
                people.add(thread);
            }
            long end = System.nanoTime() + length.toNanos();
            while (System.nanoTime() < end) {
                Thread.sleep(Math.min(RETIRED_EVERY.toMillis(), Math.max(1, (end - System.nanoTime()) / 1_000_000)));
                PoolOf.database(database).retire();
            }
            goesOn.set(false);
            for (Thread each : people) {
                each.join();
            }
            System.out.printf(
                    "from %s to %s in %d minutes; the file has %.1f MB, %.0f MiB of heap are in use%n",
                    FROM, clock.instant(), length.toMinutes(), megabytes(folder), heapMebibytes());
            return tally.print();
        }
    }

    private static List<SoakPerson> people(
            Server server, FilledDemo demo, QuickClock clock, SoakTally tally, AtomicBoolean goesOn) {
        List<String> asks = new ArrayList<>(List.of("/sowings", "/seeds", "/today", "/supplies", "/frost/garden"));
        for (String crop : List.of("pepper", "tomato", "cabbage", "basil", "broccoli")) {
            asks.add(ASK.formatted(crop));
        }
        return List.of(
                person(
                        server,
                        demo.onDuty(),
                        List.of("/today?show=all", "/today", "/today?show=one", "/weeks"),
                        "/sowings/[^/]+/entries|/mats/[^/]+/readings|/sowings/[^/]+/freed-place",
                        clock,
                        tally,
                        goesOn,
                        1),
                person(
                        server,
                        demo.member(),
                        asks,
                        "/sowings|/sowings/[^/]+/(entries|first-choice|withdrawal)|/seeds/[^/]+/tests|/supplies|/notes/.*",
                        clock,
                        tally,
                        goesOn,
                        2),
                person(
                        server,
                        demo.coordinator(),
                        List.of("/requests", "/racks", "/weeks", "/duty", "/duty/proposal", "/people", "/plans"),
                        "/requests/.*|/stays/[^/]+/(move|undo|release)|/duty/proposal|/duty",
                        clock,
                        tally,
                        goesOn,
                        3),
                person(
                        server,
                        demo.member(),
                        List.of("/today", "/racks", "/weeks", "/how-to", "/numbers", "/help", "/reminders", "/code"),
                        "/reminders/calendar",
                        clock,
                        tally,
                        goesOn,
                        4));
    }

    private static SoakPerson person(
            Server server,
            String name,
            List<String> pages,
            String sends,
            QuickClock clock,
            SoakTally tally,
            AtomicBoolean goesOn,
            int number) {
        return new SoakPerson(
                Browser.at("http://127.0.0.1:" + server.port()),
                name,
                pages,
                Pattern.compile(sends),
                clock,
                FilledDemo.PASSPHRASE,
                tally,
                goesOn,
                new Random(number));
    }

    private static double megabytes(Path folder) throws IOException {
        return Files.size(folder.resolve("warmshelf.mv.db")) / 1e6;
    }

    private static double heapMebibytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0;
    }
}
