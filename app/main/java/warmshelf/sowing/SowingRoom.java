package warmshelf.sowing;

import java.util.List;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;
import warmshelf.seed.LotStore;
import warmshelf.web.Pages;

/** Asking for space and a member's sowings, wired. */
public final class SowingRoom {
    private SowingRoom() {}

    public static List<Pages> pages(
            Database database,
            CropCatalogue crops,
            SowingPlanner planner,
            LotStore lots,
            SowingStore sowings,
            RequestStore requests,
            HistoryStore histories,
            SpaceStore space) {
        return List.of(
                new AskPages(crops, planner, lots, space, new AskStore(database, lots, sowings, requests)),
                new SowingPages(crops, planner, histories));
    }
}
