package warmshelf.seed;

import static warmshelf.db.generated.Tables.LOT;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** What of the lots is whose; every write that uses up seed asks here first, with the lot held. */
public final class LotBalanceStore {
    private final DSLContext sql;
    private final Audit audit;
    private final LotStore lots;
    private final SeedHoldStore holds;

    public LotBalanceStore(Database database, Audit audit, LotStore lots, SeedHoldStore holds) {
        this.sql = database.sql();
        this.audit = audit;
        this.lots = lots;
        this.holds = holds;
    }

    public LotBalance of(Lot lot) {
        return of(sql, lot);
    }

    /** The balance of each of these lots, by its id. */
    public Map<UUID, LotBalance> of(Collection<Lot> some) {
        return of(sql, some);
    }

    /** The lots of which this member may still plan on something, by crop, variety and year. */
    public List<Lot> freeFor(UUID member) {
        List<Lot> box = lots.withSeed();
        Map<UUID, LotBalance> all = of(box);
        return box.stream()
                .filter(lot -> !Objects.requireNonNull(all.get(lot.id())).isUsedUpFor(member))
                .toList();
    }

    /** The lot's balance; the lot is held until the transaction ends, so that two who want its last seeds take turns. */
    public LotBalance held(DSLContext tx, UUID lotId) {
        return of(tx, lots.hold(tx, lotId));
    }

    /** Says on what terms others may plan on a lot. */
    public void share(UUID lotId, Sharing sharing, UUID by) {
        sql.transaction(work -> {
            work.dsl()
                    .update(LOT)
                    .set(LOT.KEPT_BACK, sharing.keptBack())
                    .set(LOT.WITHOUT_ASKING, sharing.withoutAsking())
                    .set(LOT.VERSION, LOT.VERSION.plus(1))
                    .where(LOT.ID.eq(lotId))
                    .execute();
            String detail = "kept back: %d, %s"
                    .formatted(sharing.keptBack(), sharing.withoutAsking() ? "without asking" : "asked for");
            audit.write(work.dsl(), by, "share", "lot", lotId, detail);
        });
    }

    private LotBalance of(DSLContext from, Lot lot) {
        return of(from, List.of(lot)).values().iterator().next();
    }

    private Map<UUID, LotBalance> of(DSLContext from, Collection<Lot> some) {
        List<UUID> ids = some.stream().map(Lot::id).toList();
        Map<UUID, List<SeedHold>> held = holds.holds(from, ids);
        Map<UUID, Sharing> shared = from.select(LOT.ID, LOT.KEPT_BACK, LOT.WITHOUT_ASKING)
                .from(Database.listed(LOT, LOT.ID, ids))
                .fetchMap(row -> row.value1(), row -> new Sharing(row.value2(), row.value3()));
        return some.stream()
                .map(lot -> new LotBalance(
                        lot, shared.getOrDefault(lot.id(), Sharing.ASKED), held.getOrDefault(lot.id(), List.of())))
                .collect(Collectors.toMap(balance -> balance.lot().id(), Function.identity()));
    }
}
