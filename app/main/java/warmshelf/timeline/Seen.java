package warmshelf.timeline;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** The days on which things really happened; null: not yet. */
public record Seen(
        @Nullable LocalDate chilled,
        @Nullable LocalDate soaked,
        @Nullable LocalDate sown,
        @Nullable LocalDate firstSprout,
        @Nullable LocalDate movedToCells,
        @Nullable LocalDate emerged,
        @Nullable LocalDate offHeat,
        @Nullable LocalDate underLight,
        @Nullable LocalDate firstFeed,
        @Nullable LocalDate pottedOn,
        @Nullable LocalDate trimmed,
        @Nullable LocalDate hardeningOff,
        @Nullable LocalDate plantedOut) {
    private static final Seen NOTHING =
            new Seen(null, null, null, null, null, null, null, null, null, null, null, null, null);

    public static Seen nothing() {
        return NOTHING;
    }

    /** Nothing but the sowing. */
    public static Seen sownOn(LocalDate day) {
        return new Seen(null, null, day, null, null, null, null, null, null, null, null, null, null);
    }
}
