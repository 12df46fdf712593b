package warmshelf.web;

import warmshelf.testing.TestDatabase;

class MalformedRequestsH2Test extends MalformedRequestsContract {
    @Override
    TestDatabase place() {
        return TestDatabase.h2();
    }
}
