package warmshelf.sowing;

import static warmshelf.db.generated.Tables.SOWING;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;

/** Keeps in which compost each sowing was sown. The group's composts are those that were noted once. */
public final class CompostStore {
    /** The longest name of a compost. */
    public static final int LONGEST = 60;

    private final DSLContext sql;
    private final Audit audit;

    public CompostStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    /** Every compost that was noted at a sowing, by name. */
    public List<String> known() {
        return sql.selectDistinct(SOWING.COMPOST)
                .from(SOWING)
                .where(SOWING.COMPOST.isNotNull())
                .orderBy(SOWING.COMPOST)
                .fetch(SOWING.COMPOST);
    }

    /** The compost of a sowing; empty where nobody noted it. */
    public Optional<String> of(UUID sowing) {
        return sql.select(SOWING.COMPOST)
                .from(SOWING)
                .where(SOWING.ID.eq(sowing), SOWING.COMPOST.isNotNull())
                .fetchOptional(SOWING.COMPOST);
    }

    /** Notes the compost of a sowing within the caller's transaction; written as it was before, where only capitals differ. */
    public void note(DSLContext tx, UUID sowing, String compost, UUID by) {
        String name = tx.select(DSL.min(SOWING.COMPOST))
                .from(SOWING)
                .where(DSL.lower(SOWING.COMPOST).eq(compost.toLowerCase(Locale.ROOT)))
                .fetchSingle()
                .value1();
        String written = name == null ? compost : name;
        int changed = tx.update(SOWING)
                .set(SOWING.COMPOST, written)
                .where(SOWING.ID.eq(sowing), SOWING.COMPOST.isDistinctFrom(written))
                .execute();
        if (changed > 0) {
            audit.write(tx, by, "note compost", "sowing", sowing, written);
        }
    }
}
