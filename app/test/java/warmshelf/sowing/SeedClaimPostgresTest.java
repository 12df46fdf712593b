package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class SeedClaimPostgresTest extends SeedClaimContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
