package warmshelf.sowing;

import java.util.List;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.photo.PhotoPages;
import warmshelf.photo.PhotoStore;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** Asking for space and a member's sowings, wired. */
public final class SowingRoom {
    private SowingRoom() {}

    public static List<Pages> pages(SowingStores stores, Aside aside) {
        AskStore asks = new AskStore(stores.database(), stores.lots(), stores.sowings(), stores.requests());
        AcceptedRiskStore risks = new AcceptedRiskStore(stores.database(), stores.audit());
        PhotoStore photos = new PhotoStore(stores.database(), stores.audit());
        LotUseStore use = new LotUseStore(stores.database(), stores.entries());
        return List.of(
                new AskPages(stores.crops(), stores.planner(), stores.lots(), stores.space(), asks, risks, use),
                new SowingPages(stores, photos, risks, aside),
                new WithdrawalPages(stores.histories()),
                new PhotoPages(photos));
    }
}
