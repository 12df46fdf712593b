package warmshelf.duty;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The size of a maximum matching of turns with pairs of a person and a day, by augmenting paths (Berge's theorem: a matching
 * is maximum when no augmenting path is left); written apart from the program, for sites that are not looked at together.
 */
final class Matching {
    private final Invented invented;
    private final Map<Seat, Integer> taken = new HashMap<>();

    private Matching(Invented invented) {
        this.invented = invented;
    }

    private record Seat(Volunteer who, LocalDate day) {}

    static int most(Invented invented) {
        Matching matching = new Matching(invented);
        int size = 0;
        for (int turn = 0; turn < invented.turns().size(); turn++) {
            size += matching.augments(turn, new HashSet<>()) ? 1 : 0;
        }
        return size;
    }

    private boolean augments(int turn, Set<Seat> seen) {
        Turn wanted = invented.turns().get(turn);
        List<Seat> seats = invented.book().volunteers().stream()
                .filter(who -> invented.book().canTake(who, wanted))
                .map(who -> new Seat(who, wanted.day()))
                .toList();
        for (Seat seat : seats) {
            if (seen.add(seat)) {
                Integer other = taken.get(seat);
                if (other == null || augments(other, seen)) {
                    taken.put(seat, turn);
                    return true;
                }
            }
        }
        return false;
    }
}
