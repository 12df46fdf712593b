package warmshelf.plan;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARANTINE_SHELF;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.RackHold;
import warmshelf.allocation.RackHoldStore;
import warmshelf.allocation.RackHolds;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.WarmDays;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.SeasonQuestion.Lying;
import warmshelf.plan.engine.CircuitFeed;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.LitShelf;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.SetPointSpan;
import warmshelf.shelf.Circuit;
import warmshelf.shelf.OnSiteStore;
import warmshelf.shelf.Outage;
import warmshelf.shelf.OutageStore;
import warmshelf.shelf.RetirementStore;
import warmshelf.shelf.Retirements;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;

/** Puts the question of a season plan together from the group's records. */
final class PlanQuestionStore {
    private final DSLContext sql;
    private final SowingStores stores;
    private final ChoiceRankStore ranks;

    PlanQuestionStore(SowingStores stores, ChoiceRankStore ranks) {
        this.sql = stores.database().sql();
        this.stores = stores;
        this.ranks = ranks;
    }

    /** Where a place is. */
    private record Spot(UUID place, String surface, boolean lit, int number) {}

    /**
     * Everything that waits, around everything that lies or is published from a day on.
     *
     * @param freed published stays that may be moved; those that have begun by then stay fixed all the same
     * @param withLight whether who asked for a place under a light after the mat must get one
     */
    SeasonQuestion question(Set<UUID> freed, boolean withLight, LocalDate today) {
        List<Stay> stays = StayBookStore.lastingAfter(sql, today);
        List<SpaceRequest> waiting = stores.requests().waiting();
        Map<UUID, Sowing> sowings = sowings(stays, waiting);
        Map<String, MatSpace> mats = new LinkedHashMap<>();
        stores.space().offeredMats().forEach(mat -> mats.put(mat.name(), mat));
        RequestsAsked requests = new RequestsAsked(stores.planner(), ranks.choices(), mats.values(), today, withLight);
        Map<String, Asked> asked = new LinkedHashMap<>();
        waiting.forEach(request -> {
            Sowing sowing = sowings.get(request.sowingId());
            if (sowing != null && !sowing.stage().isOver()) {
                asked.put(request.sowingId().toString(), requests.asked(sowing, request, null, null));
            }
        });
        Set<UUID> moving = new HashSet<>();
        RackHolds holds = RackHoldStore.read(sql);
        for (Stay stay : movable(stays, freed, holds, today)) {
            Sowing sowing = sowings.get(stay.sowingId());
            SpaceRequest request = stores.requests().find(stay.sowingId()).orElse(null);
            if (sowing != null && request != null && request.state() == SpaceRequest.State.PLACED) {
                moving.add(stay.id());
                Stay light = bookedAfter(stays, stay);
                if (light != null) {
                    moving.add(light.id());
                }
                asked.put(stay.sowingId().toString(), requests.asked(sowing, request, stay, light));
            }
        }
        stays.removeIf(stay -> moving.contains(stay.id()));
        return around(asked, stays, sowings, mats, holds, today);
    }

    /** The racks that are held: a plan leaves what is there as it is, and puts nothing new there. */
    List<RackHold> held() {
        return RackHoldStore.read(sql).inOrder();
    }

    private static List<Stay> movable(List<Stay> stays, Set<UUID> freed, RackHolds holds, LocalDate today) {
        return stays.stream()
                .filter(stay -> freed.contains(stay.id()) && stay.isOnMat() && !stay.isBegunBy(today))
                .filter(stay -> holds.at(stay.placeId()).isEmpty())
                .toList();
    }

    private static @Nullable Stay bookedAfter(List<Stay> stays, Stay freed) {
        return stays.stream()
                .filter(stay -> stay.sowingId().equals(freed.sowingId()) && !stay.isOnMat())
                .findFirst()
                .orElse(null);
    }

