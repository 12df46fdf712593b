package warmshelf.finding.season;

import warmshelf.testing.TestDatabase;

class SeasonStoreH2Test extends SeasonStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
