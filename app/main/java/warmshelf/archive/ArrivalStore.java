package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import warmshelf.BadInput;
import warmshelf.DatabasePlace;
import warmshelf.db.Database;
import warmshelf.db.FoundInstallation;

/**
 * Has a group move in where none lives. Into a database it moves in one transaction. A data folder gets a file that was filled
 * beside it, and gets it in one step, so that whoever stops the program half way finds nothing new there.
 */
final class ArrivalStore {
    private static final String BESIDE = "moving-in-";

    private ArrivalStore() {}

    /** Fills the empty tables. */
    interface Filling {
        void into(Connection connection) throws SQLException, IOException;
    }

    /**
     * Refuses a place where a group lives, or whose tables are newer than those that are to be filled.
     *
     * @throws BadInput saying so
     */
    static void refuseTaken(DatabasePlace place, String version) {
        FoundInstallation there = place.look();
        if (there.group() != null) {
            throw new BadInput(SAY.groupThere(there.group()));
        }
        // a data folder gets a new file, whatever tables the empty one has
        if (place.folder() == null && there.version() != null && there.version().compareTo(version) > 0) {
            throw new BadInput(SAY.schemaOlder(version, there.version()));
        }
    }

    /**
     * Fills a place and brings its tables up to date.
     *
     * @param version of the tables that are filled
     * @param afterwards is handed the database with the newest tables
     */
    static void fill(DatabasePlace place, String version, Filling filling, Consumer<Database> afterwards) {
        Path folder = place.folder();
        if (folder == null) {
            fillThere(place, version, filling, afterwards);
            return;
        }
        try {
            fillBeside(place, folder, version, filling, afterwards);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private static void fillThere(DatabasePlace place, String version, Filling filling, Consumer<Database> afterwards) {
        try (Database database = place.openAt(version)) {
            database.sql().connection(connection -> filling.into(connection));
        }
        try (Database database = place.open()) {
            afterwards.accept(database);
        }
    }

    private static void fillBeside(
            DatabasePlace place, Path folder, String version, Filling filling, Consumer<Database> afterwards)
            throws IOException {
        Files.createDirectories(folder);
        clearLeft(folder);
        Path beside = Files.createDirectory(
                folder.resolve(BESIDE + ProcessHandle.current().pid()));
        try {
            fillThere(DatabasePlace.inFolder(place.option(), beside), version, filling, afterwards);
            // what came meanwhile is not replaced
            refuseTaken(place, version);
            Database.move(beside, folder);
        } finally {
            delete(beside);
        }
    }

    /** What a program left that was stopped half way. */
    private static void clearLeft(Path folder) throws IOException {
        try (Stream<Path> there = Files.list(folder)) {
            for (Path left : there.filter(ArrivalStore::isLeft).toList()) {
                delete(left);
            }
        }
    }

    private static boolean isLeft(Path folder) {
        String name = String.valueOf(folder.getFileName());
        return name.matches(BESIDE + "\\d{1,10}")
                && ProcessHandle.of(Long.parseLong(name.substring(BESIDE.length())))
                        .isEmpty();
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepest = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepest) {
                Files.deleteIfExists(file);
            }
        }
    }
}
