package warmshelf.group;

import warmshelf.testing.TestDatabase;

class MemberStoreH2Test extends MemberStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
