package warmshelf.season;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A sowing that is not over when its season is to be closed.
 *
 * @param title crop and variety
 * @param grower what others call them
 * @param lastSeenOn the last day of which something was written; null: nothing was
 */
record OpenSowing(
        UUID id,
        OpenKind kind,
        String title,
        String grower,
        @Nullable LocalDate lastSeenOn) {
    /** The name of the form field that says what became of it. */
    public String field() {
        return "sowing/" + id;
    }

    /** The day on which it went out: the one named, or the last of which something was written where that is later. */
    LocalDate endedOn(LocalDate named) {
        return lastSeenOn != null && lastSeenOn.isAfter(named) ? lastSeenOn : named;
    }
}
