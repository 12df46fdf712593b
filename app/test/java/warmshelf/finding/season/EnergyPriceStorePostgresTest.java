package warmshelf.finding.season;

import warmshelf.testing.TestDatabase;

class EnergyPriceStorePostgresTest extends EnergyPriceStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
