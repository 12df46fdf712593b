package warmshelf.placing;

import java.time.LocalDate;
import java.util.List;
import java.util.function.DoubleToIntFunction;
import warmshelf.allocation.RackHold;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.SpaceWish;
import warmshelf.decision.Reach;
import warmshelf.sowing.Asking;
import warmshelf.sowing.History;
import warmshelf.sowing.SowingPlanner;

/** Requests as the placing sees them, and the board on which they are placed. */
final class RequestWishes {
    private static final int DAYS_AHEAD = 400;

    private final SowingPlanner planner;
    private final SpaceStore space;

    RequestWishes(SowingPlanner planner, SpaceStore space) {
        this.planner = planner;
        this.space = space;
    }

    SpaceWish of(History history, SpaceRequest request, LocalDate today) {
        return new SpaceWish(
                request.sowingId(),
                request.quarters(),
                request.earliest(),
                request.ideal(),
                request.latest(),
                request.band(),
                request.needsLight(),
                daysAt(history, request, today));
    }

    /** Days on the mat at each set-point. */
    DoubleToIntFunction daysAt(History history, SpaceRequest request, LocalDate today) {
        return planner.daysAt(Asking.of(history.sowing()), today, request.days());
    }

    /** The racks that are held. */
    List<RackHold> held() {
        return space.holds().inOrder();
    }

    /** The mats on which somebody may decide. */
    SpaceCalendar board(LocalDate today, Reach reach) {
        return space.board(today, today.plusDays(DAYS_AHEAD), reach);
    }
}
