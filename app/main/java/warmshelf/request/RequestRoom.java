package warmshelf.request;

import java.util.List;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Pages;

/** The coordinator's decisions on requests, wired. */
public final class RequestRoom {
    private RequestRoom() {}

    public static List<Pages> pages(SowingStores stores) {
        PlacementStore placements =
                new PlacementStore(stores.database(), stores.requests(), stores.stays(), stores.sowings());
        return List.of(new RequestPages(stores.histories(), stores.planner(), stores.space(), placements));
    }
}
