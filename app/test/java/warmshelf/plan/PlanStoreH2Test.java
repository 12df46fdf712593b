package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class PlanStoreH2Test extends PlanStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
