package warmshelf.passkey;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A device that signs a member in.
 *
 * @param lastUsedOn null: not yet
 */
public record Passkey(
        UUID id, String name, LocalDate madeOn, @Nullable LocalDate lastUsedOn) {}
