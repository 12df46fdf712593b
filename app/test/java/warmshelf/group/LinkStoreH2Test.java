package warmshelf.group;

import warmshelf.testing.TestDatabase;

class LinkStoreH2Test extends LinkStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
