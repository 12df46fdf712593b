package warmshelf.exchange;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.THERMOMETER;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;

import java.io.IOException;
import org.jooq.impl.DSL;
import warmshelf.db.Database;
import warmshelf.table.TableWriter;

/** Members, and what their thermometers showed, as tables. */
final class PeopleExportStore {
    private final Database database;

    PeopleExportStore(Database database) {
        this.database = database;
    }

    /** A member takes out their own row only, so that postcodes go to nobody but coordinators. */
    void members(Taker taker, TableWriter table) throws IOException {
        StreamedRowsStore.each(
                database.sql(),
                sql -> sql.selectFrom(MEMBER)
                        .where(taker.everything() ? MEMBER.ROLE.ne("tablet") : MEMBER.ID.eq(taker.memberId()))
                        .orderBy(MEMBER.NAME_KEY, MEMBER.ID),
                row -> table.row(
                        row.get(MEMBER.NAME),
                        row.get(MEMBER.ROLE),
                        taker.day(row.get(MEMBER.JOINED_AT)),
                        taker.day(row.get(MEMBER.LEFT_AT)),
                        row.get(MEMBER.COUNTRY),
                        row.get(MEMBER.POSTCODE)));
    }

    void nights(Taker taker, TableWriter table) throws IOException {
        StreamedRowsStore.each(
                database.sql(),
                sql -> sql.select(THERMOMETER_NIGHT.asterisk(), THERMOMETER.NAME, MEMBER.NAME, MEMBER.CALLED)
                        .from(THERMOMETER_NIGHT)
                        .join(THERMOMETER)
                        .on(THERMOMETER.ID.eq(THERMOMETER_NIGHT.THERMOMETER_ID))
                        .join(MEMBER)
                        .on(MEMBER.ID.eq(THERMOMETER_NIGHT.NOTED_BY))
                        .where(
                                taker.everything()
                                        ? DSL.noCondition()
                                        : THERMOMETER.MEMBER_ID.isNull().or(THERMOMETER.MEMBER_ID.eq(taker.memberId())))
                        .orderBy(DSL.lower(THERMOMETER.NAME), THERMOMETER.ID, THERMOMETER_NIGHT.ON_DAY),
                row -> table.row(
                        row.get(THERMOMETER.NAME),
                        row.get(THERMOMETER_NIGHT.ON_DAY),
                        row.get(THERMOMETER_NIGHT.CELSIUS),
                        taker.name(row.get(THERMOMETER_NIGHT.NOTED_BY), row.get(MEMBER.NAME), row.get(MEMBER.CALLED))));
    }
}
