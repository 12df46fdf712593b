package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class MoveBackH2Test extends MoveBackContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
