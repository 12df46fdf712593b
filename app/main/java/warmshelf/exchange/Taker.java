package warmshelf.exchange;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.SeenName;

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

    /** Somebody's name as whoever takes it out sees it. */
    public @Nullable String name(@Nullable UUID id, @Nullable String name, @Nullable String called) {
        return name == null || called == null ? null : SeenName.of(name, called, everything || memberId.equals(id));
    }
}
