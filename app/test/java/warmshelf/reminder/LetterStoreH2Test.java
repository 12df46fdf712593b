package warmshelf.reminder;

import warmshelf.testing.TestDatabase;

class LetterStoreH2Test extends LetterStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
