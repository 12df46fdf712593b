package warmshelf.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RackHold;
import warmshelf.allocation.RackHolds;
import warmshelf.allocation.Stay;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;

/**
 * What happens to a sowing's space after a tick: which stays end, which booked one begins at once, and what is laid under a
 * light. It only works it out; {@link TickStore} does it.
 *
 * @param before the stage before the tick
 * @param movedBefore how many seeds had been moved out of the bag before it
 * @param after the stage it leads to
 * @param lying the sowing's stays that are not over
 * @param lightUntil the day until which a place under a light is wanted, if one is
 */
record SpaceAfterTick(
        SowingStage before, int movedBefore, SowingStage after, Tick tick, List<Stay> lying, LocalDate lightUntil) {

    /** One thing to do to the space. */
    sealed interface Change {
        /** The stay is over; its quarters are free from that day on. */
        record End(Stay stay, LocalDate freeFrom) implements Change {}

        /** The stay under a light that was booked for later begins now, where its place is free. */
        record BeginEarlier(Stay stay, LocalDate from) implements Change {}

        /** The sowing is laid under a light. */
        record LayUnderLight(PlaceAndDays spot) implements Change {}
    }

    /** What to do, in this order. */
    List<Change> changes() {
        if (tick.step() == EntryStep.LOOK || tick.step() == EntryStep.UNDONE) {
            return List.of();
        }
        List<Change> changes = new ArrayList<>();
        bookedChange().ifPresent(changes::add);
        lying.stream()
                .filter(this::ends)
                .map(stay -> new Change.End(stay, tick.seenOn()))
                .filter(end -> !changes.contains(end))
                .forEach(changes::add);
        toLight().ifPresent(changes::add);
        return changes;
    }

    /** Why held racks keep the sowing from where it would go; what was done before a rack was held stands. */
    Optional<TickRefusal> heldBy(RackHolds holds) {
        Set<UUID> lies = liesOn();
        return Stream.concat(
                        changes().stream().flatMap(change -> to(change).stream()),
                        bookedBegins().map(Stay::placeId).stream())
                .flatMap(to -> refusals(holds, lies, to))
                .findFirst();
    }

    private Stream<TickRefusal> refusals(RackHolds holds, Set<UUID> lies, UUID to) {
        Stream<TickRefusal> leaves = lies.stream()
                .flatMap(from -> holds.keepsIn(from, to).stream())
                .filter(this::isHeldByThen)
                .map(TickRefusal.RackIsHeld::new);
        Stream<TickRefusal> comes =
                holds.keepsOut(lies, to).stream().filter(this::isHeldByThen).map(TickRefusal.RackTakesNothing::new);
        return Stream.concat(leaves, comes);
    }

    private boolean isHeldByThen(RackHold hold) {
        return !tick.seenOn().isBefore(hold.since());
    }

    /** The place booked under a light whose days have begun, where it goes there by this tick. */
    private Optional<Stay> bookedBegins() {
        return booked().filter(stay ->
                leavesMat() && !tick.goesHome() && tick.lightPlace() == null && stay.isBegunBy(tick.seenOn()));
    }

    /** The places from which it would go: where it lies that day, or on whose mat its days end with it. */
    private Set<UUID> liesOn() {
        Set<UUID> lies = places(stay -> stay.covers(tick.seenOn())
                && !bookedBegins().filter(stay::equals).isPresent());
        return lies.isEmpty() ? places(stay -> stay.isOnMat() && stay.to().equals(tick.seenOn())) : lies;
    }

    private Set<UUID> places(Predicate<Stay> which) {
        return lying.stream().filter(which).map(Stay::placeId).collect(Collectors.toSet());
    }

    private static Optional<UUID> to(Change change) {
        if (change instanceof Change.BeginEarlier begin) {
            return Optional.of(begin.stay().placeId());
        }
        return change instanceof Change.LayUnderLight lay
                ? Optional.of(lay.spot().placeId())
                : Optional.empty();
    }

    /** The place booked under a light begins when the tray comes early, and is given up when it goes elsewhere. */
    private Optional<Change> bookedChange() {
        Optional<Stay> booked = booked().filter(stay -> !leavesLight());
        if (tick.goesHome() || tick.lightPlace() != null) {
            return booked.map(stay -> new Change.End(stay, tick.seenOn()));
        }
        return booked.filter(stay -> !stay.isBegunBy(tick.seenOn()))
                .map(stay -> new Change.BeginEarlier(stay, tick.seenOn()));
    }

    /** Only at the first move: later, what lies under a light lies there by a tick, and is no booking any more. */
    private Optional<Stay> booked() {
        boolean leavesNow = tick.step() == EntryStep.OFF_HEAT
                || tick.step() == EntryStep.UNDER_LIGHT
                || tick.step() == EntryStep.TAKEN_HOME
                || tick.step() == EntryStep.MOVED_TO_CELLS;
        return lying.stream()
                .filter(stay -> leavesNow
                        && isFirstMove()
                        && !stay.isOnMat()
                        && stay.to().isAfter(tick.seenOn()))
                .findFirst();
    }

    private boolean ends(Stay stay) {
        return leavesLight()
                || tick.step() == EntryStep.TAKEN_HOME
                || (leavesMat() && (lightPlace().isPresent() || stay.isOnMat()));
    }

    private Optional<Change> toLight() {
        boolean liesUnderLight = isPartlyMoved()
                && !isFirstMove()
                && lying.stream().anyMatch(stay -> !stay.isOnMat() && stay.covers(tick.seenOn()));
        LocalDate day = tick.seenOn();
        LocalDate to = lightUntil.isAfter(day) ? lightUntil : day.plusDays(1);
        return lightPlace()
                .filter(place -> !leavesLight() && !liesUnderLight)
                .map(place -> new Change.LayUnderLight(new PlaceAndDays(place.placeId(), place.slot(), day, to)));
    }

    private Optional<Tick.LightPlace> lightPlace() {
        return leavesMat() || isPartlyMoved() ? Optional.ofNullable(tick.lightPlace()) : Optional.empty();
    }

    private boolean isFirstMove() {
        return before.compareTo(SowingStage.UNDER_LIGHT) < 0 && movedBefore == 0;
    }

    private boolean leavesMat() {
        return after.compareTo(SowingStage.UNDER_LIGHT) >= 0
                || after == SowingStage.IN_CELLS
                || tick.step() == EntryStep.OFF_HEAT
                || tick.step() == EntryStep.TAKEN_HOME;
    }

    private boolean leavesLight() {
        return after.compareTo(SowingStage.HARDENING_OFF) >= 0;
    }

    /** A bag that is moved seed by seed stays on its mat while its first cells lie under the light already. */
    private boolean isPartlyMoved() {
        return tick.step() == EntryStep.MOVED_TO_CELLS && !leavesMat();
    }
}
