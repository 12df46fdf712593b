package warmshelf.frost.files;

import java.util.Locale;

/** How far an import has come. Only what was taken counts for frost dates. */
public enum ImportState {
    READING("Being read"),
    READY("Read, waits for your decision"),
    TAKEN("In use"),
    CANCELLED("Given up"),
    REFUSED("Refused"),
    FAILED("Failed"),
    REMOVED("Removed");

    private final String words;

    ImportState(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** As the database writes it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static ImportState of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
