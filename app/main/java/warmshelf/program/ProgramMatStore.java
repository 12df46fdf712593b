package warmshelf.program;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Database;

/** The group's mats, so that a script finds the one whose thermometer it reads. */
final class ProgramMatStore {
    private final DSLContext sql;

    ProgramMatStore(Database database) {
        this.sql = database.sql();
    }

    /**
     * A mat.
     *
     * @param shelf counted from the top
     * @param setPointCelsius of the day asked about; null: none is set for it
     */
    record MatRow(
            UUID id,
            String name,
            String site,
            String rack,
            int shelf,
            @Nullable Double setPointCelsius) {}

    List<MatRow> mats(LocalDate day, ProgramRowsStore.Part part) {
        return sql.select(MAT.ID, MAT.NAME, SITE.NAME, RACK.NAME, SHELF.FROM_TOP, MAT_DAY.CELSIUS)
                .from(MAT)
                .join(SHELF)
                .on(SHELF.ID.eq(MAT.SHELF_ID))
                .join(RACK)
                .on(RACK.ID.eq(SHELF.RACK_ID))
                .join(SITE)
                .on(SITE.ID.eq(RACK.SITE_ID))
                .leftJoin(MAT_DAY)
                .on(MAT_DAY.MAT_ID.eq(MAT.ID), MAT_DAY.ON_DAY.eq(day))
                .where(part.of(MAT.ID))
                .orderBy(MAT.ID)
                .limit(part.limit())
                .fetch(row ->
                        new MatRow(row.value1(), row.value2(), row.value3(), row.value4(), row.value5(), row.value6()));
    }
}
