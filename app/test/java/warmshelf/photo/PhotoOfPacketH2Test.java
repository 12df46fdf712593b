package warmshelf.photo;

import warmshelf.testing.TestDatabase;

class PhotoOfPacketH2Test extends PhotoOfPacketContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
