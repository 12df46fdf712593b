package warmshelf.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import warmshelf.testing.Browser;

/**
 * Measures what a group of 200 members would feel: start, memory, pages a second beside a bare handler, and what a page weighs.
 * Everything runs on this machine, asks 127.0.0.1 only, and ends by itself after about two minutes.
 */
public final class Bench {
    private static final Duration WARM_UP = Duration.ofSeconds(8);
    // A slow machine takes a minute to compile what is used most; till then it measures the compiler.
    private static final int WARM_UPS = 8;
    private static final double STILL_WARMING = 1.05;
    private static final Duration MEASURED = Duration.ofSeconds(6);
    private static final int WRITES = 31;
    private static final Pattern LINKED = Pattern.compile("(?:href|src)=\"(/static/[^\"]+)\"");

    private static final Pattern CHECK = Pattern.compile("class=\"round__check\"");

    private Bench() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("warmshelf-bench");
        try {
            BenchGroup group = BenchGroup.moveInto(folder, LocalDate.now(BenchGroup.ZONE));
            System.out.println("A group of " + group.words());
            measureStart(folder);
            measureRunning(folder, group);
        } finally {
            delete(folder);
        }
    }

    private static void measureStart(Path folder) throws IOException, InterruptedException {
        List<Duration> starts = new ArrayList<>();
        for (int run = 0; run < 3; run++) {
            try (BenchProcess server = BenchProcess.application(folder)) {
                starts.add(server.startTime());
            }
        }
        starts.sort(Comparator.naturalOrder());
        line("Start to first page", "%.2f s", starts.get(1).toMillis() / 1000.0, "under 3 s");
    }

    private static void measureRunning(Path folder, BenchGroup group) throws IOException, InterruptedException {
        List<Page> pages = List.of(
                new Page("Today, a member's own", "/today", group.memberSession()),
                new Page("Today, the whole round", "/today", group.onDutySession()),
                new Page("Racks", "/racks", group.memberSession()));
        List<Load.Rate> plain = new ArrayList<>();
        List<Load.Rate> packed = new ArrayList<>();
        Path today = folder.resolve("today.html");
        try (BenchProcess server = BenchProcess.application(folder)) {
            weigh(server, pages);
            Files.writeString(today, text(server, pages.get(0)), StandardCharsets.UTF_8);
            for (Page page : pages) {
                plain.add(rate(server, page.ask(false)));
                packed.add(rate(server, page.ask(true)));
            }
            line(
                    "Today, the whole round, right after an entry",
                    "%.0f ms",
                    medianAfterWriting(server, group.onDutySession()),
                    "");
            line(
                    "40 queued ticks in one request",
                    "%.0f ms",
                    QueuedTicks.medianMillis(server, group.onDutySession(), 40),
                    "");
            line("Heap in use after the load (-Xmx256m)", "%.0f MiB", server.liveHeapMiB(), "under 256 MiB");
            line("Memory resident after the load", "%.0f MiB", (double) server.residentMiB(), "");
        }
        try (BenchProcess bare = BenchProcess.bare(today)) {
            Load.Rate constant = rate(bare, new Load.Ask("/constant", "", false));
            Load.Rate samePage = rate(bare, new Load.Ask("/page", "", false));
            Load.Rate samePacked = rate(bare, new Load.Ask("/page", "", true));
            System.out.println();
            row("Pages over 8 connections", "a second", "per CPU second", "of bare", "of bare per CPU second");
            row("Bare handler, a constant", constant, constant);
            row("Bare handler, a member's Today made before", samePage, constant);
            row("Bare handler, the same, packed", samePacked, constant);
            for (int each = 0; each < pages.size(); each++) {
                row(pages.get(each).name(), plain.get(each), constant);
                row(pages.get(each).name() + ", packed", packed.get(each), constant);
            }
            System.out.println("Aim: Today at a quarter or more of the bare handler.");
        }
    }

    private static Load.Rate rate(BenchProcess server, Load.Ask ask) throws IOException, InterruptedException {
        Load load = new Load(server.port());
        double before = 0;
        double now = load.run(ask, WARM_UP, server).perCpuSecond();
        for (int round = 1; round < WARM_UPS && now > before * STILL_WARMING; round++) {
            before = now;
            now = load.run(ask, WARM_UP, server).perCpuSecond();
        }
        return load.run(ask, MEASURED, server);
    }

    /** What a first visit costs: the page and every file it links, as they come over the wire, headers included. */
    private static void weigh(BenchProcess server, List<Page> pages) throws IOException {
        try (Wire wire = new Wire(server.port())) {
            for (Page page : pages) {
                Wire.Reply reply = wire.get(page.ask(true));
                Set<String> linked = new LinkedHashSet<>();
                LINKED.matcher(reply.text()).results().forEach(found -> linked.add(found.group(1)));
                int all = reply.bytes();
                for (String address : linked) {
                    all += wire.get(new Load.Ask(address, "", true)).bytes();
                }
                line(
                        page.name() + ": first load, " + (linked.size() + 1) + " requests",
                        "%.1f KB",
                        all / 1000.0,
                        page.path().equals("/today") ? "under 60 KB" : "");
                line(page.name() + ": the page alone", "%.1f KB", reply.bytes() / 1000.0, "");
                long checks = CHECK.matcher(reply.text()).results().count();
                if (checks >= 200) {
                    line(page.name() + ": checks on it", "%.0f", (double) checks, "");
                    line(
                            page.name() + ": the page for each 200 checks",
                            "%.1f KB",
                            reply.bytes() * 0.2 / checks,
                            "under 15 KB");
                    Load.Ask again = new Load.Ask(page.path(), page.session(), true, reply.stamp());
                    line(
                            page.name() + ": again, unchanged",
                            "%.1f KB",
                            wire.get(again).bytes() / 1000.0,
                            "");
                }
            }
        }
    }

    /** One person's wait when the page must be worked out anew, because something was written since it last was. */
    private static double medianAfterWriting(BenchProcess server, String session) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.setCookie("warmshelf", session);
        double[] waits = new double[WRITES];
        for (int write = 0; write < WRITES; write++) {
            browser.post("/seeds", Map.of("crop", "kale", "variety", "Jar", "year", "2026", "owner", "mine"));
            long asked = System.nanoTime();
            browser.get("/today");
            waits[write] = (System.nanoTime() - asked) / 1e6;
        }
        Arrays.sort(waits);
        return waits[WRITES / 2];
    }

    private static String text(BenchProcess server, Page page) throws IOException {
        try (Wire wire = new Wire(server.port())) {
            return wire.get(page.ask(false)).text();
        }
    }

    private static void line(String what, String format, double figure, String aim) {
        System.out.printf("%-48s %10s   %s%n", what, format.formatted(figure), aim.isEmpty() ? "" : "aim: " + aim);
    }

    private static void row(String what, Load.Rate rate, Load.Rate bare) {
        row(
                what,
                "%.0f".formatted(rate.perSecond()),
                "%.0f".formatted(rate.perCpuSecond()),
                "%.1f %%".formatted(100 * rate.perSecond() / bare.perSecond()),
                "%.1f %%".formatted(100 * rate.perCpuSecond() / bare.perCpuSecond()));
    }

    private static void row(String... cells) {
        System.out.printf("%-44s %9s %15s %9s %23s%n", (Object[]) cells);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }

    private record Page(String name, String path, String session) {
        Load.Ask ask(boolean packed) {
            return new Load.Ask(path, session, packed);
        }
    }
}
