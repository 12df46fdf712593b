package warmshelf.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Makes backups when they are due or wanted, and knows how they stand. */
final class BackupWork {
    private static final Logger LOG = LoggerFactory.getLogger(BackupWork.class);
    private static final Duration UNTIL_TRIED_AGAIN = Duration.ofMinutes(15);

    private final BackupMaker maker;
    private final BackupFolder folder;
    private final @Nullable LocalTime at;
    private final Supplier<Optional<ZoneId>> zone;
    private final Clock clock;
    private volatile @Nullable Failed failed;

    /**
     * @param at the time of day at which one is made; null: none is made by itself
     * @param zone the group's; empty while no group lives there
     */
    BackupWork(
            BackupMaker maker,
            BackupFolder folder,
            @Nullable LocalTime at,
            Supplier<Optional<ZoneId>> zone,
            Clock clock) {
        this.maker = maker;
        this.folder = folder;
        this.at = at;
        this.zone = zone;
        this.clock = clock;
    }

    private record Failed(Instant at, BackupTrouble.Reason reason) {}

    /** Makes one if it is due; one that failed is tried again after a while. */
    void makeIfDue() {
        Optional<ZoneId> days = at == null ? Optional.empty() : zone.get();
        if (at == null || days.isEmpty()) {
            return;
        }
        Instant now = clock.instant();
        Failed last = failed;
        boolean waits = last != null && now.isBefore(last.at().plus(UNTIL_TRIED_AGAIN));
        if (!waits && BackupTimes.isDue(folder.newest(), at, now, days.get())) {
            try {
                make();
            } catch (BackupTrouble told) {
                // it is in the log, on the group's page and on Today
                return;
            }
        }
    }

    /** Makes one for each command that wants one. */
    void answerWishes(Path data) {
        for (BackupWish wish : BackupWish.in(data)) {
            try {
                wish.take();
                wish.answer(answer());
            } catch (IOException unwritable) {
                throw new UncheckedIOException(unwritable);
            }
        }
    }

    private BackupWish.Answer answer() {
        try {
            return new BackupWish.Answer(make().file().toAbsolutePath().toString(), null);
        } catch (BackupTrouble trouble) {
            return new BackupWish.Answer(null, trouble.reason().code());
        }
    }

    /**
     * Makes one now, and deletes those that the rule does not keep.
     *
     * @throws BackupTrouble when there is none to show for it
     */
    BackupMade make() {
        try {
            BackupMade made = maker.make();
            failed = null;
            LOG.info("backup {}: {} bytes, opened and counted", made.file(), made.bytes());
            thin();
            return made;
        } catch (BackupTrouble trouble) {
            failed = new Failed(clock.instant(), trouble.reason());
            LOG.error("no backup could be made: {}", trouble.reason().code(), trouble);
            throw trouble;
        }
    }

    private void thin() {
        try {
            folder.thin(zone.get().orElse(ZoneId.of("UTC")));
        } catch (UncheckedIOException refused) {
            LOG.warn("backups that are no longer kept could not be deleted", refused);
        }
    }

    BackupState state() {
        Failed last = failed;
        return BackupState.of(at != null, folder.newest(), last == null ? null : last.reason(), clock.instant());
    }

    BackupFolder folder() {
        return folder;
    }
}
