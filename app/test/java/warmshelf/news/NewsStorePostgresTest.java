package warmshelf.news;

import warmshelf.testing.TestDatabase;

class NewsStorePostgresTest extends NewsStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
