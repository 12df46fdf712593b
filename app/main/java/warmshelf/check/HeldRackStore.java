package warmshelf.check;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.RACK_HOLD;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.allocation.RackHoldStore;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;
import warmshelf.shelf.HeldMark;
import warmshelf.shelf.OnSiteStore;
import warmshelf.sowing.Problem;

/** Reads which racks are held, why, and whom that concerns. */
public final class HeldRackStore {
    private static final int DAYS_AHEAD = 7;

    private final DSLContext sql;
    private final CropCatalogue crops;

    public HeldRackStore(Database database, CropCatalogue crops) {
        this.sql = database.sql();
        this.crops = crops;
    }

    private record Held(String site, String rack, List<HeldRack.Note> notes) {}

    /** The racks that are held, in walking order; whom they concern as of a day. */
    public List<HeldRack> on(LocalDate day) {
        return read().entrySet().stream()
                .map(each -> new HeldRack(
                        each.getKey(),
                        each.getValue().site(),
                        each.getValue().rack(),
                        each.getValue().notes(),
                        concerned(each.getKey(), day)))
                .toList();
    }

    /** The same as the racks show them: each with the first note that holds it. */
    public List<HeldMark> marks() {
        return read().entrySet().stream()
                .map(each -> mark(each.getKey(), each.getValue().notes().get(0)))
                .toList();
    }

    private static HeldMark mark(UUID rack, HeldRack.Note first) {
        return new HeldMark(
                rack, first.seenOn(), first.problem().words(), first.sowing(), first.title(), first.byName());
    }

    private Map<UUID, Held> read() {
        Map<UUID, Held> held = new LinkedHashMap<>();
        sql.select(
                        RACK.ID,
                        RACK.NAME,
                        SITE.NAME,
                        ENTRY.ID,
                        ENTRY.SOWING_ID,
                        ENTRY.PROBLEM,
                        ENTRY.SEEN_ON,
                        ENTRY.NOTE,
                        MEMBER.CALLED,
                        SOWING.CROP_ID,
                        LOT.VARIETY)
                .from(RACK_HOLD)
                .join(ENTRY)
                .on(ENTRY.ID.eq(RACK_HOLD.ENTRY_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(ENTRY.MADE_BY))
                .join(SOWING)
                .on(SOWING.ID.eq(ENTRY.SOWING_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(RACK)
                .on(RACK.ID.eq(RACK_HOLD.RACK_ID))
                .join(SITE)
                .on(SITE.ID.eq(RACK.SITE_ID))
                .where(RackHoldStore.stands())
                .orderBy(SITE.WALK_ORDER, SITE.NAME, RACK.WALK_ORDER, RACK.NAME, ENTRY.SEEN_AT, ENTRY.KEPT_ORDER)
                .forEach(row -> held.computeIfAbsent(
                                row.get(RACK.ID),
                                id -> new Held(row.get(SITE.NAME), row.get(RACK.NAME), new ArrayList<>()))
                        .notes()
                        .add(note(row)));
        return held;
    }

    private HeldRack.Note note(Record row) {
        String crop = crops.find(row.get(SOWING.CROP_ID)).map(Crop::name).orElse(row.get(SOWING.CROP_ID));
        String variety = row.get(LOT.VARIETY);
        return new HeldRack.Note(
                row.get(ENTRY.ID),
                row.get(ENTRY.SOWING_ID),
                variety.isEmpty() ? crop : crop + " · " + variety,
                Problem.named(row.get(ENTRY.PROBLEM)),
                row.get(ENTRY.SEEN_ON),
                row.get(MEMBER.CALLED),
                row.get(ENTRY.NOTE));
    }

    private Set<UUID> concerned(UUID rack, LocalDate day) {
        return Set.copyOf(OnSiteStore.shelvesOfPlaces(sql.selectDistinct(SOWING.MEMBER_ID)
                        .from(STAY)
                        .join(SOWING)
                        .on(SOWING.ID.eq(STAY.SOWING_ID))
                        .join(PLACE)
                        .on(PLACE.ID.eq(STAY.PLACE_ID)))
                .where(
                        SHELF.RACK_ID.eq(rack),
                        STAY.FROM_DAY.lt(day.plusDays(DAYS_AHEAD)),
                        STAY.TO_DAY.gt(day),
                        STAY.FROM_DAY.lt(STAY.TO_DAY))
                .fetch(SOWING.MEMBER_ID));
    }
}
