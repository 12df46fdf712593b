package warmshelf.reminder;

import warmshelf.testing.TestDatabase;

class LetterStorePostgresTest extends LetterStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
