package warmshelf.label;

import warmshelf.testing.TestDatabase;

class CodeStoreH2Test extends CodeStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
