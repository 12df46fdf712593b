package warmshelf.backup;

import static warmshelf.backup.BackupSentences.SAY;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.Numbers;

/** Tells coordinators how backups stand: on the page of the group always, on Today when something is amiss. */
final class BackupNews implements Aside {
    private final @Nullable BackupWork work;
    private final boolean elsewhere;
    private final Clock clock;

    /**
     * @param work null: no backups are made here
     * @param elsewhere the data lie in a database server, which has tools of its own
     */
    BackupNews(@Nullable BackupWork work, boolean elsewhere, Clock clock) {
        this.work = work;
        this.elsewhere = elsewhere;
        this.clock = clock;
    }

    @Override
    public Map<String, Object> model(Visitor visitor) {
        return Map.of("backup", visitor.coordinator() ? view(visitor) : BackupView.NOWHERE);
    }

    private BackupView view(Visitor visitor) {
        if (work == null) {
            return elsewhere ? BackupView.ELSEWHERE : BackupView.NOWHERE;
        }
        BackupState state = work.state();
        TreeMap<Instant, Path> all = work.folder().all();
        Instant newest = state.newest();
        LocalDateTime made = newest == null ? null : LocalDateTime.ofInstant(newest, visitor.zone());
        BackupTrouble.Reason trouble = state.trouble();
        return new BackupView(
                state.kind().code(),
                state.isAmiss(),
                made == null ? null : made.toLocalDate(),
                made == null ? null : made.toLocalTime(),
                newest == null ? "" : DayWords.ago(Duration.between(newest, clock.instant())),
                newest == null ? "" : megabytes(all.get(newest)),
                all.size(),
                work.folder().path().toAbsolutePath().toString(),
                trouble == null ? "" : reason(trouble));
    }

    /** Why one could not be made, as a sentence. */
    static String reason(BackupTrouble.Reason trouble) {
        return switch (trouble) {
            case NO_ROOM -> SAY.noRoom();
            case UNWRITABLE -> SAY.unwritable();
            case NOT_WHOLE -> SAY.notWhole();
            case FAULT -> SAY.fault();
        };
    }

    private static String megabytes(@Nullable Path file) {
        try {
            return file == null ? "" : Numbers.oneDecimal(Math.max(Files.size(file) / 1e6, 0.1));
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
