package warmshelf.plan.engine.solver;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The temporary folders in which the solver unpacks its native library, some 65 MB each. */
final class SolverFolders {
    private static final String NAME = "warmshelf-solver";
    private static final Duration KEPT = Duration.ofDays(1);

    private SolverFolders() {}

    /** A new folder. Those that are older than a day were left behind by a process that was killed; they go. */
    static Path create() throws IOException {
        return create(Path.of(System.getProperty("java.io.tmpdir")));
    }

    static Path create(Path parent) throws IOException {
        Path folder = Files.createTempDirectory(parent, NAME);
        // the new folder's own time is now, by the clock that gave the others theirs
        clean(parent, Files.getLastModifiedTime(folder).toInstant().minus(KEPT));
        return folder;
    }

    private static void clean(Path parent, Instant before) {
        List<Path> left = List.of();
        try (Stream<Path> files = Files.list(parent)) {
            left = files.filter(path -> path.getFileName().toString().startsWith(NAME))
                    .filter(path -> isOlder(path, before))
                    .toList();
        } catch (IOException | UncheckedIOException unreadable) {
            // what cannot be listed is left to the operating system
        }
        left.forEach(SolverFolders::delete);
    }

    private static boolean isOlder(Path path, Instant before) {
        try {
            return Files.getLastModifiedTime(path).toInstant().isBefore(before);
        } catch (IOException gone) {
            return false;
        }
    }

    static void delete(@Nullable Path folder) {
        if (folder == null) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(path -> path.toFile().delete());
        } catch (IOException | UncheckedIOException gone) {
            // a temporary folder that cannot be read is left to the operating system
        }
    }
}
