package warmshelf.operation;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * How letters, or notices to phones, fare.
 *
 * @param waiting to be sent, or to be tried again
 * @param failed given up in the last days
 * @param lastSentAt in the group's zone; null: none was
 */
public record MessageCount(
        int waiting, int failed, @Nullable LocalDateTime lastSentAt) {}
