package warmshelf.shelf;

import java.util.List;

/** A rack with all that stands and hangs on it, described in one go. */
public record NewRack(RackDraft rack, List<NewShelf> shelves) {
    public NewRack {
        shelves = List.copyOf(shelves);
    }

    /** One of its shelves, with its mats from the left. */
    public record NewShelf(ShelfDraft shelf, List<MatDraft> mats) {
        public NewShelf {
            mats = List.copyOf(mats);
        }
    }
}