    private SeasonQuestion around(
            Map<String, Asked> asked,
            List<Stay> stays,
            Map<UUID, Sowing> sowings,
            Map<String, MatSpace> mats,
            RackHolds holds,
            LocalDate today) {
        Map<UUID, Spot> spots = spots(holds);
        Map<String, RackHold> held = new HashMap<>();
        mats.forEach((name, mat) -> holds.keepsOut(mat).ifPresent(hold -> held.put(name, hold)));
        Map<UUID, WarmDays> warm = warm(today);
        FixedAround fixed = new FixedAround();
        Map<String, Lying> lying = new LinkedHashMap<>();
        for (Stay stay : stays) {
            Spot spot = spots.get(stay.placeId());
            Sowing sowing = sowings.get(stay.sowingId());
            if (spot == null || sowing == null) {
                continue;
            }
            fixed.add(stay, spot.surface(), spot.number(), warm.get(stay.id()));
            lying.put(stay.id().toString(), new Lying(stay, sowing, spot.surface(), spot.number()));
        }
        DayRange days = RequestsAsked.days(today, asked.values(), stays);
        PlanQuestion question = new PlanQuestion(
                days,
                circuits(held.keySet()),
                planMats(mats, held.keySet(), days),
                litShelves(spots.values()),
                fixed.stays(),
                asked.values().stream().map(Asked::wanted).toList());
        return new SeasonQuestion(question, asked, lying, mats, standing(days), litPlaces(spots.values()), held);
    }

    private Map<UUID, Sowing> sowings(List<Stay> stays, List<SpaceRequest> waiting) {
        Set<UUID> ids = Stream.concat(
                        stays.stream().map(Stay::sowingId), waiting.stream().map(SpaceRequest::sowingId))
                .collect(Collectors.toSet());
        return stores.sowings().all(ids).stream().collect(Collectors.toMap(Sowing::id, sowing -> sowing));
    }

    /** Of quarantine shelves, held racks and lit shelves that are retired none: a plan neither uses them nor asks what lies there. */
    private Map<UUID, Spot> spots(RackHolds holds) {
        Map<UUID, Spot> spots = OnSiteStore.ofPlaces(
                        sql.select(PLACE.ID, PLACE.KIND, PLACE.NUMBER, MAT.NAME, SITE.NAME, RACK.NAME, SHELF.FROM_TOP)
                                .from(PLACE))
                .where(DSL.notExists(
                        DSL.selectOne().from(QUARANTINE_SHELF).where(QUARANTINE_SHELF.SHELF_ID.eq(SHELF.ID))))
                .fetchMap(PLACE.ID, row -> {
                    boolean lit = row.get(PLACE.KIND).equals("lit");
                    String shelf = "%s · %s · shelf %d"
                            .formatted(row.get(SITE.NAME), row.get(RACK.NAME), row.get(SHELF.FROM_TOP));
                    return new Spot(row.get(PLACE.ID), lit ? shelf : row.get(MAT.NAME), lit, row.get(PLACE.NUMBER));
                });
        Retirements retired = RetirementStore.read(sql);
        spots.values()
                .removeIf(spot -> holds.at(spot.place()).isPresent()
                        || (spot.lit() && retired.places().containsKey(spot.place())));
        return spots;
    }

    /** The set-points of what lies on mats, from a day on. */
    private Map<UUID, WarmDays> warm(LocalDate today) {
        Map<UUID, WarmDays> warm = new HashMap<>();
        sql.selectDistinct(QUARTER_DAY.STAY_ID, QUARTER_DAY.ON_DAY, QUARTER_DAY.CELSIUS)
                .from(QUARTER_DAY)
                .where(QUARTER_DAY.KIND.eq("mat"), QUARTER_DAY.ON_DAY.ge(today))
                .orderBy(QUARTER_DAY.STAY_ID, QUARTER_DAY.ON_DAY)
                .fetchGroups(QUARTER_DAY.STAY_ID)
                .forEach((stay, days) ->
                        warm.put(stay, new WarmDays(days.get(0).value2(), days.getValues(QUARTER_DAY.CELSIUS))));
        return warm;
    }

