package warmshelf.sowing;

import java.util.List;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.photo.PhotoPages;
import warmshelf.photo.PhotoStore;
import warmshelf.seed.GrownBefore;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** Asking for space and a member's sowings, wired. */
public final class SowingRoom {
    private SowingRoom() {}

    public static List<Pages> pages(SowingStores stores, PhotoStore photos, Aside aside, GrownBefore grown) {
        AskStore asks =
                new AskStore(stores.database(), stores.lots(), stores.sowings(), stores.requests(), stores.claims());
        AcceptedRiskStore risks = new AcceptedRiskStore(stores.database(), stores.audit());
        AskPlanView plans = new AskPlanView(stores, risks);
        AskFormView forms = new AskFormView(stores, new UsualPlantsStore(stores.database()));
        SowingView view = new SowingView(stores);
        return List.of(
                new AskPages(forms, new GrowView(stores)),
                new AskPlanPages(plans, forms, stores, risks, grown),
                new AskSendPages(plans, forms, asks),
                new SeedChoicePages(stores),
                new LotRequestPages(stores, new SeedNews(stores)),
                new MySowingsPages(stores, view, aside),
                new SowingPages(stores, photos, risks, view),
                new WithdrawalPages(stores.histories()),
                new PhotoPages(photos));
    }
}
