package warmshelf.program;

import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;
import warmshelf.exchange.TakenRowsStore;
import warmshelf.exchange.Taker;

/** Sowings, stays and lots as scripts read them: whoever may take them out as a table, a page at a time in the order of their ids. */
final class ProgramRowsStore {
    private final DSLContext sql;

    ProgramRowsStore(Database database) {
        this.sql = database.sql();
    }

    /**
     * A page of rows.
     *
     * @param after the id of the last row of the page before; null for the first page
     * @param limit the most rows
     */
    record Part(@Nullable UUID after, int limit) {
        Condition of(Field<UUID> id) {
            return after == null ? DSL.noCondition() : id.gt(after);
        }
    }

    /** A sowing. Null: not known, or nobody has said. */
    record SowingRow(
            UUID id,
            int season,
            String seasonPart,
            @Nullable String grower,
            String crop,
            String variety,
            UUID lot,
            String method,
            boolean warm,
            String container,
            int quarters,
            int plantsWanted,
            int seeds,
            int seedsPerCell,
            int cells,
            @Nullable Integer cellsInTray,
            String stage,
            @Nullable LocalDate underCoverOn,
            @Nullable LocalDate askedOn,
            @Nullable String compost,
            String note) {}

    /** @param season null: of all seasons */
    List<SowingRow> sowings(Taker taker, @Nullable Integer season, Part part) {
        return sql.select(SOWING.asterisk(), LOT.VARIETY, MEMBER.NAME, MEMBER.CALLED)
                .from(SOWING)
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .where(
                        TakenRowsStore.sowings(taker),
                        season == null ? DSL.noCondition() : SOWING.SEASON.eq(season),
                        part.of(SOWING.ID))
                .orderBy(SOWING.ID)
                .limit(part.limit())
                .fetch(row -> sowing(row, taker));
    }

    private static SowingRow sowing(Record row, Taker taker) {
        return new SowingRow(
                row.get(SOWING.ID),
                row.get(SOWING.SEASON),
                row.get(SOWING.SEASON_PART),
                taker.name(row.get(SOWING.MEMBER_ID), row.get(MEMBER.NAME), row.get(MEMBER.CALLED)),
                row.get(SOWING.CROP_ID),
                row.get(LOT.VARIETY),
                row.get(SOWING.LOT_ID),
                row.get(SOWING.METHOD),
                row.get(SOWING.WARM),
                row.get(SOWING.CONTAINER),
                row.get(SOWING.QUARTERS),
                row.get(SOWING.PLANTS_WANTED),
                row.get(SOWING.SEEDS),
                row.get(SOWING.SEEDS_PER_CELL),
                row.get(SOWING.CELLS),
                row.get(SOWING.CELLS_IN_TRAY),
                row.get(SOWING.STAGE),
                row.get(SOWING.UNDER_COVER_ON),
                taker.day(row.get(SOWING.ASKED_AT)),
                row.get(SOWING.COMPOST),
                row.get(SOWING.NOTE));
    }

    /**
     * Where a sowing lies on which days.
     *
     * @param mat null: it lies under a light
     * @param lastDay the last day on which it lies there
     */
    record StayRow(
            UUID id,
            UUID sowing,
            String site,
            String rack,
            int shelf,
            @Nullable String mat,
            int place,
            int firstQuarter,
            int quarters,
            LocalDate firstDay,
            LocalDate lastDay) {}

