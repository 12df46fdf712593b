package warmshelf.exchange;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who takes a table out, and so what stands in it.
 *
 * @param everything of everybody, for coordinators; else what is theirs and the group's
 * @param zone in which days are told
 */
public record Taker(UUID memberId, boolean everything, ZoneId zone) {
    public @Nullable LocalDate day(@Nullable OffsetDateTime time) {
        return time == null ? null : time.atZoneSameInstant(zone).toLocalDate();
    }

    /** Somebody's name: of others members take out the first name only. */
    public @Nullable String name(@Nullable UUID id, @Nullable String name) {
        if (name == null || everything || memberId.equals(id)) {
            return name;
        }
        int space = name.indexOf(' ');
        return space < 0 ? name : name.substring(0, space);
    }
}
