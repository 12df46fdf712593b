package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class MessageStorePostgresTest extends MessageStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
