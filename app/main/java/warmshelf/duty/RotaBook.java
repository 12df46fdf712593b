package warmshelf.duty;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * What is known when days are given out: who can, who has served, and which sites one person can look at on the same day.
 * Without such a word one person looks at one site a day.
 */
public final class RotaBook {
    private final List<Volunteer> volunteers;
    private final Map<Turn, UUID> duties;
    private final Set<UUID> together;
    private final Map<UUID, Integer> served = new HashMap<>();
    private final Map<UUID, LocalDate> lastDuty = new HashMap<>();
    private final Map<UUID, Map<LocalDate, Set<UUID>>> sitesOf = new HashMap<>();

    /**
     * @param duties every duty that counts: of the last 60 days and all that are planned
     * @param together the sites that whoever looks there can look at on the same day
     */
    RotaBook(List<Volunteer> volunteers, Map<Turn, UUID> duties, Set<UUID> together) {
        this.duties = Map.copyOf(duties);
        this.together = Set.copyOf(together);
        duties.forEach((turn, member) -> {
            served.merge(member, 1, Integer::sum);
            lastDuty.merge(member, turn.day(), (one, other) -> one.isAfter(other) ? one : other);
            sitesOf.computeIfAbsent(member, id -> new HashMap<>())
                    .computeIfAbsent(turn.day(), day -> new HashSet<>())
                    .add(turn.site());
        });
        this.volunteers = volunteers.stream().sorted(leastServedFirst()).toList();
    }

    /** Fewest duties first, then the longest since the last one (never is longest), then by name. */
    private Comparator<Volunteer> leastServedFirst() {
        return Comparator.comparingInt((Volunteer volunteer) -> served(volunteer.id()))
                .thenComparing(volunteer -> lastDuty.getOrDefault(volunteer.id(), LocalDate.MIN))
                .thenComparing(Volunteer::name)
                .thenComparing(Volunteer::id);
    }

    /** Everyone who is on the rota, the least served first. */
    List<Volunteer> volunteers() {
        return volunteers;
    }

    /** How many duties of the book a member has, over all sites. */
    int served(UUID member) {
        return served.getOrDefault(member, 0);
    }

    boolean isFilled(Turn turn) {
        return duties.containsKey(turn);
    }

    /** The days on which a member has a duty anywhere. */
    Set<LocalDate> daysOf(UUID member) {
        return sitesOf.getOrDefault(member, Map.of()).keySet();
    }

    boolean isTogether(UUID site) {
        return together.contains(site);
    }

    /** Whether one person cannot take both. */
    boolean clash(Turn one, Turn other) {
        return one.day().equals(other.day()) && !(together.contains(one.site()) && together.contains(other.site()));
    }

    /** Whether a member has no duty in the book that keeps them from this one. */
    boolean isFree(UUID member, Turn turn) {
        return sitesOf.getOrDefault(member, Map.of()).getOrDefault(turn.day(), Set.of()).stream()
                .allMatch(site -> !site.equals(turn.site()) && !clash(new Turn(site, turn.day()), turn));
    }

    /** Whether a member said they can, and no other duty keeps them from it. */
    boolean canTake(Volunteer volunteer, Turn turn) {
        return volunteer.can(turn) && isFree(volunteer.id(), turn);
    }
}
