package warmshelf.passkey;

import warmshelf.testing.TestDatabase;

class PasskeyStorePostgresTest extends PasskeyStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
