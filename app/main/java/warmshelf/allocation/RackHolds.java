package warmshelf.allocation;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Says what may be taken off a rack and laid on one while racks are held: the one judge for what pages offer and for what is saved.
 * Within its rack, and to a quarantine shelf, it may always go.
 *
 * @param byRack the racks that are held, by their ids
 * @param rackOf the rack of each place; may be empty where none is held
 * @param quarantine the places of quarantine shelves
 */
public record RackHolds(Map<UUID, RackHold> byRack, Map<UUID, UUID> rackOf, Set<UUID> quarantine) {
    public static final RackHolds NONE = new RackHolds(Map.of(), Map.of(), Set.of());

    public RackHolds {
        byRack = Map.copyOf(byRack);
        rackOf = Map.copyOf(rackOf);
        quarantine = Set.copyOf(quarantine);
    }

    /** The racks that are held, by name. */
    public List<RackHold> inOrder() {
        return byRack.values().stream()
                .sorted(Comparator.comparing(RackHold::rack))
                .toList();
    }

    /** The hold of the rack that a place is on. */
    public Optional<RackHold> at(UUID place) {
        return Optional.ofNullable(rackOf.get(place)).map(byRack::get);
    }

    /** The hold of the rack of a mat on which nothing new may be laid. */
    public Optional<RackHold> keepsOut(MatSpace mat) {
        return mat.places().stream().findFirst().flatMap(place -> keepsOut(Set.of(), place));
    }

    /** What keeps something that lies on a place from going to another: the rack that it would leave, or the one it would come to. */
    public Optional<Obstacle> inTheWay(UUID from, UUID to) {
        return keepsIn(from, to)
                .<Obstacle>map(Obstacle.RackIsHeld::new)
                .or(() -> keepsOut(Set.of(from), to).map(Obstacle.RackTakesNothing::new));
    }

    /** The hold of the rack on which something lies and which it must not leave for a place. */
    public Optional<RackHold> keepsIn(UUID from, UUID to) {
        return at(from).filter(hold -> !hold.rackId().equals(rackOf.get(to)) && !quarantine.contains(to));
    }

    /**
     * The hold of the rack of a place on which nothing new may be laid.
     *
     * @param lies where it lies or is booked already; none for what is new
     */
    public Optional<RackHold> keepsOut(Set<UUID> lies, UUID to) {
        return at(to).filter(hold ->
                !quarantine.contains(to) && lies.stream().map(rackOf::get).noneMatch(hold.rackId()::equals));
    }
}
