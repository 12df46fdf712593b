package warmshelf.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import warmshelf.db.DataFacts;
import warmshelf.db.DataReading;
import warmshelf.db.Database;
import warmshelf.db.UnreadableData;

/** Makes a backup and proves it. */
final class BackupMaker {
    private static final String AT_WORK = "making-";
    /** The database's own copy, the same unpacked, and the backup; and something for what others write meanwhile. */
    private static final int SIZES_NEEDED = 3;

    private static final long AND_BYTES = 5_000_000;

    private final BackupSource source;
    private final BackupFolder folder;
    private final Clock clock;

    BackupMaker(BackupSource source, BackupFolder folder, Clock clock) {
        this.source = source;
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * Makes one and proves it.
     *
     * @throws BackupTrouble when there is none to show for it; what was begun is gone then
     */
    synchronized BackupMade make() {
        try (WorkFolder work = begin()) {
            return make(work.path());
        } catch (IOException | UncheckedIOException refused) {
            throw new BackupTrouble(BackupTrouble.Reason.UNWRITABLE, refused);
        } catch (UnreadableData notWhole) {
            throw new BackupTrouble(BackupTrouble.Reason.NOT_WHOLE, notWhole);
        } catch (BackupTrouble told) {
            throw told;
        } catch (RuntimeException fault) {
            throw new BackupTrouble(BackupTrouble.Reason.FAULT, fault);
        }
    }

    private BackupMade make(Path work) throws IOException {
        refuseWithoutRoom();
        Instant now = clock.instant();
        Path data = work.resolve(Database.FILE);
        BackupSource.Promise promise = source.copyTo(data);
        DataFacts facts = DataReading.of(work);
        if (!promise.isKeptBy(facts)) {
            throw new BackupTrouble(BackupTrouble.Reason.NOT_WHOLE);
        }
        BackupManifest manifest = BackupManifest.of(facts, now.toString());
        Path packed = work.resolve("backup.zip");
        BackupFile.write(data, manifest, packed);
        Path file = folder.named(now);
        Files.move(packed, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return new BackupMade(file, manifest, Files.size(file));
    }

    private WorkFolder begin() throws IOException {
        Files.createDirectories(folder.path());
        clearLeft();
        return WorkFolder.in(folder.path(), AT_WORK);
    }

    private void refuseWithoutRoom() throws IOException {
        FileStore disk = Files.getFileStore(folder.path());
        if (disk.getUsableSpace() < SIZES_NEEDED * source.bytes() + AND_BYTES) {
            throw new BackupTrouble(BackupTrouble.Reason.NO_ROOM);
        }
    }

    /** What a program left that was killed while it made one. */
    private void clearLeft() throws IOException {
        try (Stream<Path> there = Files.list(folder.path())) {
            List<Path> left = there.filter(
                            each -> String.valueOf(each.getFileName()).startsWith(AT_WORK))
                    .toList();
            for (Path each : left) {
                new WorkFolder(each).close();
            }
        }
    }
}
