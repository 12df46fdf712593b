package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Upload;

/** Sends files as a coordinator does and waits until they are read. */
final class SentFiles {
    static final String STATIONS = """
            station,latitude,longitude,elevation_m,spring_p50,autumn_p50
            Lakeside,46.8,-92.1,180,05-14,10-10
            Hilltop,46.9,-92.2,1420000,05-20,09-28
            """;
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final Browser coordinator;

    SentFiles(Browser coordinator) {
        this.coordinator = coordinator;
    }

    /** With the place that a record of nights lacks. */
    static Upload placed(Upload upload) {
        return upload.field("latitude", "46.8").field("longitude", "-92.1").field("elevation", "600");
    }

    /** The address of the import that has begun. */
    String sent(Upload upload) {
        Answer answer = upload.post(coordinator, "/frost/imports");
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return answer.location();
    }

    /** The page once the reading has ended, however long that takes, as long as it gets on. */
    Answer read(String address) {
        long movedAt = System.nanoTime();
        String before = "";
        for (String now = progress(address); now.contains("\"busy\":true"); now = progress(address)) {
            if (!now.equals(before)) {
                movedAt = System.nanoTime();
                before = now;
            }
            assertThat(System.nanoTime() - movedAt).as("the reading gets on").isLessThan(PATIENCE.toNanos());
            LockSupport.parkNanos(5_000_000);
        }
        return coordinator.get(address);
    }

    private String progress(String address) {
        return coordinator.getJson(address).body();
    }

    /** Number of files of this process left in its temporary folders. */
    static long leftFiles() {
        long until = System.nanoTime() + PATIENCE.toNanos();
        long left = countLeft();
        // the server throws away what it received just after it has answered
        while (left > 0 && System.nanoTime() < until) {
            LockSupport.parkNanos(5_000_000);
            left = countLeft();
        }
        return left;
    }

    private static long countLeft() {
        String pid = String.valueOf(ProcessHandle.current().pid());
        try (Stream<Path> folders = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            long count = 0;
            for (Path folder : folders.filter(
                            path -> path.getFileName().toString().startsWith("warmshelf-uploads-" + pid))
                    .toList()) {
                try (Stream<Path> files = Files.walk(folder)) {
                    count += files.filter(Files::isRegularFile).count();
                }
            }
            return count;
        } catch (IOException | java.io.UncheckedIOException gone) {
            return 1;
        }
    }
}
