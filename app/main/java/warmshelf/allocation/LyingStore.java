package warmshelf.allocation;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;

/** Reads a stay that may be moved, where it could go, and what lies there. */
public final class LyingStore {
    private static final List<String> UNSOWN = List.of("planned", "soaked");

    private final DSLContext sql;
    private final CropCatalogue crops;
    private final SpaceStore space;

    public LyingStore(Database database, CropCatalogue crops, SpaceStore space) {
        this.sql = database.sql();
        this.crops = crops;
        this.space = space;
    }

    /** What lies around some places over some days, and the places themselves. */
    public record Surroundings(Board board, List<Neighbour> neighbours) {}

    /** The stay of that id; one that was cancelled, and so lasts no day, is gone. */
    public Optional<LyingStay> find(UUID id) {
        return StayBookStore.find(sql, id).map(this::lying);
    }

    /** The place under a light that is booked for the day on which a stay on a mat ends. */
    public Optional<Stay> bookedAfter(LyingStay lying) {
        return StayBookStore.ofSowing(sql, lying.stay().sowingId()).stream()
                .filter(stay -> lying.stay().isOnMat() && !stay.isOnMat())
                .filter(stay -> stay.from().equals(lying.stay().to()))
                .findFirst();
    }

    private LyingStay lying(Stay stay) {
        Record about = sql.select(SOWING.CROP_ID, SOWING.STAGE, LOT.VARIETY, MEMBER.NAME, PLACE.MAT_ID)
                .from(STAY)
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .where(STAY.ID.eq(stay.id()))
                .fetchSingle();
        Optional<Warmth> warmth = stay.isOnMat() ? Optional.of(StayStore.warmthOf(sql, stay)) : Optional.empty();
        return new LyingStay(
                stay,
                what(about),
                about.get(MEMBER.NAME),
                isSown(about.get(SOWING.STAGE)),
                about.get(PLACE.MAT_ID),
                warmth.map(Warmth::celsius).orElse(null),
                warmth.map(Warmth::band).orElse(null));
    }

    /** Whether seed of a sowing at that stage is in compost or paper. */
    static boolean isSown(String stage) {
        return !UNSOWN.contains(stage);
    }

    private String what(Record about) {
        String variety = about.get(LOT.VARIETY);
        return variety.isEmpty() ? cropName(about) : cropName(about) + " · " + variety;
    }

    private String cropName(Record about) {
        String id = about.get(SOWING.CROP_ID);
        return crops.find(id).map(Crop::name).orElse(id);
    }

    /** Every place, in walking order, those on mats first. */
    public List<MovePlace> places() {
        List<MovePlace> places = new ArrayList<>();
        for (MatSpace mat : space.mats()) {
            for (int number = 1; number <= mat.places().size(); number++) {
                places.add(new MovePlace(mat.places().get(number - 1), number, mat.where(), mat));
            }
        }
        sql.select(PLACE.ID, PLACE.NUMBER, SITE.NAME, RACK.NAME, SHELF.FROM_TOP)
                .from(PLACE)
                .join(SHELF)
                .on(SHELF.ID.eq(PLACE.LIT_SHELF_ID))
                .join(RACK)
                .on(RACK.ID.eq(SHELF.RACK_ID))
                .join(SITE)
                .on(SITE.ID.eq(RACK.SITE_ID))
                .orderBy(SITE.WALK_ORDER, SITE.NAME, RACK.WALK_ORDER, RACK.NAME, SHELF.FROM_TOP, PLACE.NUMBER)
                .forEach(lit -> places.add(new MovePlace(
                        lit.value1(),
                        lit.value2(),
                        "%s · %s · shelf %d".formatted(lit.value3(), lit.value4(), lit.value5()),
                        null)));
        return places;
    }

    /**
     * What others do on some places and their mats, from one day up to but not on another; the stay to be moved does not
     * count.
     */
    public Surroundings around(UUID stay, List<MovePlace> places, LocalDate from, LocalDate to) {
        Map<UUID, MatSpace> mats = new HashMap<>();
        List<UUID> lit = new ArrayList<>();
        for (MovePlace place : places) {
            if (place.mat() == null) {
                lit.add(place.id());
            } else {
                mats.put(place.mat().id(), place.mat());
            }
        }
        List<MatSpace> grounds = new ArrayList<>(mats.values());
        grounds.add(new MatSpace(new UUID(0, 0), "light", "", new Band(0, 0), 0, lit));
        Board board = new Board(from, to, grounds);
        List<Neighbour> neighbours = neighbours(stay, places, from, to);
        neighbours.forEach(each -> board.take(each.placeId(), each.slot(), each.from(), each.to()));
        fixSetPoints(board, stay, mats, from, to);
        return new Surroundings(board, neighbours);
    }

    private List<Neighbour> neighbours(UUID stay, List<MovePlace> places, LocalDate from, LocalDate to) {
        Map<UUID, MovePlace> wanted =
                places.stream().collect(Collectors.toMap(MovePlace::id, Function.identity(), (one, same) -> one));
        Condition where =
                wanted.size() == 1 ? STAY.PLACE_ID.eq(wanted.keySet().iterator().next()) : DSL.noCondition();
        return sql
                .select(
                        STAY.PLACE_ID,
                        STAY.FIRST_QUARTER,
                        STAY.QUARTERS,
                        STAY.FROM_DAY,
                        STAY.TO_DAY,
                        SOWING.CROP_ID,
                        LOT.VARIETY,
                        MEMBER.NAME)
                .from(STAY)
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .where(
                        where,
                        STAY.ID.ne(stay),
                        STAY.FROM_DAY.lt(to),
                        STAY.TO_DAY.gt(from),
                        STAY.FROM_DAY.lt(STAY.TO_DAY))
                .orderBy(STAY.FROM_DAY, STAY.FIRST_QUARTER, STAY.ID)
                .fetch()
                .stream()
                .filter(found -> wanted.containsKey(found.get(STAY.PLACE_ID)))
                .map(this::neighbour)
                .toList();
    }

    private Neighbour neighbour(Record found) {
        String variety = found.get(LOT.VARIETY);
        String words = variety.isEmpty()
                ? "%s's %s".formatted(found.get(MEMBER.NAME), cropName(found))
                : "%s's %s (%s)".formatted(found.get(MEMBER.NAME), variety, cropName(found));
        return new Neighbour(
                found.get(STAY.PLACE_ID),
                new Slot(found.get(STAY.FIRST_QUARTER), found.get(STAY.QUARTERS)),
                found.get(STAY.FROM_DAY),
                found.get(STAY.TO_DAY),
                words);
    }

    /** A set-point binds only while something else lies on the mat. */
    private void fixSetPoints(Board board, UUID stay, Map<UUID, MatSpace> mats, LocalDate from, LocalDate to) {
        Condition where = mats.size() == 1
                ? QUARTER_DAY.MAT_ID.eq(mats.keySet().iterator().next())
                : QUARTER_DAY.MAT_ID.isNotNull();
        sql.selectDistinct(MAT_DAY.MAT_ID, MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .join(QUARTER_DAY)
                .on(QUARTER_DAY.MAT_ID.eq(MAT_DAY.MAT_ID), QUARTER_DAY.ON_DAY.eq(MAT_DAY.ON_DAY))
                .where(where, QUARTER_DAY.STAY_ID.ne(stay), MAT_DAY.ON_DAY.ge(from), MAT_DAY.ON_DAY.lt(to))
                .forEach(fixed -> board.setPoint(
                        fixed.value1(), fixed.value2(), fixed.value2().plusDays(1), fixed.value3()));
    }
}
