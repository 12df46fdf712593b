package warmshelf.check;

import warmshelf.testing.TestDatabase;

class WeekSheetH2Test extends WeekSheetContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.h2();
    }
}
