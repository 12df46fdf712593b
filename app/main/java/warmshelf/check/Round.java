package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RackHold;
import warmshelf.allocation.RackHolds;
import warmshelf.allocation.Stay;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.History;
import warmshelf.sowing.NotedProblem;
import warmshelf.words.Units;

/**
 * The round of a day in walking order: site, rack, shelf, surface, place; last what lies at members' homes.
 *
 * @param stops in walking order
 * @param elsewhere what lies at no place of the group's
 */
public record Round(List<Stop> stops, List<Item> elsewhere) {

    /** One mat, or one shelf's light, with what is due there, by the place one comes to first. */
    public record Stop(
            UUID siteId,
            String site,
            String rack,
            int shelf,
            String surface,
            int walkOrder,
            @Nullable MatReading mat,
            List<Item> items) {
        /** What a screen reader finds the stop by. */
        public String title() {
            return SAY.stop(rack, shelf, surface);
        }
    }

    /** The thermometer of a mat: its set-point and what was read today, if it was. */
    public record MatReading(
            UUID matId,
            String name,
            double setPointC,
            @Nullable Double readC,
            String readBy) {
        static MatReading of(TodayStore.MatToRead mat) {
            return new MatReading(
                    mat.matId(), mat.name(), mat.setPointC(), mat.readC().isNaN() ? null : mat.readC(), mat.readBy());
        }

        /** Too far off either way. */
        public boolean isOff() {
            return readC != null && MatAlarm.isOff(readC, setPointC);
        }
    }

    /**
     * One sowing with all that is due at it.
     *
     * @param checks those that are done too; none: all that was due has been done today
     * @param doneToday what was entered today, the last of it; null: nothing
     * @param underLight whether some of it lies under a light already
     * @param booked the place under a light that waits for it; null: none does
     * @param problems that were noted before today and are not dealt with yet
     * @param hold what holds the rack on which it lies; null: nothing does
     * @param unlabelled whether it wants a label that it has not
     * @param mark its place on a drawing of its rack; null: it has none
     */
    public record Item(
            Subject subject,
            List<Check> checks,
            @Nullable PlaceAddress address,
            @Nullable Entry doneToday,
            boolean underLight,
            @Nullable Stay booked,
            List<NotedProblem> problems,
            @Nullable RackHold hold,
            boolean unlabelled,
            RackSketch.@Nullable Mark mark) {
        public boolean isDone() {
            return open().isEmpty();
        }

        /** What is still to do. */
        public List<Check> open() {
            return checks.stream().filter(check -> !check.done()).toList();
        }

        /** Whether something on this item asks where the tray goes under a light. */
        public boolean asksForLight() {
            return !underLight
                    && checks.stream()
                            .anyMatch(check -> check.kind() == CheckKind.OFF_HEAT
                                    || check.kind() == CheckKind.TAKE_HOME
                                    || check.kind() == CheckKind.MOVE_TO_CELLS);
        }

        /** What to do at each of its checks that are still to do. */
        public List<HowTo> howTos(Units units) {
            return open().stream().map(check -> check.howTo(units)).toList();
        }

        public boolean has(String kind) {
            return checks.stream().anyMatch(check -> check.kind().name().equals(kind));
        }
    }

    /** The part of one site; what lies at members' homes is no site's. */
    Round at(UUID site) {
        return new Round(
                stops.stream().filter(stop -> stop.siteId().equals(site)).toList(), List.of());
    }

    /** The sowings at which something is still to be done besides the daily look, which nearly all want. */
    public Set<UUID> due() {
        return Stream.concat(stops.stream().flatMap(stop -> stop.items().stream()), elsewhere.stream())
                .filter(item ->
                        item.open().stream().anyMatch(check -> !check.kind().isLook()))
                .map(item -> item.subject().sowing().id())
                .collect(Collectors.toSet());
    }

    /** How many things are still to do: sowings, and thermometers to read. */
    public long open() {
        return walk().stream().filter(step -> !step.isDone()).count();
    }

    public long done() {
        return walk().size() - open();
    }

    /**
     * One thing to look at, for those who want one on a screen.
     *
     * @param where the stop's title
     * @param stop where it is; null: at no place of the group's
     * @param item the sowing; null: the stop's thermometer
     */
    public record Step(
            String where, @Nullable Stop stop, @Nullable Item item) {
        public boolean isDone() {
            if (item != null) {
                return item.isDone();
            }
            return stop != null && stop.mat() != null && stop.mat().readC() != null;
        }
    }

    /** Everything to look at in walking order. */
    public List<Step> walk() {
        List<Step> steps = new ArrayList<>();
        for (Stop stop : stops) {
            if (stop.mat() != null) {
                steps.add(new Step(stop.title(), stop, null));
            }
            stop.items().forEach(item -> steps.add(new Step(stop.title(), stop, item)));
        }
        elsewhere.forEach(item -> steps.add(new Step(SAY.elsewhere(), null, item)));
        return steps;
    }

