package warmshelf.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** An empty folder that is gone, with all in it, when it is closed. */
record WorkFolder(Path path) implements AutoCloseable {
    static WorkFolder in(Path folder, String name) throws IOException {
        return new WorkFolder(Files.createTempDirectory(folder, name));
    }

    static WorkFolder anywhere() throws IOException {
        return new WorkFolder(Files.createTempDirectory("warmshelf-check"));
    }

    @Override
    public void close() throws IOException {
        try (Stream<Path> files = Files.walk(path)) {
            List<Path> deepest = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepest) {
                Files.deleteIfExists(file);
            }
        }
    }
}
