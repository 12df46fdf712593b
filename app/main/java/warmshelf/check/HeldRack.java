package warmshelf.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import warmshelf.sowing.Problem;

/**
 * A rack that is held because something was found there that spreads, as those are told whom it concerns.
 *
 * @param notes what holds it, the first first
 * @param concerned whose sowings lie there, or are to come within a week
 */
public record HeldRack(UUID rackId, String site, String rack, List<Note> notes, Set<UUID> concerned) {
    public HeldRack {
        notes = List.copyOf(notes);
        concerned = Set.copyOf(concerned);
    }

    /** What somebody found. */
    public record Note(
            UUID entry, UUID sowing, String title, Problem problem, LocalDate seenOn, String byName, String words) {}

    /** The first that holds it. */
    public Note first() {
        return notes.get(0);
    }
}
