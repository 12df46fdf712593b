package warmshelf.check;

import warmshelf.testing.TestDatabase;

class LightBookedPostgresTest extends LightBookedContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
