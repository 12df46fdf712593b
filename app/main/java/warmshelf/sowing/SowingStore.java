package warmshelf.sowing;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.OrderField;
import org.jooq.Record;
import org.jooq.Records;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.timeline.SeasonPart;

/** Keeps sowings. */
public final class SowingStore {
    private final DSLContext sql;
    private final CropCatalogue crops;
    private final Audit audit;

    public SowingStore(Database database, CropCatalogue crops, Audit audit) {
        this.sql = database.sql();
        this.crops = crops;
        this.audit = audit;
    }

    public Optional<Sowing> find(UUID id) {
        return find(sql, id);
    }

    /** The sowing of that id, read within a transaction. */
    public Optional<Sowing> find(DSLContext tx, UUID id) {
        return sowings(tx, SOWING.ID.eq(id)).stream().findFirst();
    }

    /** The sowing of that id, held until the transaction ends, so that two entries at once take turns. */
    public Optional<Sowing> findAndHold(DSLContext tx, UUID id) {
        tx.select(SOWING.ID).from(SOWING).where(SOWING.ID.eq(id)).forUpdate().fetch();
        return find(tx, id);
    }

    /** A member's sowings, the newest first. */
    public List<Sowing> ofMember(UUID member) {
        return sowings(sql, SOWING.MEMBER_ID.eq(member));
    }

    /** A member's sowings of a season and after it, and what of earlier ones is not over; the newest first. */
    List<Sowing> ofMember(UUID member, int season) {
        return sowings(
                sql,
                SOWING.MEMBER_ID.eq(member).and(SOWING.SEASON.ge(season).or(SOWING.STAGE.in(SowingStage.UNDER_WAY))));
    }

    /** The sowings of a season, the newest first. */
    public List<Sowing> inSeason(int season) {
        return inSeason(sql, season);
    }

    /** The same within the caller's transaction. */
    public List<Sowing> inSeason(DSLContext tx, int season) {
        return sowings(tx, ofSeason(season));
    }

    /** Every sowing that went out or was given up, the latest season first and in it the newest. */
    List<Sowing> ended() {
        return sowings(
                sql,
                SOWING.STAGE.in(SowingStage.PLANTED_OUT.word(), SowingStage.GIVEN_UP.word()),
                SOWING.SEASON.desc());
    }

    /** Every sowing of which something can still be seen or done. */
    public List<Sowing> underWay() {
        return sowings(sql, SOWING.STAGE.in(SowingStage.UNDER_WAY));
    }

    /** A member's sowings of which something can still be seen or done. */
    public List<Sowing> underWay(UUID member) {
        return underWay(sql, member);
    }

    /** The same, read within a transaction. */
    public List<Sowing> underWay(DSLContext tx, UUID member) {
        return sowings(tx, SOWING.MEMBER_ID.eq(member).and(SOWING.STAGE.in(SowingStage.UNDER_WAY)));
    }

    public List<Sowing> all(Collection<UUID> ids) {
        return sowings(sql, SOWING.ID.in(ids));
    }

    /** Adds a sowing within the caller's transaction. */
    public void add(DSLContext tx, Sowing sowing, UUID by) {
        tx.insertInto(SOWING)
                .set(SOWING.ID, sowing.id())
                .set(SOWING.MEMBER_ID, sowing.grower().memberId())
                .set(SOWING.SEASON, sowing.season())
                .set(SOWING.SEASON_PART, sowing.part().word())
                .set(SOWING.CROP_ID, sowing.crop().id())
                .set(SOWING.LOT_ID, sowing.lotId())
                .set(SOWING.PLANTS_WANTED, sowing.plantsWanted())
                .set(SOWING.METHOD, sowing.method().word())
                .set(SOWING.WARM, sowing.warm())
                .set(SOWING.CONTAINER, sowing.container().word())
                .set(SOWING.QUARTERS, sowing.container().quarters())
                .set(SOWING.SEEDS, sowing.seeds())
                .set(SOWING.SEEDS_PER_CELL, sowing.seedsPerCell())
                .set(SOWING.CELLS, sowing.cells())
                .set(SOWING.RISK, BigDecimal.valueOf(sowing.risk()))
                .set(SOWING.UNDER_COVER_ON, sowing.underCoverOn())
                .set(SOWING.STAGE, sowing.stage().word())
                .set(SOWING.ASKED_AT, audit.now())
                .set(SOWING.NOTE, sowing.note())
                .set(SOWING.VERSION, 1)
                .execute();
        audit.write(tx, by, "ask", "sowing", sowing.id(), sowing.title());
    }

    /** Moves a sowing to the stage that its entries say, within the caller's transaction. */
    public void moveTo(DSLContext tx, UUID sowing, SowingStage stage) {
        tx.update(SOWING)
                .set(SOWING.STAGE, stage.word())
                .set(SOWING.VERSION, SOWING.VERSION.plus(1))
                .where(SOWING.ID.eq(sowing))
                .execute();
    }

    /** Changes of what lot a sowing is sown, and how many seeds in how many cells, within the caller's transaction. */
    void changeSeed(DSLContext tx, Sowing sowing, UUID by) {
        tx.update(SOWING)
                .set(SOWING.LOT_ID, sowing.lotId())
                .set(SOWING.SEEDS, sowing.seeds())
                .set(SOWING.CELLS, sowing.cells())
                .set(SOWING.VERSION, SOWING.VERSION.plus(1))
                .where(SOWING.ID.eq(sowing.id()))
                .execute();
        String detail = "%d seeds of lot %s".formatted(sowing.seeds(), sowing.lotId());
        audit.write(tx, by, "change seed", "sowing", sowing.id(), detail);
    }

