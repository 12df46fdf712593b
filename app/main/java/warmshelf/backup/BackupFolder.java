package warmshelf.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The folder in which backups lie, each named by when it was made. What has such a name was proved; the rest is not looked at. */
final class BackupFolder {
    // without colons, which some systems do not take in names
    private static final Pattern NAME =
            Pattern.compile("warmshelf-(\\d{4}-\\d{2}-\\d{2}T)(\\d{2})(\\d{2})(\\d{2})Z\\.zip");

    private final Path path;

    BackupFolder(Path path) {
        this.path = path;
    }

    Path path() {
        return path;
    }

    Path named(Instant at) {
        return path.resolve(
                "warmshelf-" + at.truncatedTo(ChronoUnit.SECONDS).toString().replace(":", "") + ".zip");
    }

    /** Every backup by when it was made, the oldest first; empty while there is no such folder. */
    TreeMap<Instant, Path> all() {
        TreeMap<Instant, Path> found = new TreeMap<>();
        if (!Files.isDirectory(path)) {
            return found;
        }
        try (Stream<Path> files = Files.list(path)) {
            files.forEach(file -> madeAt(file).ifPresent(at -> found.put(at, file)));
            return found;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Optional<Instant> madeAt(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        if (!name.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    Instant.parse(name.group(1) + name.group(2) + ":" + name.group(3) + ":" + name.group(4) + "Z"));
        } catch (DateTimeException noMoment) {
            return Optional.empty();
        }
    }

    Optional<Instant> newest() {
        TreeMap<Instant, Path> all = all();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.lastKey());
    }

    /** Deletes those that the rule does not keep; says which. */
    List<Path> thin(ZoneId zone) {
        TreeMap<Instant, Path> all = all();
        Set<Instant> kept = KeepRule.kept(all.keySet(), zone);
        all.keySet().removeAll(kept);
        List<Path> gone = List.copyOf(all.values());
        try {
            for (Path file : gone) {
                Files.deleteIfExists(file);
            }
        } catch (IOException refused) {
            throw new UncheckedIOException(refused);
        }
        return gone;
    }
}
