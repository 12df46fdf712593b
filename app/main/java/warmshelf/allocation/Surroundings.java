package warmshelf.allocation;

import java.util.List;
import warmshelf.shelf.Retirements;

/** What lies around some places over some days, the places themselves, the racks that are held, and what is retired. */
public record Surroundings(SpaceCalendar board, List<Neighbour> neighbours, RackHolds holds, Retirements retired) {
    public Surroundings {
        neighbours = List.copyOf(neighbours);
    }

    /** With no rack held and nothing retired. */
    public Surroundings(SpaceCalendar board, List<Neighbour> neighbours) {
        this(board, neighbours, RackHolds.NONE, Retirements.NONE);
    }
}
