package warmshelf.harvest;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What somebody says after the season of what they planted out of a sowing; null: not answered.
 *
 * @param kilograms where somebody weighed
 * @param trouble what went wrong, in their words
 */
public record HarvestNote(
        UUID sowingId,
        HarvestAnswer.@Nullable Again again,
        HarvestAnswer.@Nullable Amount amount,
        @Nullable Double kilograms,
        HarvestAnswer.@Nullable Taste taste,
        @Nullable LocalDate firstOn,
        @Nullable LocalDate lastOn,
        String trouble) {

    /** Whether anything was answered. */
    boolean saysAnything() {
        return again != null
                || amount != null
                || kilograms != null
                || taste != null
                || firstOn != null
                || lastOn != null
                || !trouble.isEmpty();
    }
}
