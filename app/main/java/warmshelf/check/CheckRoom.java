package warmshelf.check;

import java.util.List;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.StayStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.seed.LotStore;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStore;
import warmshelf.web.Pages;

/** The daily round, wired. */
public final class CheckRoom {
    private CheckRoom() {}

    public static List<Pages> pages(
            Database database,
            Audit audit,
            SowingPlanner planner,
            SowingStore sowings,
            EntryStore entries,
            HistoryStore histories,
            StayStore stays,
            LotStore lots,
            SpaceStore space) {
        RoundReader reader = new RoundReader(planner);
        TodayStore today = new TodayStore(database);
        RoundStore rounds = new RoundStore(histories, today, new WalkStore(database), reader);
        TickStore ticks = new TickStore(database, audit, sowings, entries, stays, lots);
        return List.of(
                new TodayPages(rounds, today, space),
                new TickPages(histories, reader, ticks, space),
                new ReadingPages(new ReadingStore(database, audit)),
                new DutyPages(new DutyStore(database, audit)));
    }
}
