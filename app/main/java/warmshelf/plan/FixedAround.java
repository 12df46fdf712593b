package warmshelf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.Stay;
import warmshelf.allocation.WarmDays;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.shelf.WholeDegree;

/** What lies or is published already, as the question says it. */
final class FixedAround {
    private final List<FixedStay> stays = new ArrayList<>();

    /**
     * Adds a stay. How long it lasts was reckoned at its set-points, so the plan keeps to them; where they change from one day to
     * the next, each run of days is a fixed stay of its own.
     *
     * @param warm its set-points from today on; null under a light
     */
    void add(Stay stay, String surface, int place, @Nullable WarmDays warm) {
        if (!stay.isOnMat()) {
            stays.add(fixed(stay, 1, surface, place, new DayRange(stay.from(), stay.to()), null));
        } else if (warm != null) {
            for (WarmDays.Run run : warm.runs()) {
                LocalDate from = run.from().equals(warm.from()) ? stay.from() : run.from();
                int number = warm.runs().indexOf(run) + 1;
                Band promised = new Band(WholeDegree.of(run.celsius()), WholeDegree.of(run.celsius()));
                stays.add(fixed(stay, number, surface, place, new DayRange(from, run.to()), promised));
            }
        }
    }

    private static FixedStay fixed(
            Stay stay, int run, String surface, int place, DayRange days, @Nullable Band promised) {
        String id = run == 1 ? stay.id().toString() : stay.id() + "#" + run;
        return new FixedStay(id, surface, !stay.isOnMat(), place, stay.slot(), days, promised);
    }

    /** The id of the stay of which a fixed one is a run. */
    static String stayOf(String id) {
        int run = id.indexOf('#');
        return run < 0 ? id : id.substring(0, run);
    }

    List<FixedStay> stays() {
        return stays;
    }
}
