package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class WithdrawalStorePostgresTest extends WithdrawalStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
