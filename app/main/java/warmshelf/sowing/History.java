package warmshelf.sowing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RackHolds;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;

/**
 * A sowing with all that happened to it.
 *
 * @param entries as they came in, the oldest first
 * @param stays in order of time
 * @param setPointC the set-point of the mat it lies or will lie on; null: on none
 */
public record History(
        Sowing sowing,
        List<Entry> entries,
        List<Stay> stays,
        @Nullable SpaceRequest request,
        @Nullable Double setPointC) {

    /** The same as it was known before anything of a day was seen. */
    public History before(LocalDate day) {
        return new History(
                sowing,
                entries.stream().filter(entry -> entry.seenOn().isBefore(day)).toList(),
                stays,
                request,
                setPointC);
    }

    public Progress progress() {
        return Progress.of(sowing.method(), sowing.seeds(), entries);
    }

    /** Where it lies on a day, or is next to lie; null: nowhere of the group's. */
    public @Nullable Stay stayOn(LocalDate day) {
        return stays.stream()
                .filter(stay -> stay.to().isAfter(day))
                .min(Comparator.comparing(Stay::from))
                .orElse(null);
    }

    /** The place under a light that waits for what is still on the heat, or not sown; null: none does. */
    public @Nullable Stay lightBooked(LocalDate day) {
        Progress progress = progress();
        return progress.moved() > 0 || progress.stage().compareTo(SowingStage.UNDER_LIGHT) >= 0
                ? null
                : stays.stream()
                        .filter(stay -> !stay.isOnMat() && stay.to().isAfter(day))
                        .findFirst()
                        .orElse(null);
    }

    /** The same, where no held rack keeps it from going there. */
    public @Nullable Stay lightBooked(LocalDate day, RackHolds holds) {
        Stay booked = lightBooked(day);
        return booked != null
                        && liesOn(day)
                                .flatMap(place -> holds.inTheWay(place, booked.placeId()))
                                .isPresent()
                ? null
                : booked;
    }

    /** The place on which it lies on a day. */
    public Optional<UUID> liesOn(LocalDate day) {
        return stays.stream()
                .filter(stay -> stay.covers(day))
                .map(Stay::placeId)
                .findFirst();
    }

    /** The temperature its dates are reckoned at. */
    public double celsius(SowingPlanner planner) {
        return setPointC == null ? planner.reckonedC(sowing.crop(), sowing.warm()) : setPointC;
    }

    /** Days since it was sown; 0 before. */
    public int dayCount(LocalDate today) {
        return Optional.ofNullable(progress().seen().sown())
                .map(sown -> (int) ChronoUnit.DAYS.between(sown, today))
                .orElse(0);
    }

    /**
     * The entries that tell of the same as another one of that day, each with whether it is the one that counts: of two phones
     * that ticked the same, the one that saw it later.
     */
    public Map<UUID, Boolean> doubled() {
        Map<String, List<Entry>> same = Entry.standing(entries).stream()
                .collect(Collectors.groupingBy(entry -> entry.step() + " " + entry.seenOn()));
        Map<UUID, Boolean> doubled = new HashMap<>();
        same.values().stream().filter(list -> list.size() > 1).forEach(list -> {
            list.forEach(entry -> doubled.put(entry.id(), false));
            doubled.put(list.get(list.size() - 1).id(), true);
        });
        return doubled;
    }

    /** The entries as they were seen, the oldest first. */
    public List<Entry> asSeen() {
        return entries.stream().sorted(Entry.BY_SEEN).toList();
    }

    /** The entries by when they were seen, the newest first. */
    public List<Entry> newestFirst() {
        return entries.stream().sorted(Entry.BY_SEEN.reversed()).toList();
    }

    /** The entries that a later one corrects. */
    public Set<UUID> corrected() {
        return Entry.superseded(entries);
    }
}
