package warmshelf.reminder.push;

import static warmshelf.reminder.push.PushSentences.SAY;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A device as its owner sees it.
 *
 * @param name as typed, or a plain default
 * @param here whether it is the device that asks
 * @param endedAt null: it is told
 * @param endedWhy empty while it is told
 */
public record PushAddress(
        UUID id,
        String name,
        OffsetDateTime addedAt,
        @Nullable OffsetDateTime lastToldAt,
        boolean here,
        @Nullable OffsetDateTime endedAt,
        String endedWhy) {

    /** For the list. */
    public String endedWords() {
        return switch (endedWhy) {
            case "stopped" -> SAY.youStoppedIt();
            case "signed out" -> SAY.youWereSignedOut();
            case "gone" -> SAY.takesNoMore();
            default -> SAY.hasEnded();
        };
    }
}
