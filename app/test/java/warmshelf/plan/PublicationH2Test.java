package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class PublicationH2Test extends PublicationContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
