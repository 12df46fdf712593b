package warmshelf.allocation;

import static warmshelf.allocation.AllocationSentences.SAY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARANTINE_SHELF;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.decision.Reach;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.OnSiteStore;
import warmshelf.shelf.RetirementStore;
import warmshelf.shelf.Retirements;
import warmshelf.shelf.Thermostat;

/** Reads the mats, and which of their quarters are taken, or out of service, on which days. */
public final class SpaceStore {
    private static final Slot WHOLE = new Slot(1, 4);

    private final DSLContext sql;

    public SpaceStore(Database database) {
        this.sql = database.sql();
    }

    /** The board of what may be planned and offered, from one day up to but not on another; mats of held racks are closed on it. */
    public SpaceCalendar board(LocalDate from, LocalDate to) {
        return board(from, to, Reach.WHOLE_GROUP);
    }

    /** The same with the mats alone on which somebody may decide. */
    public SpaceCalendar board(LocalDate from, LocalDate to, Reach reach) {
        Retirements retired = RetirementStore.read(sql);
        SpaceCalendar board = new SpaceCalendar(
                from,
                to,
                mats(DSL.not(isQuarantine()), reach).stream()
                        .filter(mat -> retired.isInUse(mat.id(), from))
                        .toList());
        SurroundingsStore.fill(sql, board);
        RackHolds holds = holds();
        board.mats().stream().filter(mat -> holds.keepsOut(mat).isPresent()).forEach(mat -> board.close(mat.id()));
        return board;
    }

    /** Every mat in walking order. */
    public List<MatSpace> mats() {
        return mats(Reach.WHOLE_GROUP);
    }

    /** Those on which somebody may decide. */
    public List<MatSpace> mats(Reach reach) {
        return mats(DSL.noCondition(), reach);
    }

    /** All mats but those of quarantine shelves. */
    public List<MatSpace> offeredMats() {
        return mats(DSL.not(isQuarantine()), Reach.WHOLE_GROUP);
    }

    private static Condition isQuarantine() {
        return DSL.exists(DSL.selectOne().from(QUARANTINE_SHELF).where(QUARANTINE_SHELF.SHELF_ID.eq(SHELF.ID)));
    }

    private List<MatSpace> mats(Condition which, Reach reach) {
        var places = sql.select(PLACE.MAT_ID, PLACE.ID)
                .from(PLACE)
                .where(PLACE.KIND.eq("mat"))
                .orderBy(PLACE.NUMBER)
                .fetchGroups(PLACE.MAT_ID, PLACE.ID);
        return OnSiteStore.ofMats(sql.select(
                                MAT.ID,
                                MAT.NAME,
                                SITE.NAME,
                                RACK.NAME,
                                SHELF.FROM_TOP,
                                MAT.THERMOSTAT_LOW_C,
                                MAT.THERMOSTAT_HIGH_C,
                                MAT.USUAL_C,
                                MAT.LIGHT,
                                SITE.ID)
                        .from(MAT))
                .where(which)
                .orderBy(
                        SITE.WALK_ORDER,
                        SITE.NAME,
                        RACK.WALK_ORDER,
                        RACK.NAME,
                        SHELF.FROM_TOP,
                        MAT.WALK_ORDER,
                        MAT.NAME)
                .fetch()
                .stream()
                .filter(mat -> reach.covers(mat.get(SITE.ID)))
                .map(mat -> mat(mat, places.getOrDefault(mat.get(MAT.ID), List.of())))
                .toList();
    }

    private static MatSpace mat(Record mat, List<UUID> places) {
        return new MatSpace(
                mat.get(MAT.ID),
                mat.get(MAT.NAME),
                "%s · %s · shelf %d".formatted(mat.get(SITE.NAME), mat.get(RACK.NAME), mat.get(SHELF.FROM_TOP)),
                new Thermostat(mat.get(MAT.THERMOSTAT_LOW_C), mat.get(MAT.THERMOSTAT_HIGH_C)),
                mat.get(MAT.USUAL_C),
                LightAbove.named(mat.get(MAT.LIGHT)),
                places);
    }

    /** Lit places that take something new from a day on, and how long they stay free: the day after the last free one. */
    public List<LitPlace> litPlaces(LocalDate from, LocalDate to, int quarters) {
        RackHolds holds = holds();
        return litPlaces(from, to, quarters, DSL.not(isQuarantine())).stream()
                .filter(place -> holds.at(place.placeId()).isEmpty())
                .toList();
    }

