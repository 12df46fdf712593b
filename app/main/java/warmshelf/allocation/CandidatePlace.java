package warmshelf.allocation;

import static warmshelf.allocation.AllocationSentences.SAY;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A place that something can be moved to.
 *
 * @param number on its mat or lit shelf, from 1
 * @param where site, rack and shelf in words
 * @param mat null under a light
 */
public record CandidatePlace(
        UUID id, int number, String where, @Nullable MatSpace mat) {

    /** For example 'mat M3, place 2'. */
    public String words() {
        return mat == null ? SAY.lightAndPlace(number) : SAY.matAndPlace(mat.name(), number);
    }

    /** Said as {@link Stay#where} says it, so that the two can be compared. */
    public String whereWith(Slot slot) {
        return SAY.placeOf(where, mat == null ? SAY.light() : SAY.mat(mat.name()), number, slot.words());
    }
}
