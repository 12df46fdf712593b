package warmshelf.bench;

import static warmshelf.db.generated.Tables.ENTRY;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import warmshelf.db.Database;
import warmshelf.testing.Browser;

/**
 * How fast single ticks are taken, and how large the data file grows by them: from one phone, from eight, from eight beside four
 * readers. Then the program is killed while phones tick, again and again: every tick that was acknowledged has to be there
 * afterwards. Words: how many ticks in each part, how many kills.
 */
public final class GrowthBench {
    private static final Pattern SOWING = Pattern.compile("id=\"s-([0-9a-f-]{36})\"");
    private static final int PHONES = 8;
    private static final int READERS = 4;
    private static final int MANY = 100_000;
    private static final int FEWEST = 50;
    private static final int LONGEST_LIFE_MS = 2_000;
    private static final int LONGEST_TRIES = 3_000;

    private final Path folder;
    private final BenchGroup group;
    private final FileSizes sizes;
    private List<String> sowings = List.of();

    private GrowthBench(Path folder, BenchGroup group) {
        this.folder = folder;
        this.group = group;
        this.sizes = new FileSizes(folder.resolve(Database.FILE));
    }

    public static void main(String[] words) throws IOException, InterruptedException {
        int ticks = words.length > 0 ? Integer.parseInt(words[0]) : 5_000;
        int kills = words.length > 1 ? Integer.parseInt(words[1]) : 20;
        Path folder = Files.createTempDirectory("warmshelf-growth");
        BenchGroup group = BenchGroup.moveInto(folder, LocalDate.now(BenchGroup.ZONE));
        System.out.println("A group of " + group.words());
        GrowthBench bench = new GrowthBench(folder, group);
        bench.measure(ticks);
        int lost = bench.kill(kills);
        System.exit(lost == 0 ? 0 : 1);
    }

    private void measure(int ticks) throws IOException, InterruptedException {
        tell("at first");
        try (BenchProcess server = BenchProcess.application(folder)) {
            sowings = sowings(server);
            TickingPhones phones = new TickingPhones(group.onDutySession(), sowings);
            System.out.println("warming up: "
                    + phones.send(server.port(), PHONES, ticks, 0).words());
            tell("warm");
            System.out.println(
                    "one phone: " + phones.send(server.port(), 1, ticks / 2, 0).words());
            tell("after one phone");
            System.out.println("eight phones: "
                    + phones.send(server.port(), PHONES, ticks, 0).words());
            tell("after eight phones");
            System.out.println("eight phones beside four readers: "
                    + phones.send(server.port(), PHONES, ticks, READERS).words());
            tell("after eight phones beside four readers");
        }
        tell("stopped");
    }

    /** Kills it so many times in the middle of ticking; how many acknowledged ticks were lost in all. */
    private int kill(int times) throws IOException, InterruptedException {
        Random random = new Random(18);
        TickingPhones phones = new TickingPhones(group.onDutySession(), sowings);
        for (int round = 1; round <= times; round++) {
            BenchProcess server = BenchProcess.application(folder);
            tell("opened for round " + round);
            int port = server.port();
            Thread ticking = new Thread(() -> {
                try {
                    phones.send(port, PHONES, MANY, 0);
                } catch (InterruptedException ended) {
                    Thread.currentThread().interrupt();
                }
            });
            ticking.start();
            int before = phones.acknowledged().size();
            for (int tries = 0; tries < LONGEST_TRIES && phones.acknowledged().size() < before + FEWEST; tries++) {
                TimeUnit.MILLISECONDS.sleep(10);
            }
            TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST_LIFE_MS));
            server.kill();
            ticking.join();
            tell("killed, %d acknowledged so far"
                    .formatted(phones.acknowledged().size()));
        }
        List<UUID> acknowledged = phones.acknowledged();
        try (Database database = Database.inFolder(folder)) {
            int lost = acknowledged.size() - database.sql().fetchCount(ENTRY, ENTRY.ID.in(acknowledged));
            System.out.printf("%d kills, %d acknowledged, %d lost%n", times, acknowledged.size(), lost);
            return lost;
        }
    }

    private List<String> sowings(BenchProcess server) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.setCookie("warmshelf", group.onDutySession());
        return SOWING.matcher(browser.get("/today?show=all").body())
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
    }

    private void tell(String when) throws IOException {
        System.out.printf("   %s: file %.1f MB, largest %.1f MB%n", when, sizes.now() / 1e6, sizes.largest() / 1e6);
    }
}