    /** The drawings that its items use. */
    public List<RackSketch> racks() {
        return all().stream()
                .map(Item::mark)
                .filter(Objects::nonNull)
                .map(RackSketch.Mark::rack)
                .distinct()
                .toList();
    }

    /** The item of a sowing, if anything is due at it. */
    Optional<Item> item(UUID sowing) {
        return all().stream()
                .filter(item -> item.subject().sowing().id().equals(sowing))
                .findFirst();
    }

    /** What to do, once for all checks that share it, in the order in which one comes to them. */
    public List<HowTo> howTos(Units units) {
        return all().stream()
                .flatMap(item -> item.howTos(units).stream())
                .distinct()
                .toList();
    }

    private List<Item> all() {
        List<Item> all = new ArrayList<>(elsewhere);
        stops.forEach(stop -> all.addAll(stop.items()));
        return all;
    }

    static Round of(List<Item> items, Map<UUID, PlaceAddress> addresses, Map<UUID, MatReading> mats) {
        Map<String, Stop> stops = new LinkedHashMap<>();
        List<Item> elsewhere = new ArrayList<>();
        List<Item> inOrder = new ArrayList<>(items);
        inOrder.sort(Comparator.comparingInt(Round::walkOrder)
                .thenComparing(item -> item.subject().sowing().title())
                .thenComparing(item -> item.subject().sowing().id()));
        for (Item item : inOrder) {
            PlaceAddress address = item.address();
            if (address == null) {
                elsewhere.add(item);
            } else {
                stops.computeIfAbsent(key(address), key -> stop(address, mats))
                        .items()
                        .add(item);
            }
        }
        addMatsWithNothingDue(stops, addresses, mats);
        List<Stop> walked = new ArrayList<>(stops.values());
        walked.sort(Comparator.comparingInt(Stop::walkOrder));
        return new Round(walked, elsewhere);
    }

    /** A mat's thermometer is read even on days when nothing on it needs a look. */
    private static void addMatsWithNothingDue(
            Map<String, Stop> stops, Map<UUID, PlaceAddress> addresses, Map<UUID, MatReading> mats) {
        for (PlaceAddress address : addresses.values()) {
            if (address.matId() != null && mats.containsKey(address.matId())) {
                stops.computeIfAbsent(key(address), key -> stop(address, mats));
            }
        }
    }

    private static Stop stop(PlaceAddress address, Map<UUID, MatReading> mats) {
        return new Stop(
                address.siteId(),
                address.site(),
                address.rack(),
                address.shelf(),
                address.surface(),
                address.walkOrder(),
                address.matId() == null ? null : mats.get(address.matId()),
                new ArrayList<>());
    }

    private static int walkOrder(Item item) {
        return item.address() == null ? Integer.MAX_VALUE : item.address().walkOrder();
    }

    private static String key(PlaceAddress address) {
        return address.site() + "/" + address.rack() + "/" + address.shelf() + "/" + address.surface();
    }

    /** What is due at a sowing, or was done at it today; null when nothing is and was. */
    static @Nullable Item item(
            History history,
            Subject subject,
            List<NotedProblem> open,
            LocalDate today,
            Map<UUID, PlaceAddress> addresses,
            Map<UUID, RackSketch> sketches,
            RackHolds holds,
            boolean unlabelled) {
        List<Check> checks = ChecksDue.on(today, subject);
        Entry done = doneToday(history, subject, today);
        if (checks.isEmpty() && done == null) {
            return null;
        }
        Stay stay = subject.stay();
        PlaceAddress address =
                stay == null || (!stay.covers(today) && stay.from().isAfter(today.plusDays(1)))
                        ? null
                        : addresses.get(stay.placeId());
        Stay booked = history.lightBooked(today);
        boolean underLight =
                booked == null && history.stays().stream().anyMatch(lies -> !lies.isOnMat() && lies.covers(today));
        List<NotedProblem> earlier = open.stream()
                .filter(problem -> problem.entry().seenOn().isBefore(today))
                .toList();
        RackHold hold = history.liesOn(today).flatMap(holds::at).orElse(null);
        return new Item(
                subject,
                checks,
                address,
                done,
                underLight,
                history.lightBooked(today, holds),
                earlier,
                hold,
                unlabelled,
                mark(address, stay, sketches));
    }

    private static RackSketch.@Nullable Mark mark(
            @Nullable PlaceAddress address, @Nullable Stay stay, Map<UUID, RackSketch> sketches) {
        RackSketch rack = address == null ? null : sketches.get(address.placeId());
        return rack == null || stay == null ? null : rack.mark(stay.placeId(), stay.slot());
    }

    private static @Nullable Entry doneToday(History history, Subject subject, LocalDate today) {
        boolean unsown = subject.progress().stage().isBeforeSowing();
        List<Entry> done = Entry.standing(history.entries()).stream()
                .filter(entry -> entry.seenOn().equals(today)
                        // what was noticed before sowing is nothing that was due
                        && !(unsown && entry.step() == EntryStep.LOOK))
                .toList();
        return done.isEmpty() ? null : done.get(done.size() - 1);
    }
}
