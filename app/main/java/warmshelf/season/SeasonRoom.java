package warmshelf.season;

import java.util.List;
import warmshelf.check.CheckRoom;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.group.GroupStore;
import warmshelf.sowing.GrowerFrost;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** Closing a season, opening the next and reading those that are over, wired. */
public final class SeasonRoom {
    private SeasonRoom() {}

    public static List<Pages> pages(SowingStores stores, GroupStore group, FrostSource frost) {
        SeasonTurnStore turns = new SeasonTurnStore(stores.database(), stores.audit());
        SeasonCountStore counts = new SeasonCountStore(stores.database().sql());
        SettlementStore settlements = new SettlementStore(
                stores.database(),
                stores.audit(),
                stores.sowings(),
                stores.entries(),
                stores.histories(),
                CheckRoom.ticks(stores));
        GroupFrost frosts = new GroupFrost(() -> group.find().orElseThrow().profile(), new GrowerFrost(frost));
        return List.of(
                new SeasonPages(turns, counts, frosts),
                new SeasonClosingPages(settlements, turns, frosts),
                new PastSeasonPages(
                        turns, counts, new PastSowingStore(stores.database().sql(), stores.crops())));
    }

    /** What Today tells of the season. */
    public static Aside today(SowingStores stores) {
        return new SeasonNews(
                new SeasonTurnStore(stores.database(), stores.audit()),
                new SeasonCountStore(stores.database().sql()));
    }
}
