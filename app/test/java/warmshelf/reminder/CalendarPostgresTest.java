package warmshelf.reminder;

import warmshelf.testing.TestDatabase;

class CalendarPostgresTest extends CalendarContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.postgres();
    }
}
