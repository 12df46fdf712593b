package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class OutageDecisionStorePostgresTest extends OutageDecisionStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
