package warmshelf.reminder.push;

import warmshelf.testing.TestDatabase;

class PushStoreH2Test extends PushStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
