package warmshelf.shelf;

/** What a coordinator says of a shelf; {@code lightWatts} is 0 where nothing is lit. */
public record ShelfDraft(int fromTop, int litPlaces, int lightWatts, Lamp lamp) {

    /** A shelf of whose lamps nothing more is said. */
    public ShelfDraft(int fromTop, int litPlaces, int lightWatts) {
        this(fromTop, litPlaces, lightWatts, Lamp.NOT_KNOWN);
    }
}