    private List<SetPointSpan> standing(DayRange days) {
        return sql.select(MAT.NAME, MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .join(MAT)
                .on(MAT.ID.eq(MAT_DAY.MAT_ID))
                .where(MAT_DAY.ON_DAY.ge(days.from()), MAT_DAY.ON_DAY.lt(days.to()))
                .orderBy(MAT.NAME, MAT_DAY.ON_DAY)
                .fetch(row -> new SetPointSpan(
                        row.value1(), new DayRange(row.value2(), row.value2().plusDays(1)), row.value3()));
    }

    /**
     * The lights of a site burn on the same circuit, so what they take is not there for mats; nor is what the mats of held racks
     * take, which go on warming what lies there.
     */
    private List<CircuitFeed> circuits(Set<String> held) {
        Map<String, Integer> taken = new HashMap<>(OnSiteStore.ofShelves(
                        sql.select(SITE.NAME, DSL.sum(SHELF.LIGHT_WATTS)).from(SHELF))
                .groupBy(SITE.NAME)
                .fetchMap(row -> row.value1(), row -> row.value2().intValue()));
        OnSiteStore.ofMats(sql.select(SITE.NAME, DSL.sum(MAT.WATTS)).from(MAT))
                .where(MAT.NAME.in(held))
                .groupBy(SITE.NAME)
                .forEach(row -> taken.merge(row.value1(), row.value2().intValue(), Integer::sum));
        return sql.select(SITE.NAME, SITE.CIRCUIT_AMPS, SITE.CIRCUIT_VOLTS)
                .from(SITE)
                .orderBy(SITE.NAME)
                .fetch(row -> {
                    Circuit whole = new Circuit(row.value2().doubleValue(), row.value3());
                    return new CircuitFeed(row.value1(), whole.without(taken.getOrDefault(row.value1(), 0)));
                });
    }

    /** Nobody knows when a rack will be cleared, so a plan does without its mats on all its days. */
    private List<PlannedMat> planMats(Map<String, MatSpace> mats, Set<String> held, DayRange days) {
        Map<UUID, List<DayRange>> out = OutageStore.unusable(sql, days.from(), days.to()).stream()
                .collect(Collectors.groupingBy(
                        Outage::matId,
                        Collectors.mapping(
                                outage -> new DayRange(outage.from(), outage.isForGood() ? days.to() : outage.to()),
                                Collectors.toList())));
        List<PlannedMat> planned = new ArrayList<>();
        OnSiteStore.ofMats(sql.select(MAT.ID, MAT.NAME, MAT.WATTS, SITE.NAME).from(MAT))
                .orderBy(MAT.NAME)
                .forEach(row -> {
                    MatSpace mat = mats.get(row.value2());
                    if (mat != null && !mat.places().isEmpty()) {
                        planned.add(new PlannedMat(
                                mat.name(),
                                mat.places().size(),
                                new Band(
                                        mat.thermostat().lowest(),
                                        mat.thermostat().highest()),
                                row.value3(),
                                row.value4(),
                                mat.light(),
                                held.contains(mat.name()) ? List.of(days) : out.getOrDefault(row.value1(), List.of())));
                    }
                });
        return planned;
    }

    private static List<LitShelf> litShelves(Collection<Spot> spots) {
        return litPlaces(spots).entrySet().stream()
                .map(shelf -> new LitShelf(shelf.getKey(), shelf.getValue().size()))
                .toList();
    }

    private static Map<String, List<UUID>> litPlaces(Collection<Spot> spots) {
        return spots.stream()
                .filter(Spot::lit)
                .sorted(Comparator.comparingInt(Spot::number))
                .collect(Collectors.groupingBy(
                        Spot::surface, TreeMap::new, Collectors.mapping(Spot::place, Collectors.toList())));
    }
}
