package warmshelf.program;

import warmshelf.testing.TestDatabase;

class ProgramPostgresTest extends ProgramContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.postgres();
    }
}
