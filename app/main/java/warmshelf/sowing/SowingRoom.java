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
        AskStore asks =
                new AskStore(stores.database(), stores.lots(), stores.sowings(), stores.requests(), stores.claims());
        AcceptedRiskStore risks = new AcceptedRiskStore(stores.database(), stores.audit());
        PhotoStore photos = new PhotoStore(stores.database(), stores.audit());
        return List.of(
                new AskPages(
                        stores.crops(),
                        stores.planner(),
                        stores.lots(),
                        stores.space(),
                        asks,
                        risks,
                        stores.use(),
                        stores.balances()),
                new SeedChoicePages(stores),
                new LotRequestPages(stores, new SeedNews(stores)),
                new SowingPages(stores, photos, risks, aside),
                new WithdrawalPages(stores.histories()),
                new PhotoPages(photos));
    }
}
