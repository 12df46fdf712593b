package warmshelf.archive;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * That a file was made, or taken in, here.
 *
 * @param bytes its size
 * @param sha256 in hexadecimal digits
 * @param by the name of who downloaded it; null: by a command
 * @param at when, in UTC
 */
record ArchiveNote(
        Kind kind, long bytes, String sha256, @Nullable String by, OffsetDateTime at) {
    /** What became of it here. */
    enum Kind {
        MADE("made"),
        TAKEN_IN("taken-in");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As the database keeps it. */
        String word() {
            return word;
        }
    }
}
