package warmshelf.backup;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/** When the next backup is due. */
final class BackupTimes {
    private BackupTimes() {}

    /** Whether the last time of day at which one should have been made has passed since the newest was made. */
    static boolean isDue(Optional<Instant> newest, LocalTime at, Instant now, ZoneId zone) {
        return newest.isEmpty() || newest.get().isBefore(lastTime(at, now, zone));
    }

    /** In a night that leaves the hour out, the hour after it; where it comes twice, the first (as java.time has it). */
    private static Instant lastTime(LocalTime at, Instant now, ZoneId zone) {
        LocalDate today = LocalDate.ofInstant(now, zone);
        Instant time = today.atTime(at).atZone(zone).toInstant();
        return time.isAfter(now) ? today.minusDays(1).atTime(at).atZone(zone).toInstant() : time;
    }
}
