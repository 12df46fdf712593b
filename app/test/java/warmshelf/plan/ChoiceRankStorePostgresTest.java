package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class ChoiceRankStorePostgresTest extends ChoiceRankStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
