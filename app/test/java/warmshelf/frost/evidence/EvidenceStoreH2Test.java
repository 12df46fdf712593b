package warmshelf.frost.evidence;

import warmshelf.testing.TestDatabase;

class EvidenceStoreH2Test extends EvidenceStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
