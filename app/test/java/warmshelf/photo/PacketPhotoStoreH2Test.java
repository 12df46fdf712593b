package warmshelf.photo;

import warmshelf.testing.TestDatabase;

class PacketPhotoStoreH2Test extends PacketPhotoStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
