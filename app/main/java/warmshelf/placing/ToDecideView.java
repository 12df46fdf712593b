package warmshelf.placing;

import java.util.List;
import warmshelf.allocation.RequestStore;
import warmshelf.web.Awaiting;
import warmshelf.web.Visitor;

/** What waits for a coordinator beside the requests, and how much it is together. */
final class ToDecideView {
    private final RequestStore requests;
    private final Awaiting rooms;

    ToDecideView(RequestStore requests, Awaiting rooms) {
        this.requests = requests;
        this.rooms = rooms;
    }

    List<Awaiting.Matter> matters(Visitor coordinator) {
        return rooms.matters(coordinator);
    }

    int count(Visitor coordinator) {
        return requests.countWaiting() + matters(coordinator).size();
    }
}
