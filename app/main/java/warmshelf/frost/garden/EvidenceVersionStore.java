package warmshelf.frost.garden;

import static warmshelf.db.generated.Tables.FROST_EVIDENCE_VERSION;

import org.jooq.DSLContext;

/** Counts the changes to what frost dates rest on. */
final class EvidenceVersionStore {
    private static final int THE_ONE = 1;

    private EvidenceVersionStore() {}

    /**
     * Counts one more change within the caller's transaction. Called first, it also makes such changes wait for each other,
     * so that what is read after it stays true until the end of the transaction.
     *
     * @return the new version, which was never given before
     */
    static long grow(DSLContext within) {
        within.update(FROST_EVIDENCE_VERSION)
                .set(FROST_EVIDENCE_VERSION.VERSION, FROST_EVIDENCE_VERSION.VERSION.plus(1))
                .where(FROST_EVIDENCE_VERSION.ID.eq(THE_ONE))
                .execute();
        return within.select(FROST_EVIDENCE_VERSION.VERSION)
                .from(FROST_EVIDENCE_VERSION)
                .where(FROST_EVIDENCE_VERSION.ID.eq(THE_ONE))
                .fetchSingle()
                .value1();
    }
}
