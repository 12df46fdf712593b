package warmshelf.frost.evidence;

import static warmshelf.db.generated.Tables.FROST_EVIDENCE_VERSION;

import org.jooq.DSLContext;

/** The version of the group's evidence, by which everyone knows whether what they have reckoned still holds. */
public final class VersionStore {
    private static final int ONLY = 1;

    private VersionStore() {}

    /** Says, within the caller's transaction, that something of what frost dates rest on has changed. */
    public static void grow(DSLContext sql) {
        sql.insertInto(FROST_EVIDENCE_VERSION)
                .set(FROST_EVIDENCE_VERSION.ID, ONLY)
                .set(FROST_EVIDENCE_VERSION.VERSION, 1L)
                .onConflict(FROST_EVIDENCE_VERSION.ID)
                .doUpdate()
                .set(FROST_EVIDENCE_VERSION.VERSION, FROST_EVIDENCE_VERSION.VERSION.plus(1))
                .execute();
    }

    /** The version now; 0 where nothing has ever been brought in. */
    public static long now(DSLContext sql) {
        return sql.select(FROST_EVIDENCE_VERSION.VERSION)
                .from(FROST_EVIDENCE_VERSION)
                .fetchOptional(FROST_EVIDENCE_VERSION.VERSION)
                .orElse(0L);
    }
}
