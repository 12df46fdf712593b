package warmshelf.finding.trial;

import warmshelf.testing.TestDatabase;

class TrialStoreH2Test extends TrialStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
