package warmshelf.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.Stay;
import warmshelf.allocation.plan.DayRange;
import warmshelf.allocation.plan.FixedStay;

/** What lies or is published already, as the question says it. */
final class FixedAround {
    private final List<FixedStay> stays = new ArrayList<>();

    /**
     * Adds a stay.
     *
     * @param band the set-points it bears; null under a light
     * @param setPoints the lowest and the highest it is promised
     */
    void add(Stay stay, String surface, int place, @Nullable Band band, @Nullable Band setPoints) {
        if (stay.isOnMat() && (band == null || setPoints == null)) {
            return;
        }
        stays.add(new FixedStay(
                stay.id().toString(),
                surface,
                !stay.isOnMat(),
                place,
                stay.slot(),
                new DayRange(stay.from(), stay.to()),
                stay.isOnMat() ? promised(band, setPoints) : null));
    }

    /**
     * How long a stay lasts was reckoned at its set-point, so the plan keeps to that one. Where a coordinator turns the mat
     * during the stay there is no one set-point, and the band decides.
     */
    private static @Nullable Band promised(@Nullable Band band, @Nullable Band setPoints) {
        return setPoints != null && setPoints.lowC() == setPoints.highC() ? setPoints : band;
    }

    List<FixedStay> stays() {
        return stays;
    }
}
