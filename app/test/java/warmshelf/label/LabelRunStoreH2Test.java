package warmshelf.label;

import warmshelf.testing.TestDatabase;

class LabelRunStoreH2Test extends LabelRunStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
