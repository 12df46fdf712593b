package warmshelf.placing;

import java.util.List;
import warmshelf.allocation.RequestStore;
import warmshelf.db.Database;
import warmshelf.db.KeptUntilWritten;
import warmshelf.web.Awaiting;
import warmshelf.web.Visitor;

/** What waits for a coordinator beside the requests, and how much it is together. */
final class ToDecideView {
    private final Awaiting rooms;
    private final KeptUntilWritten<Visitor, Integer> counts;

    ToDecideView(Database database, RequestStore requests, Awaiting rooms) {
        this.rooms = rooms;
        this.counts = new KeptUntilWritten<>(
                database,
                coordinator -> requests.countWaiting() + matters(coordinator).size());
    }

    List<Awaiting.Matter> matters(Visitor coordinator) {
        return rooms.matters(coordinator);
    }

    /** How much waits; every page of a coordinator asks. */
    int count(Visitor coordinator) {
        return counts.get(coordinator);
    }
}
