package warmshelf.photo;

import warmshelf.testing.TestDatabase;

class PhotoOfPacketPostgresTest extends PhotoOfPacketContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
