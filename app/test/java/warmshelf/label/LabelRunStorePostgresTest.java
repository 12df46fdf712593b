package warmshelf.label;

import warmshelf.testing.TestDatabase;

class LabelRunStorePostgresTest extends LabelRunStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
