package warmshelf.leaving;

import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.leaving.LeavingSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.duty.Turn;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStore;
import warmshelf.words.DayWords;

/** Finds what a member would leave. */
final class LeftThingStore {
    private final SowingStore sowings;
    private final CropCatalogue crops;

    LeftThingStore(SowingStore sowings, CropCatalogue crops) {
        this.sowings = sowings;
        this.crops = crops;
    }

    /** Everything of a member's that has not ended by a day: trays, requests, days on duty and seed. */
    List<LeftThing> of(DSLContext from, UUID member, LocalDate today) {
        List<LeftThing> things = new ArrayList<>();
        for (Sowing sowing : sowings.underWay(from, member)) {
            LeftKind kind = sowing.stage().isBeforeSowing() ? LeftKind.REQUEST : LeftKind.TRAY;
            things.add(new LeftThing(
                    kind,
                    sowing.id().toString(),
                    sowing.title() + ", " + sowing.stage().title(),
                    "/sowings/" + sowing.id()));
        }
        things.addAll(turns(from, member, today));
        things.addAll(lots(from, member));
        return things;
    }

    private static List<LeftThing> turns(DSLContext from, UUID member, LocalDate today) {
        return from.select(DUTY.SITE_ID, DUTY.ON_DAY, SITE.NAME)
                .from(DUTY)
                .join(SITE)
                .on(SITE.ID.eq(DUTY.SITE_ID))
                .where(DUTY.MEMBER_ID.eq(member), DUTY.ON_DAY.ge(today))
                .orderBy(DUTY.ON_DAY, SITE.WALK_ORDER)
                .fetch(row -> new LeftThing(
                        LeftKind.TURN,
                        new Turn(row.value1(), row.value2()).words(),
                        DayWords.day(row.value2()) + ", " + row.value3(),
                        "/duty?from=" + row.value2()));
    }

    private List<LeftThing> lots(DSLContext from, UUID member) {
        return from.select(LOT.ID, LOT.CROP_ID, LOT.VARIETY, LOT.SEED_YEAR, LOT.SEEDS_LEFT)
                .from(LOT)
                .where(LOT.OWNER_ID.eq(member), LOT.SEEDS_LEFT.isNull().or(LOT.SEEDS_LEFT.gt(0)))
                .orderBy(LOT.CROP_ID, LOT.VARIETY, LOT.SEED_YEAR.desc(), LOT.ID)
                .fetch(row -> new LeftThing(
                        LeftKind.LOT,
                        row.value1().toString(),
                        lot(
                                crops.find(row.value2()).map(Crop::name).orElse(row.value2()),
                                row.value3(),
                                row.value4(),
                                row.value5()),
                        "/seeds/" + row.value1()));
    }

    private static String lot(String crop, String variety, int year, @Nullable Integer seeds) {
        return seeds == null
                ? SAY.lotNotCounted(crop, variety, String.valueOf(year))
                : SAY.lotCounted(crop, variety, String.valueOf(year), seeds.toString());
    }
}
