package warmshelf.finding.trial;

import warmshelf.testing.TestDatabase;

class TrialWarmthStoreH2Test extends TrialWarmthStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
