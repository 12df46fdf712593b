package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class PublicationUndoH2Test extends PublicationUndoContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
