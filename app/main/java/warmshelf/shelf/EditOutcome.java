package warmshelf.shelf;

import java.util.UUID;

/** What became of a change to sites, racks, shelves or mats. */
public sealed interface EditOutcome {
    /** It is kept. */
    record Saved(UUID id) implements EditOutcome {}

    /** A rule says no; the sentence belongs to the field. */
    record Refused(String field, String sentence) implements EditOutcome {}

    /** Someone else changed it first. */
    record ChangedMeanwhile() implements EditOutcome {}
}
