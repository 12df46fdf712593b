package warmshelf.check;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
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

    /**
     * Keeps a reading once, however often it is sent.
     *
     * @param day the day on which it was read, in the group's time zone
     * @return whether it had been kept before
     */
    public Decision<Boolean> add(UUID id, UUID mat, LocalDate day, double celsius, UUID by) {
        return add(id, mat, day, celsius, null, by);
    }

    /** @param looker who read it, where a tablet keeps it for them; null: who enters it */
    Decision<Boolean> add(UUID id, UUID mat, LocalDate day, double celsius, @Nullable UUID looker, UUID by) {
        return add(sql, new Reading(id, mat, day, audit.now(), celsius, "", looker), by);
    }

    /** Whether an entry of that id was kept at that moment or later. */
    boolean isKeptSince(UUID id, Instant since) {
        return sql.fetchExists(ENTRY, ENTRY.ID.eq(id).and(ENTRY.MADE_AT.ge(since.atOffset(ZoneOffset.UTC))));
    }

    /** Keeps a reading within the caller's transaction, where there is one; tells whether it had been kept before. */
    Decision<Boolean> add(DSLContext within, Reading reading, UUID by) {
        return Decision.of(() -> within.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            UUID readBy = Objects.requireNonNullElse(reading.seenBy(), by);
            int added = tx.insertInto(ENTRY)
                    .set(ENTRY.ID, reading.id())
                    .set(ENTRY.MAT_ID, reading.mat())
                    .set(ENTRY.STEP, EntryStep.READING.word())
                    .set(ENTRY.SEEN_ON, reading.seenOn())
                    .set(ENTRY.SEEN_AT, reading.seenAt())
                    .set(ENTRY.CELSIUS, BigDecimal.valueOf(reading.celsius()).setScale(1, RoundingMode.HALF_UP))
                    .set(ENTRY.FINISHED, false)
                    .set(ENTRY.NOTE, reading.note())
                    .set(ENTRY.MADE_BY, readBy)
                    .set(ENTRY.TYPED_BY, by.equals(readBy) ? null : by)
                    .set(ENTRY.MADE_AT, audit.now())
                    .onConflict(ENTRY.ID)
                    .doNothing()
                    .execute();
            if (added == 1) {
                audit.write(tx, by, "read thermometer", "mat", reading.mat(), reading.celsius() + " C");
                return false;
            }
            if (!tx.fetchExists(ENTRY, ENTRY.ID.eq(reading.id()).and(ENTRY.MAT_ID.eq(reading.mat())))) {
                throw Declined.refused(new ReadingRefusal.IdInUse());
            }
            return true;
        }));
    }
}
