package warmshelf.request;

import java.util.List;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.StayStore;
import warmshelf.db.Database;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStore;
import warmshelf.web.Pages;

/** The coordinator's decisions on requests, wired. */
public final class RequestRoom {
    private RequestRoom() {}

    public static List<Pages> pages(
            Database database,
            SowingPlanner planner,
            SowingStore sowings,
            RequestStore requests,
            HistoryStore histories,
            StayStore stays,
            SpaceStore space) {
        return List.of(
                new RequestPages(histories, planner, space, new PlacementStore(database, requests, stays, sowings)));
    }
}
