package warmshelf.check;

import java.util.List;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** The daily round, wired. */
public final class CheckRoom {
    private CheckRoom() {}

    public static List<Pages> pages(SowingStores stores, RoundStore rounds, Aside aside) {
        RoundReader reader = new RoundReader(stores.planner());
        TickStore ticks = new TickStore(
                stores.database(), stores.audit(), stores.sowings(), stores.entries(), stores.stays(), stores.lots());
        return List.of(
                new TodayPages(rounds, stores.space(), aside),
                new TickPages(stores.histories(), reader, ticks, stores.space()),
                new ReadingPages(new ReadingStore(stores.database(), stores.audit())));
    }

    /** The round of a day; one for all who read it, as it keeps what it has read. */
    public static RoundStore rounds(SowingStores stores) {
        return new RoundStore(
                stores.database(),
                stores.histories(),
                new TodayStore(stores.database()),
                new WalkStore(stores.database()),
                new RoundReader(stores.planner()));
    }
}
