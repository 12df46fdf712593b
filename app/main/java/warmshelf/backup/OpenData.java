package warmshelf.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import warmshelf.db.Database;

/** Data that this program has open, while others go on writing to them. */
final class OpenData implements BackupSource {
    private static final Logger LOG = LoggerFactory.getLogger(OpenData.class);

    private final Database database;

    OpenData(Database database) {
        this.database = database;
    }

    @Override
    public long bytes() throws IOException {
        return database.bytes();
    }

    @Override
    public Promise copyTo(Path data) throws IOException {
        long writes = database.writes();
        Map<String, Long> before = database.rows();
        Path zip = data.resolveSibling("copy.zip");
        database.copyTo(zip);
        Map<String, Long> after = database.rows();
        boolean written = database.writes() != writes;
        BackupFile.unpackData(zip, data);
        Files.delete(zip);
        return copy -> {
            boolean agrees = RowCheck.agrees(before, copy.rows(), after, written);
            if (!agrees) {
                LOG.error("the copy has {}, the original had {}, then {}", copy.rows(), before, after);
            }
            return agrees;
        };
    }
}
