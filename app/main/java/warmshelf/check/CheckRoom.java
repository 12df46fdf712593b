package warmshelf.check;

import java.time.Clock;
import java.util.List;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** The daily round, wired. */
public final class CheckRoom {
    private CheckRoom() {}

    public static List<Pages> pages(SowingStores stores, Aside aside, Clock clock) {
        RoundReader reader = new RoundReader(stores.planner());
        TickStore ticks = new TickStore(
                stores.database(), stores.audit(), stores.sowings(), stores.entries(), stores.stays(), stores.lots());
        ReadingStore readings = new ReadingStore(stores.database(), stores.audit());
        LightUntil lightUntil = new LightUntil(reader, stores.space());
        return List.of(
                new TodayPages(rounds(stores), stores.space(), aside, clock),
                new TickPages(stores.histories(), lightUntil, ticks, stores.space()),
                new BatchPages(
                        stores.histories(),
                        lightUntil,
                        readings,
                        new BatchStore(stores.database(), ticks, readings),
                        clock),
                new ReadingPages(readings),
                new DutyPages(new DutyStore(stores.database(), stores.audit())));
    }

    static RoundStore rounds(SowingStores stores) {
        return new RoundStore(
                stores.database(),
                stores.histories(),
                new TodayStore(stores.database()),
                new WalkStore(stores.database()),
                new RoundReader(stores.planner()));
    }
}