    /**
     * @param from only what lies there on that day or later; null: from the beginning
     * @param to only what lies there on that day or before; null: to the end
     */
    List<StayRow> stays(Taker taker, @Nullable LocalDate from, @Nullable LocalDate to, Part part) {
        return sql.select(STAY.asterisk(), SITE.NAME, RACK.NAME, SHELF.FROM_TOP, MAT.NAME, PLACE.NUMBER)
                .from(STAY)
                .join(SOWING)
                .on(SOWING.ID.eq(STAY.SOWING_ID))
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .leftJoin(MAT)
                .on(MAT.ID.eq(PLACE.MAT_ID))
                .join(SHELF)
                .on(SHELF.ID.eq(DSL.coalesce(PLACE.LIT_SHELF_ID, MAT.SHELF_ID)))
                .join(RACK)
                .on(RACK.ID.eq(SHELF.RACK_ID))
                .join(SITE)
                .on(SITE.ID.eq(RACK.SITE_ID))
                .where(
                        TakenRowsStore.sowings(taker),
                        from == null ? DSL.noCondition() : STAY.TO_DAY.gt(from),
                        to == null ? DSL.noCondition() : STAY.FROM_DAY.le(to),
                        part.of(STAY.ID))
                .orderBy(STAY.ID)
                .limit(part.limit())
                .fetch(row -> new StayRow(
                        row.get(STAY.ID),
                        row.get(STAY.SOWING_ID),
                        row.get(SITE.NAME),
                        row.get(RACK.NAME),
                        row.get(SHELF.FROM_TOP),
                        row.get(MAT.NAME),
                        row.get(PLACE.NUMBER),
                        row.get(STAY.FIRST_QUARTER),
                        row.get(STAY.QUARTERS),
                        row.get(STAY.FROM_DAY),
                        row.get(STAY.TO_DAY).minusDays(1)));
    }

    /** A germination test: so many of so many came up. */
    record TestRow(LocalDate testedOn, int germinated, int seeds) {}

    /**
     * A packet or jar of seed. Null: not known.
     *
     * @param owner null: it is the group's
     */
    record LotRow(
            UUID id,
            String crop,
            String variety,
            int seedYear,
            @Nullable Integer seedsLeft,
            @Nullable String owner,
            boolean treated,
            String source,
            String storage,
            @Nullable BigDecimal storageCelsius,
            @Nullable BigDecimal storageMoisturePercent,
            List<TestRow> tests,
            int offered,
            int keptBack,
            boolean withoutAsking,
            @Nullable LocalDate addedOn,
            String note) {}

    List<LotRow> lots(Taker taker, Part part) {
        List<? extends Record> rows = sql.select(LOT.asterisk(), MEMBER.NAME, MEMBER.CALLED)
                .from(LOT)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(LOT.OWNER_ID))
                .where(TakenRowsStore.lots(taker), part.of(LOT.ID))
                .orderBy(LOT.ID)
                .limit(part.limit())
                .fetch();
        Map<UUID, List<TestRow>> tests =
                tests(rows.stream().map(row -> row.get(LOT.ID)).toList());
        return rows.stream()
                .map(row -> lot(row, tests.getOrDefault(row.get(LOT.ID), List.of()), taker))
                .toList();
    }

    private Map<UUID, List<TestRow>> tests(List<UUID> lots) {
        return sql.select(
                        GERMINATION_TEST.LOT_ID,
                        GERMINATION_TEST.TESTED_ON,
                        GERMINATION_TEST.GERMINATED,
                        GERMINATION_TEST.SEEDS)
                .from(Database.listed(GERMINATION_TEST, GERMINATION_TEST.LOT_ID, lots))
                .orderBy(GERMINATION_TEST.TESTED_ON, GERMINATION_TEST.MADE_AT, GERMINATION_TEST.ID)
                .fetchGroups(GERMINATION_TEST.LOT_ID, row -> new TestRow(row.value2(), row.value3(), row.value4()));
    }

    private static LotRow lot(Record row, List<TestRow> tests, Taker taker) {
        return new LotRow(
                row.get(LOT.ID),
                row.get(LOT.CROP_ID),
                row.get(LOT.VARIETY),
                row.get(LOT.SEED_YEAR),
                row.get(LOT.SEEDS_LEFT),
                taker.name(row.get(LOT.OWNER_ID), row.get(MEMBER.NAME), row.get(MEMBER.CALLED)),
                row.get(LOT.TREATED),
                row.get(LOT.SOURCE),
                row.get(LOT.STORAGE),
                row.get(LOT.STORAGE_C),
                row.get(LOT.STORAGE_MOISTURE),
                tests,
                row.get(LOT.OFFERED),
                row.get(LOT.KEPT_BACK),
                row.get(LOT.WITHOUT_ASKING),
                taker.day(row.get(LOT.MADE_AT)),
                row.get(LOT.NOTE));
    }
}
