package warmshelf.check;

import warmshelf.testing.TestDatabase;

class HeldRackPostgresTest extends HeldRackContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
