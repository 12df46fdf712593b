package warmshelf.finding.prediction;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import warmshelf.crop.Crop;

/**
 * The day on which one sowing was to go out, and on which it did.
 *
 * @param earliest the first of the days planned
 * @param ideal the day planned
 * @param latest the last of the days planned
 * @param seen the day on which it went out
 */
record PlantingOutPrediction(
        UUID sowingId, int season, Crop crop, LocalDate earliest, LocalDate ideal, LocalDate latest, LocalDate seen) {
    /** Days after the day planned; negative for before. */
    long daysLater() {
        return ChronoUnit.DAYS.between(ideal, seen);
    }

    boolean isWithin() {
        return !seen.isBefore(earliest) && !seen.isAfter(latest);
    }
}
