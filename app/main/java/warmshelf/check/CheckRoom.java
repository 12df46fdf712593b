package warmshelf.check;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.ToIntBiFunction;
import warmshelf.allocation.RackHoldStore;
import warmshelf.group.MemberStore;
import warmshelf.label.LabelRunStore;
import warmshelf.label.SowingCodes;
import warmshelf.photo.PhotoStore;
import warmshelf.seed.GerminationTest;
import warmshelf.sowing.CompostStore;
import warmshelf.sowing.LotUseStore;
import warmshelf.sowing.SowingStores;
import warmshelf.tablet.TabletReachPages;
import warmshelf.web.Aside;
import warmshelf.web.Pages;

/** The daily round, wired. */
public final class CheckRoom {
    private CheckRoom() {}

    public static List<Pages> pages(
            SowingStores stores,
            RoundStore rounds,
            PhotoStore photos,
            MemberStore members,
            TabletReachPages reach,
            Aside aside,
            Clock clock) {
        RoundReader reader = reader(stores);
        TickStore ticks = ticks(stores);
        ReadingStore readings = new ReadingStore(stores.database(), stores.audit());
        LightUntil lightUntil = new LightUntil(reader, stores.space());
        WeekSheetStore sheets = new WeekSheetStore(
                stores.histories(), new TodayStore(stores.database()), new WalkStore(stores.database()), reader);
        TabletTodayPages tablets = new TabletTodayPages(rounds, stores.space(), reach, aside, clock);
        return List.of(
                tablets,
                new TodayPages(rounds, stores.space(), photos, aside, tablets, clock),
                new ProblemPages(stores.histories(), stores.problems()),
                new HeldRackPages(new RackHoldStore(stores.database(), stores.audit())),
                new TickPages(
                        stores.histories(),
                        lightUntil,
                        ticks,
                        stores.space(),
                        new CompostStore(stores.database().sql(), stores.audit()),
                        reach,
                        clock),
                new BatchPages(sentEntries(stores), reach, clock),
                new WeekSheetPages(
                        sheets,
                        new SowingCodes(stores.database(), stores.audit()),
                        members,
                        lightUntil,
                        new BatchStore(stores.database(), ticks, readings),
                        clock),
                new ReadingPages(readings, reach, clock));
    }

    /** What takes ticks and readings that phones and scripts send. */
    public static SentEntries sentEntries(SowingStores stores) {
        ReadingStore readings = new ReadingStore(stores.database(), stores.audit());
        return new SentEntries(
                stores.histories(),
                new LightUntil(reader(stores), stores.space()),
                readings,
                new BatchStore(stores.database(), ticks(stores), readings));
    }

    /** What keeps ticks. */
    public static TickStore ticks(SowingStores stores) {
        return new TickStore(
                stores.database(), stores.audit(), stores.sowings(), stores.entries(), stores.stays(), stores.lots());
    }

    /** How many of a member's own sowings want a look on a day. */
    public static ToIntBiFunction<UUID, LocalDate> ownLooks(SowingStores stores) {
        RoundStore rounds = rounds(stores);
        return (member, day) -> (int) rounds.of(member, day).open();
    }

    /** The round of a day; one for all who read it, as it keeps what it has read. */
    public static RoundStore rounds(SowingStores stores) {
        return new RoundStore(
                stores.database(),
                new RoundItemStore(
                        stores.database(),
                        stores.histories(),
                        new TodayStore(stores.database()),
                        new WalkStore(stores.database()),
                        reader(stores),
                        stores.problems(),
                        new HeldRackStore(stores.database(), stores.crops()),
                        new LabelRunStore(stores.database(), stores.audit())));
    }

    private static RoundReader reader(SowingStores stores) {
        LotUseStore use = stores.use();
        return new RoundReader(
                stores.planner(),
                sowing -> stores.lots()
                        .find(sowing.lotId())
                        .map(lot -> lot.share(sowing.crop(), evidence(stores, use, lot.id()), sowing.season())));
    }

    /** Tests of a lot, and what came of it here. */
    private static List<GerminationTest> evidence(SowingStores stores, LotUseStore use, UUID lot) {
        List<GerminationTest> evidence = new ArrayList<>(stores.lots().tests(lot));
        evidence.addAll(use.results(List.of(lot)).getOrDefault(lot, List.of()));
        return evidence;
    }
}
