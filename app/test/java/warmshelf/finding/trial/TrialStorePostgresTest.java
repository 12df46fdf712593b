package warmshelf.finding.trial;

import warmshelf.testing.TestDatabase;

class TrialStorePostgresTest extends TrialStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
