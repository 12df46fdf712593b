package warmshelf;

import java.sql.SQLException;
import java.util.Set;
import org.flywaydb.core.api.exception.FlywayValidateException;
import org.jspecify.annotations.Nullable;
import warmshelf.db.DatabaseAway;
import warmshelf.db.LostChanges;

/** Says in a sentence why a database cannot be opened, where the person who starts the program can help it. */
final class DatabaseTrouble {
    private static final int H2_IN_USE = 90020;
    /** A file that is corrupted, or of another version; a page of it that cannot be read. */
    private static final Set<Integer> H2_DAMAGED = Set.of(90030, 90031, 90048);

    private DatabaseTrouble() {}

    static RuntimeException explained(RuntimeException trouble, DatabasePlace place) {
        if (Causes.has(trouble, FlywayValidateException.class)) {
            return new BadInput("The data was written by a newer Warmshelf, or its tables were changed by hand,"
                    + " so this version does not touch it. Start the newer version.");
        }
        LostChanges lost = Causes.find(trouble, LostChanges.class);
        if (lost != null) {
            return new BadInput(
                    ("The data in '%s' go as far as %,d changes, but %,d were known here, the last of %s: the"
                                    + " file was cut short, or an older one was put in its place. Put a whole copy of the folder"
                                    + " there. If the older data are what you want, delete the file 'warmshelf.mark' there, then"
                                    + " start again.")
                            .formatted(place.folder(), lost.found(), lost.known(), lost.last()));
        }
        SQLException refusal = Causes.find(trouble, SQLException.class);
        if (refusal == null) {
            return trouble;
        }
        return place.jdbcUrl() == null ? ofFile(trouble, refusal, place) : ofServer(trouble, refusal, place);
    }

    private static RuntimeException ofServer(RuntimeException trouble, SQLException refusal, DatabasePlace place) {
        String sentence = "The database of %s does not let Warmshelf in: %s."
                .formatted(place.option(), firstLine(refusal.getMessage()));
        return DatabaseAway.tellsOf(trouble) ? new DatabaseOutOfReach(sentence) : new BadInput(sentence);
    }

    private static RuntimeException ofFile(RuntimeException trouble, SQLException refusal, DatabasePlace place) {
        if (refusal.getErrorCode() == H2_IN_USE) {
            return new BadInput(
                    "The data folder '%s' is in use by another Warmshelf. Stop that one, or name another by %s."
                            .formatted(place.folder(), place.option()));
        }
        if (H2_DAMAGED.contains(refusal.getErrorCode())) {
            return new BadInput(
                    "The data file in '%s' is damaged and cannot be read: %s. Put a whole copy of the folder there."
                            .formatted(place.folder(), firstLine(refusal.getMessage())));
        }
        return trouble;
    }

    private static String firstLine(@Nullable String message) {
        String line = message == null
                ? "no reason given"
                : message.lines().findFirst().orElse("no reason given");
        return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
    }
}
