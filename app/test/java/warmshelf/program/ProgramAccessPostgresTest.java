package warmshelf.program;

import warmshelf.testing.TestDatabase;

class ProgramAccessPostgresTest extends ProgramAccessContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.postgres();
    }
}
