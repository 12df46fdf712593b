package warmshelf.allocation;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectOnConditionStep;
import org.jooq.SelectSelectStep;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.web.DayWords;

/** Says in a sentence who or what stands in the way of a placement. */
public final class ClashStore {

    private final CropCatalogue crops;

    public ClashStore(CropCatalogue crops) {
        this.crops = crops;
    }

    /** Whoever lies on any of the quarters on any of the days. */
    Optional<String> taken(DSLContext tx, Spot spot) {
        var quarters = IntStream.range(0, spot.slot().quarters())
                .mapToObj(offset -> spot.slot().firstQuarter() + offset)
                .toList();
        return whoLies(tx.select(
                        MEMBER.NAME, SOWING.CROP_ID, LOT.VARIETY, STAY.FROM_DAY, STAY.TO_DAY, PLACE.NUMBER, MAT.NAME))
                .join(PLACE)
                .on(PLACE.ID.eq(QUARTER_DAY.PLACE_ID))
                .leftJoin(MAT)
                .on(MAT.ID.eq(PLACE.MAT_ID))
                .where(
                        QUARTER_DAY.PLACE_ID.eq(spot.placeId()),
                        QUARTER_DAY.QUARTER.in(quarters),
                        QUARTER_DAY.ON_DAY.ge(spot.from()),
                        QUARTER_DAY.ON_DAY.lt(spot.to()))
                .orderBy(QUARTER_DAY.ON_DAY)
                .limit(1)
                .fetchOptional(this::takenSentence);
    }

    private String takenSentence(Record taken) {
        String where = taken.get(MAT.NAME) == null ? "under the light" : "on mat " + taken.get(MAT.NAME);
        String crop = crops.find(taken.get(SOWING.CROP_ID)).map(Crop::name).orElse(taken.get(SOWING.CROP_ID));
        return "Place %d %s is taken by %s's %s (%s) from %s until %s."
                .formatted(
                        taken.get(PLACE.NUMBER),
                        where,
                        taken.get(MEMBER.NAME),
                        taken.get(LOT.VARIETY),
                        crop,
                        DayWords.date(taken.get(STAY.FROM_DAY)),
                        DayWords.date(taken.get(STAY.TO_DAY).minusDays(1)));
    }

    /** A thermostat that cannot hold the set-point, a set-point outside the band, or a mat that stands at another one. */
    Optional<String> tooWarmOrCold(DSLContext tx, Spot spot, Warmth warmth) {
        if (!warmth.band().contains(warmth.celsius())) {
            return Optional.of("%s is outside what this crop's seed likes: %s."
                    .formatted(Band.words(warmth.celsius()), warmth.band().words()));
        }
        Optional<String> thermostat = beyondThermostat(tx, warmth.matId(), warmth.celsius());
        if (thermostat.isPresent()) {
            return thermostat;
        }
        return outOfService(tx, spot, warmth.matId()).or(() -> otherSetPoint(tx, spot, warmth));
    }

    /** Days on which the mat cannot be used. */
    Optional<String> outOfService(DSLContext tx, Spot spot, UUID mat) {
        return tx.select(MAT.NAME, MAT_OUT.FROM_DAY, MAT_OUT.TO_DAY, MAT_OUT.REASON)
                .from(MAT_OUT)
                .join(MAT)
                .on(MAT.ID.eq(MAT_OUT.MAT_ID))
                .where(
                        MAT_OUT.MAT_ID.eq(mat),
                        MAT_OUT.FROM_DAY.lt(spot.to()),
                        MAT_OUT.TO_DAY.gt(spot.from()),
                        MAT_OUT.FROM_DAY.lt(MAT_OUT.TO_DAY))
                .orderBy(MAT_OUT.FROM_DAY)
                .limit(1)
                .fetchOptional(out -> "Mat %s is out of service from %s to %s: %s."
                        .formatted(
                                out.value1(),
                                DayWords.date(out.value2()),
                                DayWords.date(out.value3().minusDays(1)),
                                out.value4()));
    }

    private static Optional<String> otherSetPoint(DSLContext tx, Spot spot, Warmth warmth) {
        return tx.select(MAT.NAME, MAT_DAY.ON_DAY, MAT_DAY.CELSIUS)
                .from(MAT_DAY)
                .join(MAT)
                .on(MAT.ID.eq(MAT_DAY.MAT_ID))
                .join(QUARTER_DAY)
                .on(QUARTER_DAY.MAT_ID.eq(MAT_DAY.MAT_ID), QUARTER_DAY.ON_DAY.eq(MAT_DAY.ON_DAY))
                .where(
                        MAT_DAY.MAT_ID.eq(warmth.matId()),
                        MAT_DAY.CELSIUS.ne(warmth.celsius()),
                        MAT_DAY.ON_DAY.ge(spot.from()),
                        MAT_DAY.ON_DAY.lt(spot.to()))
                .orderBy(MAT_DAY.ON_DAY)
                .limit(1)
                .fetchOptional(
                        other -> "Mat %s stands at %s on %s for what already lies there; this crop's seed likes %s."
                                .formatted(
                                        other.value1(),
                                        Band.words(other.value3()),
                                        DayWords.date(other.value2()),
                                        warmth.band().words()));
    }

    /** Why a mat cannot be turned to a temperature on days. */
    Optional<String> cannotBear(DSLContext tx, UUID mat, LocalDate first, LocalDate afterLast, int celsius) {
        Optional<String> thermostat = beyondThermostat(tx, mat, celsius);
        if (thermostat.isPresent()) {
            return thermostat;
        }
        return whoLies(tx.select(MEMBER.NAME, LOT.VARIETY, QUARTER_DAY.ON_DAY, QUARTER_DAY.LOW_C, QUARTER_DAY.HIGH_C))
                .where(
                        QUARTER_DAY.MAT_ID.eq(mat),
                        QUARTER_DAY.ON_DAY.ge(first),
                        QUARTER_DAY.ON_DAY.lt(afterLast),
                        QUARTER_DAY.LOW_C.gt(celsius).or(QUARTER_DAY.HIGH_C.lt(celsius)))
                .orderBy(QUARTER_DAY.ON_DAY)
                .limit(1)
                .fetchOptional(bears -> "%s does not suit %s's %s, which lies there on %s and likes %s."
                        .formatted(
                                Band.words(celsius),
                                bears.value1(),
                                bears.value2(),
                                DayWords.date(bears.value3()),
                                new Band(bears.value4(), bears.value5()).words()));
    }

    private static Optional<String> beyondThermostat(DSLContext tx, UUID mat, int celsius) {
        return tx.select(MAT.NAME, MAT.THERMOSTAT_LOW_C, MAT.THERMOSTAT_HIGH_C)
                .from(MAT)
                .where(MAT.ID.eq(mat), MAT.THERMOSTAT_LOW_C.gt(celsius).or(MAT.THERMOSTAT_HIGH_C.lt(celsius)))
                .fetchOptional(range -> "Mat %s can hold %s, not %s."
                        .formatted(
                                range.value1(), new Band(range.value2(), range.value3()).words(), Band.words(celsius)));
    }

    /** Joins what lies on quarters to its stay, sowing, grower and lot. */
    static <R extends Record> SelectOnConditionStep<R> whoLies(SelectSelectStep<R> what) {
        return what.from(QUARTER_DAY)
                .join(STAY)
                .on(STAY.ID.eq(QUARTER_DAY.STAY_ID))
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID));
    }
}
