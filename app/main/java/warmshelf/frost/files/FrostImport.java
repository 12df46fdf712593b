package warmshelf.frost.files;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One import: what was sent, by whom, and what became of it.
 *
 * @param rowsGood rows understood
 * @param words why it was refused or failed, or what was found in it; a sentence a line
 * @param beatAt the reader's last sign of life
 * @param decidedBy who took, gave up or removed it
 */
public record FrostImport(
        UUID id,
        ImportKind kind,
        String fileName,
        long bytesTotal,
        long bytesRead,
        long rowsRead,
        long rowsGood,
        ImportState state,
        String words,
        String startedBy,
        Instant startedAt,
        Instant beatAt,
        @Nullable String decidedBy,
        @Nullable Instant decidedAt) {

    private static final Duration SILENT = Duration.ofMinutes(1);

    /** Whether its reader has died: the program was stopped while it read. */
    public boolean isStopped(Instant now) {
        return state == ImportState.READING && beatAt.plus(SILENT).isBefore(now);
    }
}
