package warmshelf.frost.evidence;

import warmshelf.testing.TestDatabase;

class EvidenceStorePostgresTest extends EvidenceStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
