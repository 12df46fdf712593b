package warmshelf.archive;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What the page of the file shows.
 *
 * @param tally what a file would hold now
 * @param made the newest that was made here; null: none yet
 * @param madeOn when that was, in the group's zone; null: none yet
 * @param megabytes its size in words; null: none yet
 * @param takenInOn when the group was taken in here from a file; null: it began here
 */
record ArchivePage(
        ArchiveTally tally,
        @Nullable ArchiveNote made,
        @Nullable LocalDate madeOn,
        @Nullable String megabytes,
        @Nullable LocalDate takenInOn) {}
