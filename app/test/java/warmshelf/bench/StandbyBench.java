package warmshelf.bench;

import static warmshelf.db.generated.Tables.ENTRY;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.http.HttpRequest;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import warmshelf.db.Database;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/**
 * Eight phones tick one by one on a database of two servers while the primary is killed; each sends a tick again, by its id, until it
 * is acknowledged. Counts ticks that were acknowledged and are lost, those kept twice, and how long none was acknowledged.
 * app/deploy/standby/take-over.sh makes the servers and starts it.
 */
public final class StandbyBench {
    private static final Pattern SOWING = Pattern.compile("id=\"s-([0-9a-f-]{36})\"");
    private static final int PHONES = 8;
    private static final int SECONDS_BEFORE = 10;
    private static final int SECONDS_AFTER = 45;
    private static final double LONGEST_GAP_SECONDS = 30;
    private static final long PAUSE_MS = 200;

    private final Browser[] phones = new Browser[PHONES];
    private final AtomicBoolean goesOn = new AtomicBoolean(true);
    private final Queue<UUID> acknowledged = new ConcurrentLinkedQueue<>();
    private final AtomicLong last = new AtomicLong(System.nanoTime());
    private final AtomicLong longest = new AtomicLong();

    private StandbyBench(String address, String session) {
        for (int phone = 0; phone < PHONES; phone++) {
            phones[phone] = Browser.at(address);
            phones[phone].setCookie("warmshelf", session);
        }
    }

    /**
     * Runs it; ends with 0 when nothing was lost or kept twice, and it went on in time.
     *
     * @param words the address of the database; the command that kills its primary
     */
    public static void main(String[] words) throws IOException, InterruptedException {
        boolean held;
        int port = freePort();
        String address = "http://127.0.0.1:" + port;
        try (Database database = Database.open(words[0], null, null)) {
            BenchGroup group = BenchGroup.fill(database, LocalDate.now(BenchGroup.ZONE), 2);
            try (BenchProcess program = BenchProcess.node(port, words[0], address)) {
                StandbyBench bench = new StandbyBench(address, group.onDutySession());
                bench.tickWhile(words[1]);
                held = bench.judge(database);
            }
        }
        System.exit(held ? 0 : 1);
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private void tickWhile(String kill) throws IOException, InterruptedException {
        List<String> sowings = SOWING.matcher(phones[0].get("/today?show=all").body())
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
        List<Thread> people = new ArrayList<>();
        for (int phone = 0; phone < PHONES; phone++) {
            int number = phone;
            Thread thread = new Thread(() -> tick(phones[number], sowings, number));
            thread.setDaemon(true);
            thread.start();
            people.add(thread);
        }
        TimeUnit.SECONDS.sleep(SECONDS_BEFORE);
        int before = acknowledged.size();
        new ProcessBuilder(kill).inheritIO().start().waitFor();
        TimeUnit.SECONDS.sleep(SECONDS_AFTER);
        goesOn.set(false);
        for (Thread person : people) {
            person.join();
        }
        System.out.printf(
                "%d ticks acknowledged before the primary was killed, %d after%n",
                before, acknowledged.size() - before);
    }

    private void tick(Browser phone, List<String> sowings, int first) {
        for (int number = first; goesOn.get(); number += PHONES) {
            UUID id = UUID.randomUUID();
            String sowing = sowings.get(number % sowings.size());
            while (goesOn.get() && !isKept(phone, id, sowing)) {
                pause();
            }
        }
    }

    private boolean isKept(Browser phone, UUID id, String sowing) {
        String now = Instant.now().toString();
        String body =
                "{\"sentAt\":\"%s\",\"entries\":[{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",\"seenAt\":\"%s\",\"pageAt\":\"%s\",\"note\":\"look %s\"}]}"
                        .formatted(now, id, sowing, now, now, id);
        try {
            Answer answer = phone.send(phone.request("/round/entries")
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(body)));
            if (answer.status() == 200 && answer.body().contains("\"answer\":\"kept")) {
                acknowledged.add(id);
                long moment = System.nanoTime();
                longest.accumulateAndGet(moment - last.getAndSet(moment), Math::max);
                return true;
            }
        } catch (RuntimeException notSent) {
            // it is sent again
        }
        return false;
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean judge(Database database) {
        List<UUID> all = List.copyOf(acknowledged);
        int lost = all.size() - database.sql().fetchCount(ENTRY, ENTRY.ID.in(all));
        int twice = database.sql()
                .select(ENTRY.NOTE)
                .from(ENTRY)
                .where(ENTRY.NOTE.like("look %"))
                .groupBy(ENTRY.NOTE)
                .having(org.jooq.impl.DSL.count().gt(1))
                .fetch()
                .size();
        double gap = longest.get() / 1e9;
        System.out.printf(
                "%d acknowledged, %d of them lost, %d kept twice; %.1f s without one%n", all.size(), lost, twice, gap);
        return lost == 0 && twice == 0 && gap < LONGEST_GAP_SECONDS && !all.isEmpty();
    }
}
