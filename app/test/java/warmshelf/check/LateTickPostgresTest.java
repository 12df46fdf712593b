package warmshelf.check;

import warmshelf.testing.TestDatabase;

class LateTickPostgresTest extends LateTickContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
