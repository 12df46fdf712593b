package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class OutageDecisionStoreH2Test extends OutageDecisionStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
