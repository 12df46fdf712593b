package warmshelf.jar;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** What was acknowledged is there after the process was killed in the middle of writing. */
class PowerCutIT {
    private static final int ACKNOWLEDGED_BEFORE_THE_CUT = 40;
    private static final int MOST_WRITES = 5_000;

    @TempDir
    private Path data;

    @RepeatedTest(3)
    void nothing_that_was_acknowledged_is_lost() throws InterruptedException {
        Kept kept;
        String session;
        try (JarServer server = JarServer.start("--data", data.toString())) {
            Browser coordinator = server.openGroup();
            session = String.valueOf(coordinator.cookie("warmshelf"));
            kept = writeUntilCut(server, coordinator);
        }

        try (JarServer again = JarServer.start("--data", data.toString())) {
            Browser browser = again.browser();
            browser.setCookie("warmshelf", session);

            List<String> lost = kept.lots().stream()
                    .filter(lot -> browser.get(lot).status() != 200)
                    .toList();

            assertThat(kept.lots()).hasSizeGreaterThanOrEqualTo(ACKNOWLEDGED_BEFORE_THE_CUT);
            assertThat(kept.cutWhileWriting()).isTrue();
            assertThat(lost).isEmpty();
        }
    }

    private static Kept writeUntilCut(JarServer server, Browser coordinator) throws InterruptedException {
        List<String> kept = new CopyOnWriteArrayList<>();
        CountDownLatch enough = new CountDownLatch(ACKNOWLEDGED_BEFORE_THE_CUT);
        List<Throwable> cut = new CopyOnWriteArrayList<>();
        Thread writer = new Thread(() -> {
            try {
                for (int number = 1; number <= MOST_WRITES; number++) {
                    kept.add(addLot(coordinator, number).location());
                    enough.countDown();
                }
            } catch (java.io.UncheckedIOException connectionGone) {
                cut.add(connectionGone);
            }
        });
        writer.start();
        assertThat(enough.await(60, TimeUnit.SECONDS)).isTrue();
        server.kill();
        writer.join(60_000);
        return new Kept(new ArrayList<>(kept), !cut.isEmpty());
    }

    private static Answer addLot(Browser coordinator, int number) {
        Answer answer = coordinator.post(
                "/seeds", Map.of("crop", "pepper", "variety", "Jar " + number, "year", "2026", "owner", "group"));
        if (answer.status() != 303) {
            throw new IllegalStateException("not acknowledged: " + answer.status());
        }
        return answer;
    }

    /** The addresses of the lots that were acknowledged, and whether the process died while one more was on its way. */
    private record Kept(List<String> lots, boolean cutWhileWriting) {}
}
