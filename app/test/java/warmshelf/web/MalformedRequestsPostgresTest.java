package warmshelf.web;

import warmshelf.testing.TestDatabase;

class MalformedRequestsPostgresTest extends MalformedRequestsContract {
    @Override
    TestDatabase place() {
        return TestDatabase.postgres();
    }
}
