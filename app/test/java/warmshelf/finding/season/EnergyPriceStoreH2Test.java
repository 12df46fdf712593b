package warmshelf.finding.season;

import warmshelf.testing.TestDatabase;

class EnergyPriceStoreH2Test extends EnergyPriceStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
