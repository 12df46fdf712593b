package warmshelf;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.db.FoundInstallation;

/**
 * Where a group's database is: in a data folder, or at a JDBC address.
 *
 * @param option by which it was given, for sentences
 * @param folder where the H2 file lies; null: at the JDBC address
 * @param jdbcUrl null: in the folder
 */
public record DatabasePlace(
        String option,
        @Nullable Path folder,
        @Nullable String jdbcUrl,
        @Nullable String user,
        @Nullable String password) {

    public static DatabasePlace inFolder(String option, Path folder) {
        return new DatabasePlace(option, folder, null, null, null);
    }

    public static DatabasePlace at(String option, String jdbcUrl, @Nullable String user, @Nullable String password) {
        return new DatabasePlace(option, null, jdbcUrl, user, password);
    }

    /**
     * Opens it and brings its tables up to date.
     *
     * @throws BadInput when it cannot be used as it was named
     */
    public Database open() {
        return reached(
                () -> jdbcUrl != null ? Database.open(jdbcUrl, user, password) : Database.inFolder(madeFolder()));
    }

    /**
     * Opens it with its tables as an earlier program had them; they are not to be newer already.
     *
     * @throws BadInput when it cannot be used as it was named
     */
    public Database openAt(String version) {
        return reached(() -> jdbcUrl != null
                ? Database.open(jdbcUrl, user, password, version)
                : Database.inFolder(madeFolder(), version));
    }

    /**
     * Looks at what is there and changes nothing.
     *
     * @throws BadInput when it cannot be used as it was named
     */
    public FoundInstallation look() {
        return reached(() ->
                jdbcUrl != null ? FoundInstallation.at(jdbcUrl, user, password) : FoundInstallation.inFolder(named()));
    }

    private Path madeFolder() {
        try {
            Path made = Files.createDirectories(named());
            tryWriting(made);
            return made;
        } catch (IOException noFolder) {
            throw new BadInput(
                    "The data folder '%s' cannot be used: it cannot be made or is a file.".formatted(folder));
        }
    }

    /** A folder that can only be read would let everybody in and then fail at their first entry. */
    private void tryWriting(Path made) {
        Path data = made.resolve("warmshelf.mv.db");
        try {
            Files.delete(Files.createTempFile(made, "warmshelf", ".try"));
            if (Files.exists(data)) {
                FileChannel.open(data, StandardOpenOption.WRITE).close();
            }
        } catch (IOException onlyRead) {
            throw new BadInput(
                    ("The data folder '%s' or the file in it can only be read. Give the user who runs Warmshelf"
                                    + " the right to write there, or name another folder by %s.")
                            .formatted(folder, option));
        }
    }

    private Path named() {
        if (folder == null) {
            throw new IllegalStateException("neither a folder nor an address was named");
        }
        return folder;
    }

    private <T> T reached(Supplier<T> reaching) {
        try {
            return reaching.get();
        } catch (BadInput refused) {
            throw refused;
        } catch (RuntimeException notOpened) {
            throw DatabaseTrouble.explained(notOpened, this);
        }
    }
}
