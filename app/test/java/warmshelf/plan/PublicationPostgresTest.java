package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class PublicationPostgresTest extends PublicationContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
