package warmshelf.finding.trial;

import warmshelf.testing.TestDatabase;

class TrialWarmthStorePostgresTest extends TrialWarmthStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
