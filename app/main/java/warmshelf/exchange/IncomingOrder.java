package warmshelf.exchange;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Units;

/**
 * A file to be brought in.
 *
 * @param fingerprint SHA-256 of the file, in hexadecimal digits
 * @param whose of lots or sowings
 * @param thermometer whose nights they are; null: it is no table of nights
 * @param latestYear the latest year a packet can be packed for
 */
record IncomingOrder(
        IncomingKind kind,
        Path file,
        String fileName,
        String fingerprint,
        Whose whose,
        @Nullable NightsOf thermometer,
        UUID by,
        LocalDate today,
        int latestYear,
        Units units) {

    /** Whose the lots or sowings are that are brought in. */
    enum Whose {
        MINE("mine"),
        GROUP("group"),
        /** As a column says, for coordinators. */
        COLUMN("column");

        private final String word;

        Whose(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** A thermometer with its name. */
    record NightsOf(UUID id, String name) {}
}
