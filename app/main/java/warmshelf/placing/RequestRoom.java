package warmshelf.placing;

import java.util.List;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.shelf.AddressedSiteStore;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Aside;
import warmshelf.web.Awaiting;
import warmshelf.web.Pages;

/** The coordinator's decisions on requests, wired. */
public final class RequestRoom {
    private RequestRoom() {}

    /** What lays requests on mats, one by one. */
    public static PlacementStore placements(SowingStores stores) {
        return new PlacementStore(
                stores.database(), stores.requests(), stores.stays(), stores.sowings(), stores.claims());
    }

    /** What waits for a place, told beside the racks. */
    public static Aside unplaced(SowingStores stores) {
        return new UnplacedNews(
                stores.histories(),
                new RequestSuggestions(
                        new RequestWishes(stores.planner(), stores.space()), new TrialWarmthStore(stores.database())));
    }

    public static List<Pages> pages(SowingStores stores, Aside aside, Awaiting others) {
        RequestWishes wishes = new RequestWishes(stores.planner(), stores.space());
        LightAfterHeat lights = new LightAfterHeat(stores.planner(), stores.space());
        PlacementStore placements = placements(stores);
        TrialWarmthStore trials = new TrialWarmthStore(stores.database());
        PlacementView places = new PlacementView(
                wishes, new AddressedSiteStore(stores.database().sql()));
        return List.of(
                new RequestListPages(
                        stores.histories(),
                        new RequestSuggestions(wishes, trials),
                        placements,
                        lights,
                        trials,
                        aside,
                        new ToDecideView(stores.database(), stores.requests(), others)),
                new RequestLightPages(placements),
                new PlacementLookPages(
                        stores.histories(),
                        wishes,
                        new LyingStore(stores.database(), stores.crops(), stores.space()),
                        trials,
                        places),
                new RequestPages(stores.histories(), wishes, placements, lights, trials, places));
    }
}
