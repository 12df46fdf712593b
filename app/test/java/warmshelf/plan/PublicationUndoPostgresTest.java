package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class PublicationUndoPostgresTest extends PublicationUndoContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
