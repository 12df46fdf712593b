package warmshelf.check;

import warmshelf.testing.TestDatabase;

class WeekSheetPostgresTest extends WeekSheetContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.postgres();
    }
}
