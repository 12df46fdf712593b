package warmshelf.check;

import warmshelf.testing.TestDatabase;

class LightBookedH2Test extends LightBookedContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
