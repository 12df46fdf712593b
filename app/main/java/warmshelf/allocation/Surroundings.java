package warmshelf.allocation;

import java.util.List;

/** What lies around some places over some days, and the places themselves. */
public record Surroundings(SpaceCalendar board, List<Neighbour> neighbours) {
    public Surroundings {
        neighbours = List.copyOf(neighbours);
    }
}
