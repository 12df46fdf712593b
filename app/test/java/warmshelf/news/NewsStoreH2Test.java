package warmshelf.news;

import warmshelf.testing.TestDatabase;

class NewsStoreH2Test extends NewsStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
