package warmshelf.frost.garden;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * How much was noted of a thermometer.
 *
 * @param coldestC lowest of the last seven nights; null where none of them was noted
 * @param last the last night noted; null where none was
 */
record NotedNights(
        int nights, @Nullable Double coldestC, @Nullable LocalDate last) {
    static final NotedNights NONE = new NotedNights(0, null, null);
}
