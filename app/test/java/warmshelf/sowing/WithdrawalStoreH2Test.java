package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class WithdrawalStoreH2Test extends WithdrawalStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
