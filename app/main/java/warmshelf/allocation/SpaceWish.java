package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;

/**
 * A request for warm space, as the placing sees it.
 *
 * @param sowingId whose request
 * @param quarters 1, 2 or 4 of one place
 * @param band set-points that suit it
 * @param needsLight whether it is not to lie on a mat without light
 * @param daysAt days it must lie there at a set-point of the band: a cooler mat means a longer stay
 */
public record SpaceWish(
        UUID sowingId,
        int quarters,
        LocalDate earliest,
        LocalDate ideal,
        LocalDate latest,
        Band band,
        boolean needsLight,
        DoubleToIntFunction daysAt) {
    public SpaceWish {
        if (earliest.isAfter(ideal) || ideal.isAfter(latest)) {
            throw new IllegalArgumentException("a request needs earliest %s, ideal %s and latest %s in this order"
                    .formatted(earliest, ideal, latest));
        }
    }

    /** A wish of seed that comes up in the dark as well. */
    public SpaceWish(
            UUID sowingId,
            int quarters,
            LocalDate earliest,
            LocalDate ideal,
            LocalDate latest,
            Band band,
            DoubleToIntFunction daysAt) {
        this(sowingId, quarters, earliest, ideal, latest, band, false, daysAt);
    }

    /** Whether a mat is not dark to it. */
    public boolean sees(MatSpace mat) {
        return !needsLight || !mat.light().isDark();
    }
}
