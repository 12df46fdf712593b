package warmshelf.check;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.ToIntBiFunction;
import warmshelf.sowing.SowingStores;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** The daily round, wired. */
public final class CheckRoom {
    private CheckRoom() {}

    public static List<Pages> pages(SowingStores stores, Aside aside) {
        RoundReader reader = new RoundReader(stores.planner());
        TickStore ticks = new TickStore(
                stores.database(), stores.audit(), stores.sowings(), stores.entries(), stores.stays(), stores.lots());
        return List.of(
                new TodayPages(rounds(stores), stores.space(), aside),
                new TickPages(stores.histories(), reader, ticks, stores.space()),
                new ReadingPages(new ReadingStore(stores.database(), stores.audit())),
                new DutyPages(new DutyStore(stores.database(), stores.audit())));
    }

    /** How many of a member's own sowings want a look on a day. */
    public static ToIntBiFunction<UUID, LocalDate> ownLooks(SowingStores stores) {
        RoundStore rounds = rounds(stores);
        return (member, day) -> (int) rounds.of(member, day).open();
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
