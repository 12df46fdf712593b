package warmshelf.backup;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.OptionalLong;
import warmshelf.db.DataReading;
import warmshelf.db.Database;

/** Data that no program has open, and that none can open until this is closed. They are copied as they are, nothing is changed. */
final class ClosedData implements BackupSource, AutoCloseable {
    private final Path folder;
    private final FileChannel channel;

    private ClosedData(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /** The data in a folder; empty while a program has them open. */
    static Optional<ClosedData> in(Path folder) throws IOException {
        FileChannel channel =
                FileChannel.open(folder.resolve(Database.FILE), StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new ClosedData(folder, channel));
            }
        } catch (OverlappingFileLockException openInThisProcess) {
            channel.close();
            return Optional.empty();
        }
        channel.close();
        return Optional.empty();
    }

    @Override
    public long bytes() throws IOException {
        return channel.size();
    }

    @Override
    public Promise copyTo(Path data) throws IOException {
        try (FileChannel out = FileChannel.open(data, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            long size = channel.size();
            for (long done = 0; done < size; ) {
                done += channel.transferTo(done, size - done, out);
            }
        }
        OptionalLong noted = DataReading.notedChanges(folder);
        return copy -> copy.changes() >= noted.orElse(0);
    }

    static boolean hasData(Path folder) {
        return Files.exists(folder.resolve(Database.FILE));
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
