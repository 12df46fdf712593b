package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class RankStoreH2Test extends RankStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
