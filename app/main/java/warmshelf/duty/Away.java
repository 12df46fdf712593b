package warmshelf.duty;

import java.time.LocalDate;
import java.util.UUID;

/** Days on which a member cannot look anywhere; the first and the last are both among them. */
public record Away(UUID id, LocalDate first, LocalDate last) {
    boolean covers(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }
}
