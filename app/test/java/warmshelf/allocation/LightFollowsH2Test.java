package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class LightFollowsH2Test extends LightFollowsContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
