package warmshelf.reminder.push;

import warmshelf.testing.TestDatabase;

class PushStorePostgresTest extends PushStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
