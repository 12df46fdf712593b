package warmshelf.program;

import warmshelf.testing.TestDatabase;

class ProgramH2Test extends ProgramContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.h2();
    }
}
