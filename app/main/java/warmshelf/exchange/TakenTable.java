package warmshelf.exchange;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A file that was taken in.
 *
 * @param leftOut rows of which the same was there already
 */
public record TakenTable(
        IncomingKind kind, String fileName, int rows, int leftOut, UUID memberId, String by, LocalDate on) {}
