package warmshelf.duty;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who looks when the person on duty does not: the next least served who can. Being down to stand in counts for the next
 * choice, so that it goes round; whoever is down already stays while they can.
 */
final class StandIns {
    private final RotaBook book;
    private final Map<UUID, Integer> standing = new HashMap<>();
    private final Map<Turn, UUID> settled = new LinkedHashMap<>();

    private StandIns(RotaBook book) {
        this.book = book;
    }

    /**
     * Names somebody for each turn for which there is anybody.
     *
     * @param turns turns that have somebody on duty in the book
     * @param before who was down for them so far
     */
    static Map<Turn, UUID> settle(List<Turn> turns, Map<Turn, UUID> before, RotaBook book) {
        StandIns standIns = new StandIns(book);
        List<Turn> inOrder =
                turns.stream().sorted(Comparator.comparing(Turn::day)).toList();
        inOrder.forEach(turn -> standIns.keep(turn, before.get(turn)));
        inOrder.stream().filter(turn -> !standIns.settled.containsKey(turn)).forEach(standIns::choose);
        return standIns.settled;
    }

    private void keep(Turn turn, @Nullable UUID member) {
        book.volunteers().stream()
                .filter(volunteer -> volunteer.id().equals(member) && canStandIn(volunteer, turn))
                .forEach(volunteer -> put(turn, volunteer));
    }

    private void choose(Turn turn) {
        Optional<Volunteer> next = book.volunteers().stream()
                .filter(volunteer -> canStandIn(volunteer, turn))
                // the first of those with the fewest is the one of the lowest rank
                .min(Comparator.comparingInt(
                        volunteer -> book.served(volunteer.id()) + standing.getOrDefault(volunteer.id(), 0)));
        next.ifPresent(volunteer -> put(turn, volunteer));
    }

    private void put(Turn turn, Volunteer volunteer) {
        settled.put(turn, volunteer.id());
        standing.merge(volunteer.id(), 1, Integer::sum);
    }

    private boolean canStandIn(Volunteer volunteer, Turn turn) {
        return book.canTake(volunteer, turn)
                && settled.entrySet().stream()
                        .noneMatch(other -> other.getValue().equals(volunteer.id())
                                && !other.getKey().equals(turn)
                                && book.clash(other.getKey(), turn));
    }
}
