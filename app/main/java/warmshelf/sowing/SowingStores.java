package warmshelf.sowing;

import warmshelf.allocation.ClashStore;
import warmshelf.allocation.MatDayStore;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.OwnCropStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.seed.LotBalanceStore;
import warmshelf.seed.LotStore;

/** The stores that asking, placing and the daily round share, over one database. */
public record SowingStores(
        Database database,
        Audit audit,
        CropCatalogue crops,
        SowingPlanner planner,
        LotStore lots,
        SowingStore sowings,
        EntryStore entries,
        RequestStore requests,
        StayStore stays,
        MatDayStore matDays,
        HistoryStore histories,
        EndedSowingStore ended,
        SpaceStore space,
        EmergenceStore emergence,
        ProblemStore problems,
        LotUseStore use,
        LotBalanceStore balances,
        LotRequestStore lotRequests,
        SeedClaimStore claims) {

    public static SowingStores over(Database database, Audit audit, FrostSource frost) {
        return over(database, audit, frost, new OwnCropStore(database, audit).catalogue());
    }

    /** The same, with the group's catalogue of crops. */
    public static SowingStores over(Database database, Audit audit, FrostSource frost, CropCatalogue crops) {
        SowingStore sowings = new SowingStore(database, crops, audit);
        EntryStore entries = new EntryStore(audit);
        RequestStore requests = new RequestStore(database, audit);
        EmergenceStore emergence = new EmergenceStore(database, crops);
        ClashStore clashes = new ClashStore(crops);
        StayStore stays = new StayStore(audit, clashes);
        LotStore lots = new LotStore(database, audit);
        LotUseStore use = new LotUseStore(database);
        LotBalanceStore balances = new LotBalanceStore(database, audit, lots, use);
        LotRequestStore lotRequests = new LotRequestStore(database, audit);
        return new SowingStores(
                database,
                audit,
                crops,
                new SowingPlanner(crops, new GrowerFrost(frost), emergence),
                lots,
                sowings,
                entries,
                requests,
                stays,
                new MatDayStore(audit, clashes),
                new HistoryStore(database, audit, sowings, entries, requests, stays),
                new EndedSowingStore(database, sowings),
                new SpaceStore(database),
                emergence,
                new ProblemStore(database, audit),
                use,
                balances,
                lotRequests,
                new SeedClaimStore(database, sowings, balances, lotRequests));
    }
}
