package warmshelf.reminder;

import warmshelf.testing.TestDatabase;

class CalendarH2Test extends CalendarContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.h2();
    }
}
