package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Space that would suit a request.
 *
 * @param placeNumber 1 for the mat's first place
 * @param to the day after the last day
 * @param celsius the mat's set-point throughout
 * @param shiftDays days after (or, negative, before) the ideal start
 */
public record Offer(
        MatSpace mat,
        UUID placeId,
        int placeNumber,
        Slot slot,
        LocalDate from,
        LocalDate to,
        int celsius,
        int shiftDays) {}
