package warmshelf.backup;

import java.io.IOException;
import java.nio.file.Path;
import warmshelf.db.DataFacts;

/** The data that a backup is made of. */
interface BackupSource {
    /** The size of the data file. */
    long bytes() throws IOException;

    /** Copies the data file as it is at one moment; answers with what the copy must hold. */
    Promise copyTo(Path data) throws IOException;

    /** What a copy must hold. */
    interface Promise {
        boolean isKeptBy(DataFacts copy);
    }
}
