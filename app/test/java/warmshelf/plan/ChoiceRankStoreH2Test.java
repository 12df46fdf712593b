package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class ChoiceRankStoreH2Test extends ChoiceRankStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
