package warmshelf.sowing;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What one person saw or did at a sowing. Never edited: a correction is a new entry that supersedes an older one.
 *
 * @param id made by the phone, so that sending twice stores once
 * @param seenOn the day it was seen, in the group's time zone
 * @param seenAt the moment: the phone's, or that of entering it where only the day is known
 * @param sprouted so far: roots showing in a bag, or seedlings up in cells; null: not counted
 * @param moved so far moved from the bag into cells
 * @param lost so far lost
 * @param finished the bag is done with
 */
public record Entry(
        UUID id,
        UUID sowingId,
        EntryStep step,
        LocalDate seenOn,
        OffsetDateTime seenAt,
        @Nullable Integer sprouted,
        @Nullable Integer moved,
        @Nullable Integer lost,
        boolean finished,
        @Nullable Problem problem,
        String note,
        @Nullable UUID supersedes,
        UUID by,
        String byName) {

    /** The order in which things were seen: a phone without signal may send the earlier one later. */
    public static final Comparator<Entry> BY_SEEN =
            Comparator.comparing(Entry::seenOn).thenComparing(Entry::seenAt);

    /** The ids of those that another one corrects or takes back. */
    public static Set<UUID> superseded(List<Entry> entries) {
        return entries.stream().map(Entry::supersedes).filter(Objects::nonNull).collect(Collectors.toSet());
    }

    /** What still counts, in the order in which it was seen. */
    public static List<Entry> standing(List<Entry> entries) {
        Set<UUID> superseded = superseded(entries);
        return entries.stream()
                .filter(entry -> !superseded.contains(entry.id()) && entry.step() != EntryStep.UNDONE)
                .sorted(BY_SEEN)
                .toList();
    }
}
