package warmshelf.exchange;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.io.IOException;
import org.jooq.impl.DSL;
import warmshelf.db.Database;
import warmshelf.table.TableWriter;

/** Sowings, what was seen of them and where they lay, as tables. */
final class SowingExportStore {
    private final Database database;

    SowingExportStore(Database database) {
        this.database = database;
    }

    void sowings(Taker taker, TableWriter table) throws IOException {
        StreamedRowsStore.each(
                database.sql(),
                sql -> sql.select(SOWING.asterisk(), LOT.VARIETY, MEMBER.NAME, MEMBER.CALLED)
                        .from(SOWING)
                        .join(LOT)
                        .on(LOT.ID.eq(SOWING.LOT_ID))
                        .join(MEMBER)
                        .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                        .where(TakenRowsStore.sowings(taker))
                        .orderBy(SOWING.SEASON, SOWING.ASKED_AT, SOWING.ID),
                row -> table.row(
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
                        row.get(SOWING.NOTE)));
    }

    /** All that was noted, also what was corrected later; readings of mats, which belong to no sowing, are everybody’s. */
    void entries(Taker taker, TableWriter table) throws IOException {
        StreamedRowsStore.each(
                database.sql(),
                sql -> sql.select(ENTRY.asterisk(), MEMBER.NAME, MEMBER.CALLED)
                        .from(ENTRY)
                        .leftJoin(SOWING)
                        .on(SOWING.ID.eq(ENTRY.SOWING_ID))
                        .join(MEMBER)
                        .on(MEMBER.ID.eq(ENTRY.MADE_BY))
                        .where(
                                taker.everything()
                                        ? DSL.noCondition()
                                        : TakenRowsStore.sowings(taker).or(ENTRY.SOWING_ID.isNull()))
                        .orderBy(ENTRY.SEEN_AT, ENTRY.KEPT_ORDER),
                row -> table.row(
                        row.get(ENTRY.ID),
                        row.get(ENTRY.SOWING_ID),
                        row.get(ENTRY.MAT_ID),
                        row.get(ENTRY.STEP),
                        row.get(ENTRY.SEEN_ON),
                        row.get(ENTRY.SPROUTED),
                        row.get(ENTRY.MOVED),
                        row.get(ENTRY.LOST),
                        row.get(ENTRY.FINISHED),
                        row.get(ENTRY.CELSIUS),
                        row.get(ENTRY.PROBLEM),
                        row.get(ENTRY.NOTE),
                        row.get(ENTRY.SUPERSEDES),
                        taker.name(row.get(ENTRY.MADE_BY), row.get(MEMBER.NAME), row.get(MEMBER.CALLED))));
    }

    void stays(Taker taker, TableWriter table) throws IOException {
        StreamedRowsStore.each(
                database.sql(),
                sql -> sql.select(STAY.asterisk(), SITE.NAME, RACK.NAME, SHELF.FROM_TOP, MAT.NAME, PLACE.NUMBER)
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
                        .where(TakenRowsStore.sowings(taker))
                        .orderBy(STAY.FROM_DAY, STAY.ID),
                row -> table.row(
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
                        row.get(STAY.TO_DAY)));
    }
}
