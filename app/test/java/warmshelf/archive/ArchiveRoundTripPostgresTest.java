package warmshelf.archive;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import warmshelf.DatabasePlace;
import warmshelf.testing.TestDatabase;

class ArchiveRoundTripPostgresTest extends ArchiveRoundTripContract {
    private @Nullable TestDatabase there;

    @Override
    DatabasePlace place(Path folder) {
        TestDatabase fresh = TestDatabase.postgres();
        there = fresh;
        return DatabasePlace.at("--jdbc-url", fresh.address(), null, null);
    }

    @Override
    void closePlace() {
        if (there != null) {
            there.close();
        }
    }
}
