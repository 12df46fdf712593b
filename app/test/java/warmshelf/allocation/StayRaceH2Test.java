package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class StayRaceH2Test extends StayRaceContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
