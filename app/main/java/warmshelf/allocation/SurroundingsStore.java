package warmshelf.allocation;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.TableField;
import org.jooq.impl.DSL;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.shelf.OutageStore;
import warmshelf.shelf.RetirementStore;
import warmshelf.shelf.Thermostat;

/**
 * Reads what stands on a board: who lies where, how the mats are set, and which cannot be used. Pages and savings read the same.
 */
public final class SurroundingsStore {
    /** All lit places together count as one mat of this id, which no mat has. */
    private static final UUID LIGHT = new UUID(0, 0);

    private final CropCatalogue crops;

    public SurroundingsStore(CropCatalogue crops) {
        this.crops = crops;
    }

    /**
     * What others do on some places and their mats, from one day up to but not on another.
     *
     * @param except stays that do not count, because they are about to be moved
     */
    public Surroundings around(
            DSLContext sql, Set<UUID> except, Collection<CandidatePlace> places, LocalDate from, LocalDate to) {
        Map<UUID, MatSpace> mats = new LinkedHashMap<>();
        List<UUID> lit = new ArrayList<>();
        for (CandidatePlace place : places) {
            if (place.mat() == null) {
                lit.add(place.id());
            } else {
                mats.put(place.mat().id(), place.mat());
            }
        }
        List<MatSpace> grounds = new ArrayList<>(mats.values());
        grounds.add(new MatSpace(LIGHT, "light", "", new Thermostat(0, 0), 0, lit));
        SpaceCalendar board = new SpaceCalendar(from, to, grounds);
        fill(sql, board, except);
        return new Surroundings(
                board, neighbours(sql, except, places, from, to), RackHoldStore.read(sql), RetirementStore.read(sql));
    }

    /** Puts everything on a board that reaches into its days. */
    static void fill(DSLContext sql, SpaceCalendar board) {
        fill(sql, board, Set.of());
    }

    private static void fill(DSLContext sql, SpaceCalendar board, Set<UUID> except) {
        List<UUID> places =
                board.mats().stream().flatMap(mat -> mat.places().stream()).toList();
        sql.select(STAY.PLACE_ID, STAY.FIRST_QUARTER, STAY.QUARTERS, STAY.FROM_DAY, STAY.TO_DAY)
                .from(STAY)
                .where(
                        among(STAY.PLACE_ID, places),
                        STAY.ID.notIn(except),
                        STAY.FROM_DAY.lt(board.to()),
                        STAY.TO_DAY.gt(board.from()),
                        STAY.FROM_DAY.lt(STAY.TO_DAY))
                .forEach(stay -> board.take(
                        stay.value1(), new Slot(stay.value2(), stay.value3()), stay.value4(), stay.value5()));
        List<UUID> mats = board.mats().stream().map(MatSpace::id).toList();
        OutageStore.unusable(sql, board.from(), board.to()).forEach(board::takeOut);
        setPoints(sql, board, mats, except);
    }

    private static void setPoints(DSLContext sql, SpaceCalendar board, List<UUID> mats, Set<UUID> except) {
        sql.select(MAT_DAY.MAT_ID, MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .where(
                        among(MAT_DAY.MAT_ID, mats),
                        MAT_DAY.BY_HAND.isTrue(),
                        MAT_DAY.ON_DAY.ge(board.from()),
                        MAT_DAY.ON_DAY.lt(board.to()))
                .forEach(set ->
                        board.makeReady(set.value1(), set.value2(), set.value2().plusDays(1), set.value3()));
        // A set-point binds only while something else lies on the mat: an empty mat may be turned to another
        // temperature.
        sql.selectDistinct(MAT_DAY.MAT_ID, MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .join(QUARTER_DAY)
                .on(QUARTER_DAY.MAT_ID.eq(MAT_DAY.MAT_ID), QUARTER_DAY.ON_DAY.eq(MAT_DAY.ON_DAY))
                .where(
                        among(MAT_DAY.MAT_ID, mats),
                        QUARTER_DAY.STAY_ID.notIn(except),
                        MAT_DAY.ON_DAY.ge(board.from()),
                        MAT_DAY.ON_DAY.lt(board.to()))
                .forEach(fixed -> board.setPoint(
                        fixed.value1(), fixed.value2(), fixed.value2().plusDays(1), fixed.value3()));
    }

    /** The few of one mat are named; of many everything is read, which is quicker than to compare each. */
    private static Condition among(TableField<?, UUID> field, List<UUID> ids) {
        return ids.size() <= 8 ? field.in(ids) : DSL.noCondition();
    }

    private List<Neighbour> neighbours(
            DSLContext sql, Set<UUID> except, Collection<CandidatePlace> places, LocalDate from, LocalDate to) {
        Set<UUID> wanted = places.stream().map(CandidatePlace::id).collect(Collectors.toSet());
        return sql
                .select(
                        STAY.PLACE_ID,
                        STAY.FIRST_QUARTER,
                        STAY.QUARTERS,
                        STAY.FROM_DAY,
                        STAY.TO_DAY,
                        SOWING.CROP_ID,
                        LOT.VARIETY,
                        MEMBER.CALLED)
                .from(STAY)
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .where(
                        among(STAY.PLACE_ID, List.copyOf(wanted)),
                        STAY.ID.notIn(except),
                        STAY.FROM_DAY.lt(to),
                        STAY.TO_DAY.gt(from),
                        STAY.FROM_DAY.lt(STAY.TO_DAY))
                .orderBy(STAY.FROM_DAY, STAY.FIRST_QUARTER, STAY.ID)
                .fetch()
                .stream()
                .filter(found -> wanted.contains(found.get(STAY.PLACE_ID)))
                .map(this::neighbour)
                .toList();
    }

    private Neighbour neighbour(Record found) {
        String crop = crops.find(found.get(SOWING.CROP_ID)).map(Crop::name).orElse(found.get(SOWING.CROP_ID));
        String variety = found.get(LOT.VARIETY);
        String words = variety.isEmpty()
                ? "%s's %s".formatted(found.get(MEMBER.CALLED), crop)
                : "%s's %s (%s)".formatted(found.get(MEMBER.CALLED), variety, crop);
        return new Neighbour(
                found.get(STAY.PLACE_ID),
                new Slot(found.get(STAY.FIRST_QUARTER), found.get(STAY.QUARTERS)),
                found.get(STAY.FROM_DAY),
                found.get(STAY.TO_DAY),
                words);
    }
}
