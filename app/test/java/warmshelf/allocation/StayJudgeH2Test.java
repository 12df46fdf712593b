package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class StayJudgeH2Test extends StayJudgeContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
