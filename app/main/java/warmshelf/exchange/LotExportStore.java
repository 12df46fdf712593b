package warmshelf.exchange;

import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;

import java.io.IOException;
import java.util.Objects;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.ResultQuery;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;
import warmshelf.seed.SeedSource;
import warmshelf.table.TableWriter;

/** The seed box as tables. */
final class LotExportStore {
    /** For example '2027-02-01 8/10 2026-02-03 9/10': the day, how many of how many came up. */
    private static final Field<String> TESTS = DSL.field(DSL.select(DSL.listAgg(
                                    DSL.concat(
                                            GERMINATION_TEST.TESTED_ON.cast(SQLDataType.VARCHAR),
                                            DSL.inline(" "),
                                            GERMINATION_TEST.GERMINATED.cast(SQLDataType.VARCHAR),
                                            DSL.inline("/"),
                                            GERMINATION_TEST.SEEDS.cast(SQLDataType.VARCHAR)),
                                    " ")
                            .withinGroupOrderBy(
                                    GERMINATION_TEST.TESTED_ON, GERMINATION_TEST.MADE_AT, GERMINATION_TEST.ID))
                    .from(GERMINATION_TEST)
                    .where(GERMINATION_TEST.LOT_ID.eq(LOT.ID)))
            .as("tests");

    private final Database database;
    private final CropCatalogue crops;

    LotExportStore(Database database, CropCatalogue crops) {
        this.database = database;
        this.crops = crops;
    }

    void lots(Taker taker, TableWriter table) throws IOException {
        StreamedRowsStore.each(
                database.sql(),
                sql -> lots(sql, taker),
                row -> table.row(
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
                        row.get(TESTS),
                        row.get(LOT.NOTE),
                        row.get(LOT.OFFERED),
                        row.get(LOT.KEPT_BACK),
                        row.get(LOT.WITHOUT_ASKING),
                        taker.day(row.get(LOT.MADE_AT))));
    }

    void passports(Taker taker, TableWriter table) throws IOException {
        StreamedRowsStore.each(
                database.sql(),
                sql -> lots(sql, taker),
                row -> table.row(passport(row, taker).cells()));
    }

    private SeedPassport passport(Record row, Taker taker) {
        warmshelf.crop.Crop crop = crops.orUnlisted(row.get(LOT.CROP_ID));
        return new SeedPassport(
                row.get(LOT.ID),
                crop.species(),
                crop.name(),
                row.get(LOT.VARIETY),
                Objects.requireNonNull(taker.day(row.get(LOT.MADE_AT))),
                SeedSource.named(row.get(LOT.SOURCE)),
                row.get(LOT.NOTE));
    }

    private static ResultQuery<? extends Record> lots(DSLContext sql, Taker taker) {
        return sql.select(LOT.asterisk(), MEMBER.NAME, MEMBER.CALLED, TESTS)
                .from(LOT)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(LOT.OWNER_ID))
                .where(TakenRowsStore.lots(taker))
                .orderBy(LOT.CROP_ID, DSL.lower(LOT.VARIETY), LOT.SEED_YEAR, LOT.ID);
    }
}
