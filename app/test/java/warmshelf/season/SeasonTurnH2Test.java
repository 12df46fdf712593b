package warmshelf.season;

import warmshelf.testing.TestDatabase;

class SeasonTurnH2Test extends SeasonTurnContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.h2();
    }
}
