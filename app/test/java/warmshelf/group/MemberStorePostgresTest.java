package warmshelf.group;

import warmshelf.testing.TestDatabase;

class MemberStorePostgresTest extends MemberStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
