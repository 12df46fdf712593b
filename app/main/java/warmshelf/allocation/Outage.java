package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Days on which a mat cannot be used.
 *
 * @param to the day after the last
 * @param reason as a coordinator wrote it
 */
public record Outage(UUID matId, LocalDate from, LocalDate to, String reason) {

    public LocalDate lastDay() {
        return to.minusDays(1);
    }

    /** Whether any of the days up to but not on {@code afterLast} is among them. */
    public boolean touches(LocalDate first, LocalDate afterLast) {
        return from.isBefore(afterLast) && to.isAfter(first);
    }
}