    /**
     * What was written off the lot when a sowing was sown.
     *
     * @param counts how often the lot had been counted by then
     */
    public record SeedsTaken(int seeds, int counts) {}

    /** What was written off the lot when this was sown; empty: nothing. */
    public Optional<SeedsTaken> seedsTaken(DSLContext tx, UUID sowing) {
        return tx.select(SOWING.SEEDS_TAKEN, SOWING.SEEDS_TAKEN_COUNTS)
                .from(SOWING)
                .where(SOWING.ID.eq(sowing), SOWING.SEEDS_TAKEN.isNotNull())
                .fetchOptional(Records.mapping(SeedsTaken::new));
    }

    /** Notes how many seeds were written off the lot for a sowing, within the caller's transaction; 0: none. */
    public void noteSeedsTaken(DSLContext tx, UUID sowing, int seeds) {
        tx.update(SOWING)
                .set(SOWING.SEEDS_TAKEN, seeds == 0 ? null : seeds)
                .set(SOWING.SEEDS_TAKEN_COUNTS, seeds == 0 ? DSL.castNull(Integer.class) : countsOfLot())
                .where(SOWING.ID.eq(sowing))
                .execute();
    }

    private static Field<Integer> countsOfLot() {
        return DSL.field(DSL.select(LOT.COUNTS).from(LOT).where(LOT.ID.eq(SOWING.LOT_ID)));
    }

    /** How many cells a whole tray of the kind asked for has; empty where nobody said. */
    Optional<Integer> cellsInTray(UUID sowing) {
        return sql.select(SOWING.CELLS_IN_TRAY)
                .from(SOWING)
                .where(SOWING.ID.eq(sowing), SOWING.CELLS_IN_TRAY.isNotNull())
                .fetchOptional(SOWING.CELLS_IN_TRAY);
    }

    /** Notes how many cells a whole tray of the kind asked for has. */
    void noteTray(DSLContext tx, UUID id, int cells) {
        tx.update(SOWING)
                .set(SOWING.CELLS_IN_TRAY, cells)
                .where(SOWING.ID.eq(id))
                .execute();
    }

    /** The day, in that zone, on which a sowing was asked for. */
    public LocalDate askedOn(UUID id, ZoneId zone) {
        return sql.select(SOWING.ASKED_AT)
                .from(SOWING)
                .where(SOWING.ID.eq(id))
                .fetchSingle(SOWING.ASKED_AT)
                .atZoneSameInstant(zone)
                .toLocalDate();
    }

    /** The sowings of a season, for whoever counts or sums them in the database. */
    public static Condition ofSeason(int season) {
        return SOWING.SEASON.eq(season);
    }

    private List<Sowing> sowings(DSLContext from, Condition which) {
        return sowings(from, which, DSL.noField());
    }

    private List<Sowing> sowings(DSLContext from, Condition which, OrderField<?> first) {
        List<? extends Record> found = from.select(
                        SOWING.asterisk(), LOT.VARIETY, LOT.TREATED, MEMBER.CALLED, MEMBER.COUNTRY, MEMBER.POSTCODE)
                .select(TRIAL_SOWING.TRIAL_ID)
                .from(SOWING)
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .leftJoin(TRIAL_SOWING)
                .on(TRIAL_SOWING.SOWING_ID.eq(SOWING.ID))
                .where(which)
                .orderBy(first, SOWING.ASKED_AT.desc(), SOWING.ID)
                .fetch();
        // Few sowings are of a trial: joining all of it to each sowing costs every reading a tenth.
        Set<UUID> trials = found.stream()
                .map(row -> row.get(TRIAL_SOWING.TRIAL_ID))
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        Map<UUID, TrialPart> parts = TrialPartStore.of(from, trials);
        return found.stream()
                .map(row -> sowing(row, parts.get(row.get(SOWING.ID))))
                .toList();
    }

    private Sowing sowing(Record found, @Nullable TrialPart trial) {
        return new Sowing(
                found.get(SOWING.ID),
                new Sowing.Grower(
                        found.get(SOWING.MEMBER_ID),
                        found.get(MEMBER.CALLED),
                        found.get(MEMBER.COUNTRY),
                        found.get(MEMBER.POSTCODE)),
                found.get(SOWING.SEASON),
                SeasonPart.named(found.get(SOWING.SEASON_PART)),
                crops.ofVariety(found.get(SOWING.CROP_ID), found.get(LOT.VARIETY)),
                found.get(SOWING.LOT_ID),
                found.get(LOT.VARIETY),
                found.get(LOT.TREATED),
                found.get(SOWING.PLANTS_WANTED),
                Method.named(found.get(SOWING.METHOD)),
                found.get(SOWING.WARM),
                Container.named(found.get(SOWING.CONTAINER)),
                found.get(SOWING.SEEDS),
                found.get(SOWING.SEEDS_PER_CELL),
                found.get(SOWING.CELLS),
                found.get(SOWING.RISK).doubleValue(),
                found.get(SOWING.UNDER_COVER_ON),
                SowingStage.named(found.get(SOWING.STAGE)),
                found.get(SOWING.NOTE),
                found.get(SOWING.VERSION),
                trial);
    }
}
