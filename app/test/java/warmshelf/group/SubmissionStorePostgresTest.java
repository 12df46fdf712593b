package warmshelf.group;

import warmshelf.testing.TestDatabase;

class SubmissionStorePostgresTest extends SubmissionStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
