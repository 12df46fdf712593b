package warmshelf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import warmshelf.testing.Browser;

/**
 * Measures the boards, the counter and the findings of a group with 60 mats and some 600 stays: what one person waits for, and what a page
 * weighs.
 */
public final class BoardBench {
    private static final int WARM_UP = 40;
    private static final int MEASURED = 31;

    private BoardBench() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("warmshelf-board-bench");
        try {
            BenchGroup group = BenchGroup.moveInto(folder, LocalDate.now(BenchGroup.ZONE), 5);
            System.out.println("60 mats; a group of " + group.words());
            try (BenchProcess server = BenchProcess.application(folder)) {
                measure(server, group);
            }
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }

    private static void measure(BenchProcess server, BenchGroup group) throws IOException {
        line(server, "Findings of the season", "/findings", group.memberSession());
        line(server, "Predicted and seen", "/findings/predictions", group.coordinatorSession());
        line(server, "Racks, a member", "/racks", group.memberSession());
        line(server, "Racks, a coordinator", "/racks", group.coordinatorSession());
        line(server, "Weeks, a member", "/weeks", group.memberSession());
        line(server, "Weeks, a coordinator", "/weeks", group.coordinatorSession());
        Browser coordinator = browser(server, group.coordinatorSession());
        Matcher stay = Pattern.compile("(/stays/[0-9a-f-]{36})\" data-slot=\"[0-9/]+\" data-from")
                .matcher(coordinator.get("/weeks").body());
        if (!stay.find()) {
            throw new IllegalStateException("nothing lies anywhere in these weeks");
        }
        line(server, "A stay's page", stay.group(1), group.coordinatorSession());
        line(server, "What a move would come to", stay.group(1) + "/move", group.coordinatorSession());
        Matcher request = Pattern.compile("\"(/requests/[0-9a-f-]{36})\"")
                .matcher(coordinator.get("/requests").body());
        if (!request.find()) {
            throw new IllegalStateException("nobody waits for a place");
        }
        line(server, "The counter: a request", request.group(1), group.coordinatorSession());
        line(server, "All requests with offers", "/requests", group.coordinatorSession());
    }

    private static void line(BenchProcess server, String what, String path, String session) throws IOException {
        Browser browser = browser(server, session);
        double[] waits = new double[MEASURED];
        for (int ask = -WARM_UP; ask < MEASURED; ask++) {
            long asked = System.nanoTime();
            browser.get(path);
            if (ask >= 0) {
                waits[ask] = (System.nanoTime() - asked) / 1e6;
            }
        }
        Arrays.sort(waits);
        try (Wire wire = new Wire(server.port())) {
            int plain = wire.get(new Load.Ask(path, session, false)).bytes();
            int packed = wire.get(new Load.Ask(path, session, true)).bytes();
            System.out.printf(
                    "%-28s median %5.1f ms, worst %5.1f ms, %6.1f KB, packed %5.1f KB%n",
                    what, waits[MEASURED / 2], waits[MEASURED - 1], plain / 1000.0, packed / 1000.0);
        }
    }

    private static Browser browser(BenchProcess server, String session) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.setCookie("warmshelf", session);
        return browser;
    }
}
