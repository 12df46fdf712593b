package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class PlanStorePostgresTest extends PlanStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
