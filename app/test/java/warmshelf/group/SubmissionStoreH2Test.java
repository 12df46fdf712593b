package warmshelf.group;

import warmshelf.testing.TestDatabase;

class SubmissionStoreH2Test extends SubmissionStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
