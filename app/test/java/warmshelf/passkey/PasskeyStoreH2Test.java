package warmshelf.passkey;

import warmshelf.testing.TestDatabase;

class PasskeyStoreH2Test extends PasskeyStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
