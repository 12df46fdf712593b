package warmshelf.program;

import warmshelf.testing.TestDatabase;

class ProgramAccessH2Test extends ProgramAccessContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.h2();
    }
}
