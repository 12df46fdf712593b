package warmshelf.archive;

import java.nio.file.Path;
import warmshelf.DatabasePlace;

class ArchiveRoundTripH2Test extends ArchiveRoundTripContract {
    @Override
    DatabasePlace place(Path folder) {
        return DatabasePlace.inFolder("--data", folder);
    }

    @Override
    void closePlace() {
        // its folder goes with the test
    }
}
