package warmshelf.demo;

import java.time.Clock;
import java.util.Random;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.StayStore;
import warmshelf.check.HeldRackStore;
import warmshelf.check.ReadingStore;
import warmshelf.check.RoundItemStore;
import warmshelf.check.RoundReader;
import warmshelf.check.RoundStore;
import warmshelf.check.TickStore;
import warmshelf.check.TodayStore;
import warmshelf.check.WalkStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.OwnCropStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.duty.DutyStore;
import warmshelf.duty.StandInStore;
import warmshelf.duty.SwapStore;
import warmshelf.duty.WillingStore;
import warmshelf.finding.trial.TrialBookStore;
import warmshelf.finding.trial.TrialStore;
import warmshelf.frost.evidence.EvidenceStore;
import warmshelf.frost.garden.CorrectionStore;
import warmshelf.frost.garden.GardenStore;
import warmshelf.frost.garden.NightStore;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.group.GroupStore;
import warmshelf.group.MemberStore;
import warmshelf.label.LabelRunStore;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;
import warmshelf.seed.OfferStore;
import warmshelf.shelf.MatStore;
import warmshelf.shelf.RackStore;
import warmshelf.shelf.ShelfStore;
import warmshelf.shelf.ShelvingStore;
import warmshelf.shelf.SiteStore;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.GrowerFrost;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.LotRequestStore;
import warmshelf.sowing.LotUseStore;
import warmshelf.sowing.ProblemStore;
import warmshelf.sowing.SeedClaimStore;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStore;
import warmshelf.supply.PromiseStore;

/** The stores of every feature that the demo goes through, on one clock. */
record DemoHouse(
        CropCatalogue crops,
        OwnCropStore ownCrops,
        SowingPlanner planner,
        MemberStore members,
        GroupStore group,
        ShelvingStore shelving,
        SiteStore sites,
        RackStore racks,
        ShelfStore shelves,
        MatStore mats,
        LotStore lots,
        OfferStore offers,
        PromiseStore promises,
        SowingStore sowings,
        RequestStore requests,
        StayStore stays,
        HistoryStore histories,
        SpaceStore space,
        RoundStore rounds,
        ProblemStore problems,
        LabelRunStore labels,
        TickStore ticks,
        ReadingStore readings,
        DutyStore duties,
        WillingStore willing,
        SwapStore swaps,
        GardenStore gardens,
        CorrectionStore corrections,
        ThermometerStore thermometers,
        NightStore nights,
        TrialStore trials,
        TrialBookStore trialBook,
        DemoStore writes) {

    /** So that each demo deals its trials alike. */
    private static final long FIRST_DRAW = 20_270_304;

    static DemoHouse on(Database database, Clock clock) {
        Audit audit = new Audit(clock);
        OwnCropStore ownCrops = new OwnCropStore(database, audit);
        CropCatalogue crops = ownCrops.catalogue();
        SowingPlanner planner = new SowingPlanner(crops, new GrowerFrost(EvidenceStore.over(database, audit)));
        SowingStore sowings = new SowingStore(database, crops, audit);
        EntryStore entries = new EntryStore(audit);
        RequestStore requests = new RequestStore(database, audit);
        StayStore stays = new StayStore(audit, new ClashStore(crops));
        LotStore lots = new LotStore(database, audit);
        MemberStore members = new MemberStore(database, audit);
        GroupStore group = new GroupStore(database, audit);
        StandInStore standIns = new StandInStore(database, audit);
        LotBalanceStore balances = new LotBalanceStore(database, audit, lots, new LotUseStore(database));
        SeedClaimStore claims = new SeedClaimStore(database, sowings, balances, new LotRequestStore(database, audit));
        HistoryStore histories = new HistoryStore(database, audit, sowings, entries, requests, stays);
        ProblemStore problems = new ProblemStore(database, audit);
        LabelRunStore labels = new LabelRunStore(database, audit);
        Random draws = new Random(FIRST_DRAW);
        return new DemoHouse(
                crops,
                ownCrops,
                planner,
                members,
                group,
                new ShelvingStore(database.sql()),
                new SiteStore(database.sql(), audit),
                new RackStore(database.sql(), audit),
                new ShelfStore(database.sql(), audit),
                new MatStore(database.sql(), audit),
                lots,
                new OfferStore(database, audit, lots, balances),
                new PromiseStore(database, audit),
                sowings,
                requests,
                stays,
                histories,
                new SpaceStore(database),
                new RoundStore(
                        database,
                        new RoundItemStore(
                                database,
                                histories,
                                new TodayStore(database),
                                new WalkStore(database),
                                new RoundReader(planner, sowing -> java.util.Optional.empty()),
                                problems,
                                new HeldRackStore(database, crops),
                                labels)),
                problems,
                labels,
                new TickStore(database, audit, sowings, entries, stays, lots),
                new ReadingStore(database, audit),
                new DutyStore(database, audit, standIns),
                new WillingStore(database, audit, standIns),
                new SwapStore(database, audit, standIns),
                new GardenStore(database, audit),
                new CorrectionStore(database, audit),
                new ThermometerStore(database, audit),
                new NightStore(database, audit),
                new TrialStore(database, audit, sowings, requests, balances, claims, () -> draws.nextInt(1_000_000)),
                new TrialBookStore(database, lots),
                new DemoStore(database, members, group, lots, sowings, requests, stays, claims));
    }
}
