package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class SeedClaimH2Test extends SeedClaimContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
