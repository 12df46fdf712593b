package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class MoveRaceH2Test extends MoveRaceContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
