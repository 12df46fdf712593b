package warmshelf.sowing;

import java.util.List;
import java.util.stream.Collectors;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.news.NewsRoom;
import warmshelf.photo.PhotoPages;
import warmshelf.photo.PhotoStore;
import warmshelf.seed.GrownBefore;
import warmshelf.tablet.TabletReachPages;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** Asking for space and a member's sowings, wired. */
public final class SowingRoom {
    private SowingRoom() {}

    /** What is new for members of their sowings, told by the titles that the pages show. */
    public static NewsRoom news(SowingStores stores) {
        return new NewsRoom(
                stores.database(),
                stores.audit(),
                ids -> stores.sowings().all(ids).stream().collect(Collectors.toMap(Sowing::id, Sowing::title)),
                word -> Problem.named(word).words());
    }

    public static List<Pages> pages(
            SowingStores stores, PhotoStore photos, Aside aside, GrownBefore grown, TabletReachPages reach) {
        AskStore asks =
                new AskStore(stores.database(), stores.lots(), stores.sowings(), stores.requests(), stores.claims());
        AcceptedRiskStore risks = new AcceptedRiskStore(stores.database(), stores.audit());
        AskPlanView plans = new AskPlanView(stores, risks);
        AskFormView forms = new AskFormView(stores, new UsualPlantsStore(stores.database()));
        GatheredStore gathered = new GatheredStore(stores.database(), stores.audit());
        GatheredView together = new GatheredView(gathered, plans);
        SowingView view = new SowingView(stores);
        return List.of(
                new AskPages(forms, new GrowView(stores), together, new SeasonGateStore(stores.database())),
                new AskPlanPages(plans, forms, stores, risks, grown),
                new AskSendPages(plans, forms, asks),
                new GatheredPages(plans, forms, asks, gathered, together),
                new AskAgainPages(stores.sowings(), forms, gathered),
                new SeedChoicePages(stores),
                new LotRequestPages(stores, new SeedNews(stores)),
                new MySowingsPages(stores, view, aside),
                new SowingPages(stores, photos, risks, view),
                new MessagePages(stores.sowings(), new MessageStore(stores.database(), stores.audit())),
                new WithdrawalPages(stores.histories()),
                new PhotoPages(photos, reach));
    }
}
