package warmshelf.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A folder for the demo group's data that goes with the program. */
final class DemoFolder {
    private DemoFolder() {}

    static Path make() {
        try {
            return Files.createTempDirectory("warmshelf-demo");
        } catch (IOException refused) {
            throw new UncheckedIOException("no temporary folder can be made for the demo's data", refused);
        }
    }

    static void delete(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException refused) {
            throw new UncheckedIOException("the demo's folder " + folder + " cannot be deleted", refused);
        }
    }
}
