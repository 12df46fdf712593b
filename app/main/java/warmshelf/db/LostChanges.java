package warmshelf.db;

/** The data in a folder do not go as far as they had come there: the file was cut short, or an older one was put in its place. */
public final class LostChanges extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final long known;
    private final long found;
    private final String last;

    LostChanges(FolderMark.Reach known, long found) {
        super("%d changes were known, %d are there".formatted(known.changes(), found));
        this.known = known.changes();
        this.found = found;
        this.last = known.last();
    }

    /** How many changes there had been. */
    public long known() {
        return known;
    }

    /** How many there are. */
    public long found() {
        return found;
    }

    /** When the last known one was made, as text. */
    public String last() {
        return last;
    }
}
