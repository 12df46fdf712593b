package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class DisplacedPostgresTest extends DisplacedContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
