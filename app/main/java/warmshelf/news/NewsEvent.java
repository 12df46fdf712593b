package warmshelf.news;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened, before it is known whom it concerns.
 *
 * @param sowing it is about; null where it is about a swap
 * @param entry that tells of it; null: none does
 * @param swap it is about; null where it is about a sowing
 * @param by who did it; null: the program
 */
public record NewsEvent(
        NewsKind kind,
        @Nullable UUID sowing,
        @Nullable UUID entry,
        @Nullable UUID swap,
        @Nullable UUID by) {

    public static NewsEvent ofSowing(NewsKind kind, UUID sowing, @Nullable UUID by) {
        return new NewsEvent(kind, sowing, null, null, by);
    }

    public static NewsEvent ofEntry(NewsKind kind, UUID sowing, UUID entry, UUID by) {
        return new NewsEvent(kind, sowing, entry, null, by);
    }

    public static NewsEvent ofSwap(NewsKind kind, UUID swap, UUID by) {
        return new NewsEvent(kind, null, null, swap, by);
    }
}
