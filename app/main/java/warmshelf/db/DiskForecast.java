package warmshelf.db;

import java.time.Duration;
import java.util.OptionalLong;

/** How long a disk lasts that fills as it did. */
final class DiskForecast {
    /** Less tells nothing: a backup alone takes more than an hour's entries. */
    private static final Duration LEAST = Duration.ofHours(6);

    private DiskForecast() {}

    /**
     * Days until no more is free than is to be kept.
     *
     * @param span over which it was watched
     * @param before bytes that were free at its beginning
     * @param now bytes that are free
     * @param kept bytes that are to stay free
     * @return empty where it did not fill, or was not watched for long
     */
    static OptionalLong daysLeft(Duration span, long before, long now, long kept) {
        long used = before - now;
        if (span.compareTo(LEAST) < 0 || used <= 0) {
            return OptionalLong.empty();
        }
        double daily = used / (span.toMinutes() / 1440.0);
        return OptionalLong.of((long) Math.max(0, Math.floor((now - kept) / daily)));
    }
}
