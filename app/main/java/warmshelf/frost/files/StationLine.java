package warmshelf.frost.files;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A station as lists show it.
 *
 * @param importId null: typed in
 * @param spring middle day of the last spring frost, in any year; null: not told
 * @param autumn middle day of the first autumn frost
 */
public record StationLine(
        UUID id,
        @Nullable UUID importId,
        String kind,
        String code,
        String name,
        double latitude,
        double longitude,
        double elevationM,
        String source,
        @Nullable LocalDate spring,
        @Nullable LocalDate autumn) {}
