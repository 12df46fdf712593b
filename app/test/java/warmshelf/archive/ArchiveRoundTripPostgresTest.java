package warmshelf.archive;

import java.nio.file.Path;
import warmshelf.DatabasePlace;
import warmshelf.testing.TestDatabase;

class ArchiveRoundTripPostgresTest extends ArchiveRoundTripContract {
    private TestDatabase there;

    @Override
    DatabasePlace place(Path folder) {
        there = TestDatabase.postgres();
        return DatabasePlace.at("--jdbc-url", there.address(), null, null);
    }

    @Override
    void closePlace() {
        if (there != null) {
            there.close();
        }
    }
}
