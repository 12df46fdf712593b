package warmshelf.backup;

import static warmshelf.backup.BackupSentences.SAY;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.db.DataFacts;
import warmshelf.db.DataReading;
import warmshelf.db.Database;
import warmshelf.db.UnreadableData;

/**
 * What was found in a data folder or a backup.
 *
 * @param facts null: it could not be read
 * @param known how many changes were known; empty: that is not noted
 * @param problems sentences; empty: it is whole
 */
record DataCheck(@Nullable DataFacts facts, OptionalLong known, List<String> problems) {

    boolean whole() {
        return problems.isEmpty();
    }

    /**
     * Reads the data of a folder, in a copy.
     *
     * @param work an empty folder
     * @throws BadInput when a program has them open
     */
    static DataCheck ofFolder(Path folder, Path work) throws IOException {
        OptionalLong known = DataReading.notedChanges(folder);
        if (!ClosedData.hasData(folder)) {
            return new DataCheck(null, known, List.of(SAY.noData(folder.toString())));
        }
        try (ClosedData data = ClosedData.in(folder).orElseThrow(() -> new BadInput(SAY.inUse(folder.toString())))) {
            refuseWithoutRoom(data.bytes(), work);
            data.copyTo(work.resolve(Database.FILE));
        }
        return of(work, known, null);
    }

    /**
     * Unpacks a backup and reads it.
     *
     * @param work an empty folder; the data file stays there
     * @throws BadInput when it is none, or was cut short
     */
    static DataCheck ofBackup(Path file, Path work) throws IOException {
        BackupManifest manifest = BackupFile.manifest(file);
        BackupFile.unpackData(file, work.resolve(Database.FILE));
        return of(work, OptionalLong.of(manifest.changes()), manifest);
    }

    private static DataCheck of(Path work, OptionalLong known, @Nullable BackupManifest manifest) {
        DataFacts facts;
        try {
            facts = DataReading.of(work);
        } catch (UnreadableData damaged) {
            return new DataCheck(null, known, List.of(SAY.damaged(String.valueOf(damaged.getMessage()))));
        }
        List<String> problems = new ArrayList<>();
        if (facts.group() == null) {
            problems.add(SAY.noGroup());
        }
        if (known.isPresent() && facts.changes() < known.getAsLong()) {
            problems.add(SAY.changesMissing(facts.changes(), known.getAsLong()));
        }
        if (manifest != null && !manifest.rows().equals(facts.rows())) {
            problems.add(SAY.rowsDiffer());
        }
        return new DataCheck(facts, known, problems);
    }

    private static void refuseWithoutRoom(long bytes, Path work) throws IOException {
        if (Files.getFileStore(work).getUsableSpace() < 2 * bytes) {
            throw new BadInput(SAY.noRoomToUnpack(work.toString()));
        }
    }
}
