package warmshelf.bench;

import static warmshelf.db.generated.Tables.ENTRY;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestDatabase;

/**
 * Several programs on one PostgreSQL database behind nginx, with the settings in app/deploy, while people read and tick: each is
 * restarted in turn, then one is killed. Counts what was answered amiss, and looks in the database for every tick that was
 * acknowledged. Needs nginx and TEST_JDBC_URL; takes a minute or two. How many programs is the first word, else two.
 */
public final class NodesBench {
    private static final Pattern SOWING = Pattern.compile("id=\"s-([0-9a-f-]{36})\"");
    private static final int READERS = 3;
    private static final Duration BETWEEN = Duration.ofSeconds(4);

    private final String address;
    private final BenchGroup group;
    private final AtomicBoolean goesOn = new AtomicBoolean(true);
    private final AtomicInteger answered = new AtomicInteger();
    private final Map<String, Integer> amiss = new ConcurrentHashMap<>();
    private final Queue<UUID> acknowledged = new ConcurrentLinkedQueue<>();

    private NodesBench(String address, BenchGroup group) {
        this.address = address;
        this.group = group;
    }

    public static void main(String[] words) throws IOException, InterruptedException {
        int count = words.length > 0 ? Integer.parseInt(words[0]) : 2;
        Path folder = Files.createTempDirectory("warmshelf-nodes");
        List<BenchProcess> nodes = new ArrayList<>();
        boolean well = false;
        try (TestDatabase database = TestDatabase.postgres()) {
            BenchGroup group = BenchGroup.fill(database.database(), LocalDate.now(BenchGroup.ZONE), 2);
            NginxProcess nginx = NginxProcess.inFrontOf(count, folder);
            try (nginx) {
                for (int port : nginx.programs()) {
                    nodes.add(BenchProcess.node(port, database.address(), nginx.address()));
                }
                well = new NodesBench(nginx.address(), group).run(nodes, database, nginx.address());
            }
        } finally {
            for (BenchProcess node : nodes) {
                node.close();
            }
        }
        System.exit(well ? 0 : 1);
    }

    private boolean run(List<BenchProcess> nodes, TestDatabase database, String baseUrl)
            throws IOException, InterruptedException {
        List<Thread> people = new ArrayList<>();
        for (int reader = 0; reader < READERS; reader++) {
            people.add(begin(this::read));
        }
        people.add(begin(this::tick));
        TimeUnit.MILLISECONDS.sleep(BETWEEN.toMillis());
        for (int node = 0; node < nodes.size(); node++) {
            int port = nodes.get(node).port();
            nodes.get(node).close();
            nodes.set(node, BenchProcess.node(port, database.address(), baseUrl));
            TimeUnit.MILLISECONDS.sleep(BETWEEN.toMillis());
        }
        boolean nothingFailed = amiss.isEmpty();
        tell("each of %d programs restarted in turn".formatted(nodes.size()));
        nodes.get(0).kill();
        TimeUnit.MILLISECONDS.sleep(2 * BETWEEN.toMillis());
        goesOn.set(false);
        for (Thread person : people) {
            person.join();
        }
        tell("one of them killed");
        int lost = acknowledged.size()
                - database.database().sql().fetchCount(ENTRY, ENTRY.ID.in(List.copyOf(acknowledged)));
        System.out.printf("%d ticks were acknowledged, %d of them are lost%n", acknowledged.size(), lost);
        return nothingFailed && lost == 0;
    }

    private void tell(String what) {
        System.out.printf("%s: %d answered, amiss so far: %s%n", what, answered.get(), new TreeMap<>(amiss));
    }

    private static Thread begin(Runnable work) {
        Thread thread = new Thread(work);
        // where something breaks off, nobody goes on asking
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private void read() {
        Browser browser = browser(group.memberSession());
        while (goesOn.get()) {
            for (String path : List.of("/today", "/racks", "/sowings", "/weeks")) {
                count("GET", () -> browser.get(path));
            }
        }
    }

    private void tick() {
        Browser browser = browser(group.onDutySession());
        List<String> sowings = SOWING.matcher(browser.get("/today?show=all").body())
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
        for (int number = 0; goesOn.get(); number++) {
            UUID id = UUID.randomUUID();
            String now = Instant.now().toString();
            String body =
                    "{\"sentAt\":\"%s\",\"entries\":[{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",\"seenAt\":\"%s\",\"pageAt\":\"%s\",\"note\":\"%d\"}]}"
                            .formatted(now, id, sowings.get(number % sowings.size()), now, now, number);
            String answer = count(
                    "POST",
                    () -> browser.send(browser.request("/round/entries")
                            .header("Content-Type", "application/json")
                            .POST(HttpRequest.BodyPublishers.ofString(body))));
            if (answer.contains("\"answer\":\"kept\"")) {
                acknowledged.add(id);
            }
        }
    }

    /** One request: its text, or nothing where it went amiss. */
    private String count(String method, Request request) {
        try {
            Answer answer = request.send();
            if (answer.status() < 400) {
                answered.incrementAndGet();
                return answer.body();
            }
            amiss.merge(method + " " + answer.status(), 1, Integer::sum);
        } catch (RuntimeException notSent) {
            amiss.merge(method + " " + notSent.getClass().getSimpleName(), 1, Integer::sum);
        }
        return "";
    }

    private Browser browser(String session) {
        Browser browser = Browser.at(address);
        browser.setCookie("warmshelf", session);
        return browser;
    }

    private interface Request {
        Answer send();
    }
}
