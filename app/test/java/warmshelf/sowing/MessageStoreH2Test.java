package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class MessageStoreH2Test extends MessageStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
