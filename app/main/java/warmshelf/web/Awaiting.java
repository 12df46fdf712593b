package warmshelf.web;

import java.util.List;
import java.util.stream.Stream;

/** What of a room waits for a coordinator, told to the page that lists all that is to be decided. */
public interface Awaiting {
    /** What waits today, in the reader's units. */
    List<Matter> matters(Visitor coordinator);

    /**
     * One thing to decide.
     *
     * @param what it is, in a few words
     * @param more that helps to decide; empty where there is nothing
     * @param address of the page on which it is decided
     * @param urgent whether plants suffer while it waits
     */
    record Matter(String what, String more, String address, boolean urgent) {}

    /** What waits in several rooms, room by room. */
    static Awaiting of(Awaiting... rooms) {
        return coordinator -> Stream.of(rooms)
                .flatMap(room -> room.matters(coordinator).stream())
                .toList();
    }
}
