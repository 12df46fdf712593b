package warmshelf.placing;

import java.util.List;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.shelf.AddressedSiteStore;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Pages;

/** Looking at stays and moving them, wired. */
public final class StayRoom {
    private StayRoom() {}

    public static List<Pages> pages(SowingStores stores) {
        LyingStore lying = new LyingStore(stores.database(), stores.crops(), stores.space());
        MoveStore moves = new MoveStore(stores.database(), stores.audit(), stores.stays(), stores.requests());
        MoveReader reader = new MoveReader(lying, stores.sowings(), stores.planner());
        AddressedSiteStore sites = new AddressedSiteStore(stores.database().sql());
        StayView view = new StayView(lying, moves, reader, sites);
        return List.of(
                new StayPages(moves, view),
                new MovePages(lying, moves, reader, view, new TrialWarmthStore(stores.database())));
    }
}
