package warmshelf.placing;

import java.util.List;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** The coordinator's decisions on requests, wired. */
public final class RequestRoom {
    private RequestRoom() {}

    /** What lays requests on mats, one by one. */
    public static PlacementStore placements(SowingStores stores) {
        return new PlacementStore(
                stores.database(), stores.requests(), stores.stays(), stores.sowings(), stores.claims());
    }

    public static List<Pages> pages(SowingStores stores, Aside aside) {
        return List.of(
                new RequestPages(stores.histories(), stores.planner(), stores.space(), placements(stores), aside));
    }
}
