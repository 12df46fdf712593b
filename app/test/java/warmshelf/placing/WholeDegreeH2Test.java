package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class WholeDegreeH2Test extends WholeDegreeContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
