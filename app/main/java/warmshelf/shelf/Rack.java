package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.List;
import java.util.UUID;

/**
 * A stand of shelves.
 *
 * @param walkOrder racks of a site are walked by this number, then by name
 * @param shelves from the top down
 */
public record Rack(UUID id, UUID siteId, String name, int walkOrder, int version, List<Shelf> shelves) {

    /** The same with other shelves. */
    Rack with(List<Shelf> others) {
        return new Rack(id, siteId, name, walkOrder, version, others);
    }

    /** What it says, in one line. */
    String words() {
        return SAY.rackNow(name, walkOrder);
    }
}
