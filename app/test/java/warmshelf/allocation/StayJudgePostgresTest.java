package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class StayJudgePostgresTest extends StayJudgeContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
