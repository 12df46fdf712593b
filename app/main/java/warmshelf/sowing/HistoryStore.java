package warmshelf.sowing;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.QUARTER_DAY;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;

/** Reads sowings with their entries, stays and requests; has those withdrawn that are given up before they are sown. */
public final class HistoryStore {
    private final DSLContext sql;
    private final SowingStore sowings;
    private final EntryStore entries;
    private final RequestStore requests;
    private final WithdrawalStore withdrawals;

    public HistoryStore(
            Database database,
            Audit audit,
            SowingStore sowings,
            EntryStore entries,
            RequestStore requests,
            StayStore stays) {
        this.sql = database.sql();
        this.sowings = sowings;
        this.entries = entries;
        this.requests = requests;
        this.withdrawals = new WithdrawalStore(
                sql, audit, sowings, requests, stays, SeedClaimStore.over(database, audit, sowings, entries));
    }

    public Optional<History> find(UUID id) {
        return sowings.find(id).map(this::of);
    }

    /** A sowing without anything of its history. */
    public Optional<Sowing> sowing(UUID id) {
        return sowings.find(id);
    }

    /** What was seen or done, by the entry's id. */
    public Optional<Entry> entry(UUID id) {
        return entries.find(sql, id);
    }

    /** The history of a sowing that has been read. */
    public History of(Sowing sowing) {
        return histories(List.of(sowing)).get(0);
    }

    /** A member's sowings, the newest first. */
    public List<History> ofMember(UUID member) {
        return histories(sowings.ofMember(member));
    }

    /** A member's sowings of a season and after it, and what of earlier ones is not over; the newest first. */
    List<History> ofMember(UUID member, int season) {
        return histories(sowings.ofMember(member, season));
    }

    /** Every sowing of which something can still be seen or done. */
    public List<History> underWay() {
        return histories(sowings.underWay());
    }

    /** Every sowing of which something can still be seen or done, or was on a day or after it. */
    public List<History> underWaySince(LocalDate day) {
        Map<UUID, Sowing> found = new LinkedHashMap<>();
        sowings.underWay().forEach(sowing -> found.put(sowing.id(), sowing));
        Set<UUID> seen = sql.selectDistinct(ENTRY.SOWING_ID)
                .from(ENTRY)
                .where(ENTRY.SEEN_ON.ge(day), ENTRY.SOWING_ID.isNotNull())
                .fetchSet(ENTRY.SOWING_ID);
        seen.removeAll(found.keySet());
        sowings.all(seen).forEach(sowing -> found.put(sowing.id(), sowing));
        return histories(List.copyOf(found.values()));
    }

    /** A member's sowings of which something can still be seen or done. */
    public List<History> underWay(UUID member) {
        return histories(sowings.underWay(member));
    }

    /** Some sowings, by their ids. */
    public Map<UUID, History> all(Collection<UUID> ids) {
        return histories(sowings.all(ids)).stream()
                .collect(Collectors.toMap(history -> history.sowing().id(), Function.identity()));
    }

    private List<History> histories(List<Sowing> found) {
        List<UUID> ids = found.stream().map(Sowing::id).toList();
        if (ids.isEmpty()) {
            return List.of();
        }
        Map<UUID, List<Entry>> entriesOf = entries.ofSowings(sql, ids);
        Map<UUID, List<Stay>> staysOf = StayBookStore.ofSowings(sql, ids);
        Map<UUID, SpaceRequest> requestOf =
                requests.ofSowings(ids).stream().collect(Collectors.toMap(SpaceRequest::sowingId, Function.identity()));
        Map<UUID, Double> setPoints = setPoints(staysOf);
        return found.stream()
                .map(sowing -> history(sowing, entriesOf, staysOf, requestOf, setPoints))
                .toList();
    }

    /** Who typed in what others had seen at a sowing, by entry. */
    Map<UUID, Typist> typists(UUID sowing) {
        return entries.typists(sql, sowing);
    }

    /** Who decided last on the request of a sowing; empty where nobody did. */
    public Optional<RequestStore.Decided> decided(UUID sowing) {
        return requests.decided(sowing);
    }

    private static History history(
            Sowing sowing,
            Map<UUID, List<Entry>> entriesOf,
            Map<UUID, List<Stay>> staysOf,
            Map<UUID, SpaceRequest> requestOf,
            Map<UUID, Double> setPoints) {
        List<Stay> stays = staysOf.getOrDefault(sowing.id(), List.of());
        @Nullable
        Double setPoint = stays.stream()
                .filter(Stay::isOnMat)
                .map(stay -> setPoints.get(stay.id()))
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElse(null);
        return new History(
                sowing, entriesOf.getOrDefault(sowing.id(), List.of()), stays, requestOf.get(sowing.id()), setPoint);
    }

    private Map<UUID, Double> setPoints(Map<UUID, List<Stay>> staysOf) {
        List<UUID> onMats = staysOf.values().stream()
                .flatMap(List::stream)
                .filter(Stay::isOnMat)
                .map(Stay::id)
                .toList();
        return sql.select(QUARTER_DAY.STAY_ID, DSL.min(QUARTER_DAY.CELSIUS))
                .from(Database.listed(QUARTER_DAY, QUARTER_DAY.STAY_ID, onMats))
                .groupBy(QUARTER_DAY.STAY_ID)
                .fetchMap(row -> row.value1(), row -> row.value2());
    }

    /** Withdrawing, and taking that back. */
    public WithdrawalStore withdrawals() {
        return withdrawals;
    }

    /**
     * Withdraws a sowing that has not been sown: its request ends and its place is free. A no when it has been sown or has ended.
     */
    public Decision<WithdrawalStore.GivenUp> withdraw(UUID id, UUID by) {
        return withdraw(sql, id, by);
    }

    /** The same within the caller's transaction. */
    public Decision<WithdrawalStore.GivenUp> withdraw(DSLContext within, UUID id, UUID by) {
        return withdrawals.withdraw(within, id, by);
    }
}
