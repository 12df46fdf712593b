package warmshelf.shelf;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * What others changed on the boards since somebody last looked, as far as it concerns them.
 *
 * @param stays by the ids of stays
 * @param others what is not seen on a tray: places that are free again, mats that cannot be used
 */
public record BoardChanges(Map<UUID, StayMark.Change> stays, List<Line> others) {
    public static final BoardChanges NONE = new BoardChanges(Map.of(), List.of());

    public BoardChanges {
        stays = Map.copyOf(stays);
        others = List.copyOf(others);
    }

    /**
     * One change, told beside the board.
     *
     * @param address where it is told in full
     */
    public record Line(String words, String address) {}

    /** How many trays are marked for it. */
    public int trays() {
        return stays.size();
    }

    /** The same board with its trays marked. */
    Board on(Board board, Set<UUID> dueSowings) {
        return board.marked(stay -> new StayMark(dueSowings.contains(stay.sowingId()), stays.get(stay.stayId())));
    }
}
