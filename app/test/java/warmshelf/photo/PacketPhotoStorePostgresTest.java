package warmshelf.photo;

import warmshelf.testing.TestDatabase;

class PacketPhotoStorePostgresTest extends PacketPhotoStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
