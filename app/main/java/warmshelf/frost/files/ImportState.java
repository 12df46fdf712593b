package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.util.Locale;

/** How far an import has come. Only what was taken counts for frost dates. */
public enum ImportState {
    READING,
    READY,
    TAKEN,
    CANCELLED,
    REFUSED,
    FAILED,
    REMOVED;

    public String words() {
        return switch (this) {
            case READING -> SAY.reading();
            case READY -> SAY.ready();
            case TAKEN -> SAY.taken();
            case CANCELLED -> SAY.cancelled();
            case REFUSED -> SAY.refused();
            case FAILED -> SAY.failed();
            case REMOVED -> SAY.removed();
        };
    }

    /** As the database writes it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static ImportState of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
