package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class SeasonAskedForH2Test extends SeasonAskedForContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
