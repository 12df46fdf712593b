package warmshelf.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Where files lie while they are being sent and read. Its name holds the process's number, so that the next start can clear
 * away what a process left that was killed.
 */
final class UploadFolder implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(UploadFolder.class);
    private static final String NAME = "warmshelf-uploads-";

    private final Path folder;

    private UploadFolder(Path folder) {
        this.folder = folder;
    }

    static UploadFolder open() {
        Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
        clearLeft(temporary);
        try {
            return new UploadFolder(Files.createTempDirectory(
                    temporary, NAME + ProcessHandle.current().pid() + "-"));
        } catch (IOException noRoom) {
            throw new UncheckedIOException(noRoom);
        }
    }

    Path path() {
        return folder;
    }

    @Override
    public void close() {
        delete(folder);
    }

    private static void clearLeft(Path temporary) {
        try (Stream<Path> folders = Files.list(temporary)) {
            folders.filter(UploadFolder::isLeft).toList().forEach(UploadFolder::delete);
        } catch (IOException unreadable) {
            LOG.warn("the temporary folder {} could not be looked through", temporary, unreadable);
        }
    }

    private static boolean isLeft(Path folder) {
        String name = String.valueOf(folder.getFileName());
        if (!name.matches(NAME + "\\d{1,10}-.*")) {
            return false;
        }
        long pid = Long.parseLong(name.substring(NAME.length(), name.indexOf('-', NAME.length())));
        return ProcessHandle.of(pid).isEmpty();
    }

    static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepest = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepest) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | UncheckedIOException left) {
            LOG.warn("the temporary folder {} could not be deleted", folder, left);
        }
    }
}
