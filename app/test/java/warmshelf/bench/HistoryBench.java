package warmshelf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What each page and a tick cost the processor in a group of some size with some seasons behind it, in a process of its own with a
 * heap of 256 MiB, beside what they cost when that was kept last. Words: members, seasons before this one, and 'keep' to keep the
 * figures.
 */
public final class HistoryBench {
    private static final Duration WARM_UP = Duration.ofMillis(300);
    private static final Duration MEASURED = Duration.ofMillis(1_500);
    private static final int FEWEST = 3;
    private static final int MANY_TICKS = 40;
    private static final Pattern SOWING = Pattern.compile("id=\"s-([0-9a-f-]{36})\"");
    private static final Pattern LOT = Pattern.compile("/seeds/([0-9a-f-]{36})");

    private final BenchProcess server;
    private final BenchGroup group;
    private final KeptFigures figures;
    private final List<String> sowings;

    private HistoryBench(BenchProcess server, BenchGroup group, KeptFigures figures) throws IOException {
        this.server = server;
        this.group = group;
        this.figures = figures;
        this.sowings = found(SOWING, "/today?show=all", group.onDutySession());
    }

    public static void main(String[] words) throws IOException, InterruptedException {
        int members = words.length > 0 ? Integer.parseInt(words[0]) : 2_000;
        int seasons = words.length > 1 ? Integer.parseInt(words[1]) : 5;
        boolean keep = words.length > 2 && words[2].equals("keep");
        boolean large = members > 200;
        BenchGroup.Size size = new BenchGroup.Size(members, seasons, large ? 10 : 2, large ? 10 : 2);
        Path folder = Files.createTempDirectory("warmshelf-history-bench");
        KeptFigures figures = new KeptFigures("%d members, %d seasons before".formatted(members, seasons));
        try {
            BenchGroup group = KeptBenchGroup.copyInto(folder, size);
            System.out.println("A group of " + group.words() + "; processor milliseconds, those kept last behind them");
            try (BenchProcess first = BenchProcess.application(folder)) {
                figures.tell("first start, with the migration", (double)
                        first.processorTime().toMillis());
            }
            try (BenchProcess server = BenchProcess.application(folder)) {
                figures.tell("start to the first page", (double)
                        server.processorTime().toMillis());
                // Once for the compiler, so that what is told is not its work.
                new HistoryBench(server, group, new KeptFigures("")).measure();
                new HistoryBench(server, group, figures).measure();
                System.out.printf(
                        "heap in use %.0f MiB, resident %d MiB%n", server.liveHeapMiB(), server.residentMiB());
            }
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
        if (keep) {
            figures.keep();
        }
    }

    private void measure() throws IOException {
        String member = group.memberSession();
        String duty = group.onDutySession();
        String coordinator = group.coordinatorSession();
        page("Today, a member's", "/today", member);
        page("whole round", "/today?show=all", duty);
        page("Racks", "/racks", member);
        page("Weeks", "/weeks", member);
        page("Seed box", "/seeds", member);
        page("Ask: the plan", plan(member), member);
        page("Ask: what to grow", "/ask?q=tom", member);
        page("To decide", "/requests", coordinator);
        page("Supplies", "/supplies", coordinator);
        page("People", "/people", member);
        page("a sowing", "/sowings/" + sowings.get(0), member);
        page("Findings", "/findings", member);
        page("Predictions", "/findings/predictions", member);
        double tick = each("one tick", () -> tick(1));
        each("forty ticks in one request", () -> tick(MANY_TICKS));
        after("Today, a member's, right after an entry", "/today", member, tick);
        after("whole round, right after an entry", "/today?show=all", duty, tick);
    }

    private String plan(String session) throws IOException {
        String lot = found(LOT, "/seeds", session).get(0);
        return "/ask/plan?lot=" + lot + "&plants=6&method=cells&heat=warm&after=light&container=tray&where=outdoors";
    }

    private List<String> found(Pattern what, String path, String session) throws IOException {
        try (Wire wire = new Wire(server.port())) {
            return what.matcher(wire.get(new Load.Ask(path, session, false)).text())
                    .results()
                    .map(each -> each.group(1))
                    .distinct()
                    .toList();
        }
    }

    /** Does something once. */
    private interface Work {
        void once() throws IOException;
    }

    private void page(String what, String path, String session) throws IOException {
        each(what, () -> get(path, session));
    }

    private void after(String what, String path, String session, double tick) throws IOException {
        double both = cost(() -> {
            tick(1);
            get(path, session);
        });
        figures.tell(what, Math.max(0, both - tick));
    }

    private double each(String what, Work work) throws IOException {
        try {
            double cost = cost(work);
            figures.tell(what, cost);
            return cost;
        } catch (IOException failed) {
            System.out.println(what + ": " + failed.getMessage());
            return 0;
        }
    }

    /** The server's own processor time for one, once it is warm. */
    private double cost(Work work) throws IOException {
        repeat(work, WARM_UP);
        Duration before = server.processorTime();
        int times = repeat(work, MEASURED);
        return server.processorTime().minus(before).toNanos() / 1e6 / times;
    }

    private static int repeat(Work work, Duration time) throws IOException {
        long end = System.nanoTime() + time.toNanos();
        int times = 0;
        while (times < FEWEST || System.nanoTime() < end) {
            work.once();
            times++;
        }
        return times;
    }

    private void get(String path, String session) throws IOException {
        try (Wire wire = new Wire(server.port())) {
            Wire.Reply reply = wire.get(new Load.Ask(path, session, true));
            if (reply.status() != 200) {
                throw new IOException("status " + reply.status() + " at " + path);
            }
        }
    }

    private int next;

    private void tick(int count) throws IOException {
        String now = Instant.now().toString();
        List<String> looks = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            UUID id = UUID.randomUUID();
            // a look that says nothing new would not be kept
            looks.add(
                    "{\"id\":\"%s\",\"sowing\":\"%s\",\"step\":\"look\",\"seenAt\":\"%s\",\"pageAt\":\"%s\",\"note\":\"look %s\"}"
                            .formatted(id, sowings.get(next++ % sowings.size()), now, now, id));
        }
        String body =
                looks.stream().collect(Collectors.joining(",", "{\"sentAt\":\"" + now + "\",\"entries\":[", "]}"));
        try (Wire wire = new Wire(server.port())) {
            String answer =
                    wire.post("/round/entries", group.onDutySession(), body).text();
            Matcher kept = Pattern.compile("\"answer\":\"kept\"").matcher(answer);
            if (kept.results().count() != count) {
                throw new IOException("not kept: " + answer);
            }
        }
    }
}
