package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class LightFollowsPostgresTest extends LightFollowsContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
