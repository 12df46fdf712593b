package warmshelf.allocation;

import java.util.List;

/** What lies around some places over some days, the places themselves, and the racks that are held. */
public record Surroundings(SpaceCalendar board, List<Neighbour> neighbours, RackHolds holds) {
    public Surroundings {
        neighbours = List.copyOf(neighbours);
    }

    /** With no rack held. */
    public Surroundings(SpaceCalendar board, List<Neighbour> neighbours) {
        this(board, neighbours, RackHolds.NONE);
    }
}
