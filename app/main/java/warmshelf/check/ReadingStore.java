package warmshelf.check;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.sowing.EntryStep;

/** Keeps what mats' thermometers showed. */
public final class ReadingStore {
    private final DSLContext sql;
    private final Audit audit;

    public ReadingStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    Optional<String> matName(UUID mat) {
        return sql.select(MAT.NAME).from(MAT).where(MAT.ID.eq(mat)).fetchOptional(MAT.NAME);
    }

    /** Keeps a reading once, however often it is sent. */
    public void add(UUID id, UUID mat, LocalDate day, double celsius, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            int added = tx.insertInto(ENTRY)
                    .set(ENTRY.ID, id)
                    .set(ENTRY.MAT_ID, mat)
                    .set(ENTRY.STEP, EntryStep.READING.word())
                    .set(ENTRY.SEEN_ON, day)
                    .set(ENTRY.SEEN_AT, audit.now())
                    .set(ENTRY.CELSIUS, BigDecimal.valueOf(celsius).setScale(1, RoundingMode.HALF_UP))
                    .set(ENTRY.FINISHED, false)
                    .set(ENTRY.NOTE, "")
                    .set(ENTRY.MADE_BY, by)
                    .set(ENTRY.MADE_AT, audit.now())
                    .onConflict(ENTRY.ID)
                    .doNothing()
                    .execute();
            if (added == 1) {
                audit.write(tx, by, "read thermometer", "mat", mat, celsius + " C");
            }
        });
    }
}