    /** The same with those of quarantine shelves and held racks, where nothing is planned or offered. */
    public List<LitPlace> allLitPlaces(LocalDate from, LocalDate to, int quarters) {
        return litPlaces(from, to, quarters, DSL.noCondition());
    }

    /**
     * Where something may go under a light from where it lies: from a held rack only within it, or to a quarantine shelf.
     *
     * @param lying the place on which it lies; null: on none
     */
    public List<LitPlace> litPlacesFrom(@Nullable UUID lying, LocalDate from, LocalDate to, int quarters) {
        RackHolds holds = holds();
        if (lying == null || holds.at(lying).isEmpty()) {
            return litPlaces(from, to, quarters);
        }
        return allLitPlaces(from, to, quarters).stream()
                .filter(place -> holds.inTheWay(lying, place.placeId()).isEmpty())
                .toList();
    }

    /** The racks that are held. */
    public RackHolds holds() {
        return RackHoldStore.read(sql);
    }

    private List<LitPlace> litPlaces(LocalDate from, LocalDate to, int quarters, Condition which) {
        SpaceCalendar lit = new SpaceCalendar(
                from,
                to,
                List.of(new MatSpace(
                        UUID.randomUUID(),
                        "lit",
                        "",
                        new Thermostat(0, 0),
                        0,
                        sql.select(PLACE.ID)
                                .from(PLACE)
                                .where(PLACE.KIND.eq("lit"))
                                .fetch(PLACE.ID))));
        sql.select(QUARTER_DAY.PLACE_ID, QUARTER_DAY.QUARTER, QUARTER_DAY.ON_DAY)
                .from(QUARTER_DAY)
                .where(QUARTER_DAY.KIND.eq("lit"), QUARTER_DAY.ON_DAY.ge(from), QUARTER_DAY.ON_DAY.lt(to))
                .forEach(taken -> lit.take(
                        taken.value1(),
                        new Slot(taken.value2(), 1),
                        taken.value3(),
                        taken.value3().plusDays(1)));
        RetirementStore.read(sql).places().forEach((place, since) -> lit.take(place, WHOLE, since, to));
        return litPlacesInOrder(which).stream()
                .flatMap(place -> Slot.of(quarters).stream()
                        .filter(slot -> lit.isFree(place.placeId(), slot, from, from.plusDays(1)))
                        .limit(1)
                        .map(slot -> place.with(slot, freeUntil(lit, place.placeId(), slot, from))))
                .toList();
    }

    /** The first lit place in walking order, of those on which somebody may decide, that is free on all those days. */
    public Optional<LitPlace> litPlaceFor(LocalDate from, LocalDate to, int quarters, Reach reach) {
        return litPlaces(from, to, quarters).stream()
                .filter(place -> reach.covers(place.siteId()))
                .filter(place -> !place.freeUntil().isBefore(to))
                .findFirst();
    }

    private static LocalDate freeUntil(SpaceCalendar board, UUID place, Slot slot, LocalDate from) {
        LocalDate until = from.plusDays(1);
        while (until.isBefore(board.to()) && board.isFree(place, slot, until, until.plusDays(1))) {
            until = until.plusDays(1);
        }
        return until;
    }

    private List<LitPlace> litPlacesInOrder(Condition which) {
        return OnSiteStore.ofLitPlaces(sql.select(PLACE.ID, PLACE.NUMBER, SITE.ID, SITE.NAME, RACK.NAME, SHELF.FROM_TOP)
                        .from(PLACE))
                .where(which)
                .orderBy(SITE.WALK_ORDER, SITE.NAME, RACK.WALK_ORDER, RACK.NAME, SHELF.FROM_TOP, PLACE.NUMBER)
                .fetch(SpaceStore::litPlace);
    }

    private static LitPlace litPlace(Record found) {
        String where = SAY.litPlace(
                found.get(SITE.NAME), found.get(RACK.NAME), found.get(SHELF.FROM_TOP), found.get(PLACE.NUMBER));
        return new LitPlace(
                found.get(PLACE.ID), found.get(SITE.ID), found.get(RACK.NAME), where, new Slot(1, 4), LocalDate.MAX);
    }
}
