package warmshelf.shelf;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The site at which the boards open for a reader who has chosen none. */
final class OpeningSite {
    /** More than these are not taken in at a glance; five racks of three shelves hold about as many. */
    static final int MOST_PLACES = 80;

    private OpeningSite() {}

    /**
     * Null: all of them, while they are few. Else the first at which something of the reader's lies in the days that the board covers,
     * or the first of all.
     *
     * @param sites in the reader's order
     * @param reader what others call them; no two in a group are called the same
     */
    static @Nullable UUID of(List<Site> sites, Board board, String reader) {
        List<PlaceOnSite> places = PlaceOnSite.walk(sites);
        if (sites.size() < 2 || places.size() <= MOST_PLACES) {
            return null;
        }
        Set<UUID> own = board.stays().stream()
                .filter(stay -> stay.memberName().equals(reader))
                .map(StayOnBoard::placeId)
                .collect(Collectors.toSet());
        return places.stream()
                .filter(each -> own.contains(each.place().id()))
                .map(each -> each.site().id())
                .findFirst()
                .orElse(sites.get(0).id());
    }
}
