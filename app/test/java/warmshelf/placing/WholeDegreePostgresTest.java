package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class WholeDegreePostgresTest extends WholeDegreeContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
