package warmshelf.placing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Stay;
import warmshelf.allocation.WarmDays;

/**
 * A stay with what decides where it may be moved.
 *
 * @param what for example 'Pepper · Lantern Row'
 * @param sown whether the seed is in compost or paper
 * @param matId null under a light
 * @param warm the set-points of its days; null under a light
 * @param band the set-points that suit it; null under a light
 * @param needsLight whether it is not to be moved to a mat without light
 */
public record LyingStay(
        Stay stay,
        String what,
        String grower,
        boolean sown,
        @Nullable UUID matId,
        @Nullable WarmDays warm,
        @Nullable Band band,
        boolean needsLight) {

    /** The set-point of its last day; null under a light. */
    public @Nullable Double celsius() {
        return warm == null ? null : Double.valueOf(warm.last());
    }

    /** Something lies there: its first day stays as it was, and it can only be carried elsewhere from today on. */
    public boolean isBegunBy(LocalDate today) {
        return stay.isBegunBy(today) && (sown || !stay.isOnMat());
    }

    /** Its last day has passed; what has ended stays as it was. */
    public boolean isOverBy(LocalDate today) {
        return !stay.to().isAfter(today);
    }

    /** Something that lies there since before today is carried: the old stay ends and a new one begins. */
    public boolean isCarriedOn(LocalDate today) {
        return isBegunBy(today) && stay.from().isBefore(today);
    }

    /** Where it lies already it may be moved about, whatever light reaches that mat. */
    boolean needsLightOn(MatSpace mat) {
        return needsLight && !mat.id().equals(matId);
    }

    public int days() {
        return (int) ChronoUnit.DAYS.between(stay.from(), stay.to());
    }

    /** The first day of a move that changes only the place. */
    public LocalDate firstDayFrom(LocalDate today) {
        return stay.from().isBefore(today) ? today : stay.from();
    }
}
