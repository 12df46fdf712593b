package warmshelf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import warmshelf.allocation.Band;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceWish;
import warmshelf.allocation.WarmDays;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.shelf.WholeDegree;

/**
 * Asks the planner where the displaced stays could lie: they are its requests, everything else on their board is fixed. Mats and
 * requests go by their ids. Light and circuits are left out: a place under a light follows its stay when it is moved, and whoever
 * moves a stay by hand is not asked for its circuit either.
 */
final class DisplacedQuestion {
    private static final List<Slot> SLOTS =
            Stream.of(4, 2, 1).flatMap(quarters -> Slot.of(quarters).stream()).toList();

    private final SpaceCalendar others;
    private final List<Displaced> displaced;
    private final Map<String, MatSpace> mats = new LinkedHashMap<>();
    /** What each thermostat can hold, and what it is set to all the same. */
    private final Map<MatSpace, Band> held = new LinkedHashMap<>();

    private final DayRange days;
    private final PlanQuestion exact;

    DisplacedQuestion(DisplacedBoard room) {
        others = room.others();
        displaced = room.displaced();
        LocalDate to = displaced.stream()
                .map(each -> each.wish().latest().plusDays(longest(each.wish()) + 1L))
                .max(LocalDate::compareTo)
                .orElseThrow();
        days = new DayRange(others.from(), to.isAfter(others.to()) ? others.to() : to);
        for (MatSpace mat : others.mats()) {
            Band band = held(mat);
            if (displaced.stream()
                    .anyMatch(each -> !each.closed().contains(mat.id())
                            && band.overlaps(each.wish().band()))) {
                mats.put(mat.id().toString(), mat);
                held.put(mat, band);
            }
        }
        exact = question(DisplacedQuestion::degrees, DisplacedQuestion::daysAt);
    }

    private static Band degrees(MatSpace mat) {
        return new Band(mat.thermostat().lowest(), mat.thermostat().highest());
    }

    /** The whole degree that a mat's set-point counts as; the search knows no finer ones. */
    private OptionalInt degree(MatSpace mat, LocalDate day) {
        OptionalDouble set = others.setPoint(mat.id(), day);
        return set.isPresent() ? OptionalInt.of(WholeDegree.of(set.getAsDouble())) : OptionalInt.empty();
    }

    /** What is planned for a day; where the mat stands within that degree already, just as it stands. */
    private double celsius(MatSpace mat, LocalDate day, double planned) {
        OptionalInt standing = degree(mat, day);
        return standing.isPresent() && standing.getAsInt() == WholeDegree.of(planned)
                ? others.setPoint(mat.id(), day).orElseThrow()
                : planned;
    }

    private Band held(MatSpace mat) {
        Band band = degrees(mat);
        for (LocalDate day = days.from(); day.isBefore(days.to()); day = day.plusDays(1)) {
            OptionalInt set = degree(mat, day);
            if (set.isPresent() && !band.contains(set.getAsInt())) {
                band = new Band(Math.min(band.lowC(), set.getAsInt()), Math.max(band.highC(), set.getAsInt()));
            }
        }
        return band;
    }

    /** As the rules of a plan have it: each stay as long as one set-point asks. */
    PlanQuestion exact() {
        return exact;
    }

    /**
     * The same with everything made easier that the rules of a plan see more strictly than the judge of a move does: each stay lasts
     * only as long as at its best set-point. So no arrangement places more than can be placed here.
     */
    PlanQuestion easier() {
        return question(mat -> Objects.requireNonNull(held.get(mat)), wish -> {
            TreeMap<Integer, Integer> days = daysAt(wish);
            int shortest = days.values().stream().min(Integer::compare).orElseThrow();
            days.replaceAll((celsius, longer) -> shortest);
            return days;
        });
    }

    private PlanQuestion question(
            Function<MatSpace, Band> thermostat, Function<SpaceWish, TreeMap<Integer, Integer>> daysAt) {
        List<PlannedMat> planned = new ArrayList<>();
        List<FixedStay> fixed = new ArrayList<>();
        for (MatSpace mat : mats.values()) {
            PlannedMat asked = mat(mat, thermostat.apply(mat));
            planned.add(asked);
            addFixed(fixed, mat, asked);
        }
        List<Request> requests = displaced.stream()
                .map(each -> request(each, daysAt.apply(each.wish())))
                .toList();
        return new PlanQuestion(days, List.of(), planned, null, fixed, requests);
    }

    /** A day on which it is set to what its thermostat cannot hold is as one on which it cannot be used. */
    private PlannedMat mat(MatSpace mat, Band thermostat) {
        List<DayRange> out = new ArrayList<>();
        others.outages(mat.id()).forEach(outage -> out.add(new DayRange(outage.from(), outage.to())));
        days.from()
                .datesUntil(days.to())
                .filter(day -> degree(mat, day).stream().anyMatch(set -> !thermostat.contains(set)))
                .forEach(day -> out.add(new DayRange(day, day.plusDays(1))));
        return new PlannedMat(mat.id().toString(), mat.places().size(), thermostat, 0, null, mat.light(), out);
    }

    private static Request request(Displaced each, TreeMap<Integer, Integer> daysAt) {
        SpaceWish wish = each.wish();
        String id = each.id().toString();
        return new Request(
                id,
                id,
                1,
                wish.quarters(),
                null,
                daysAt,
                wish.earliest(),
                wish.ideal(),
                wish.latest(),
                wish.band(),
                wish.needsLight(),
                null);
    }

    private static TreeMap<Integer, Integer> daysAt(SpaceWish wish) {
        DoubleToIntFunction daysAt = wish.daysAt();
        return IntStream.rangeClosed(wish.band().lowC(), wish.band().highC())
                .boxed()
                .collect(Collectors.toMap(
                        celsius -> celsius,
                        celsius -> Math.max(1, daysAt.applyAsInt(celsius)),
                        (one, other) -> one,
                        TreeMap::new));
    }

    private static int longest(SpaceWish wish) {
        return daysAt(wish).values().stream().max(Integer::compare).orElseThrow();
    }

    private void addFixed(List<FixedStay> fixed, MatSpace mat, PlannedMat asked) {
        for (int number = 1; number <= mat.places().size(); number++) {
            for (Slot slot : SLOTS) {
                addFixed(fixed, mat, asked, number, slot);
            }
        }
    }

    /** Days in a row on which just this slot is taken, each run at one set-point. */
    private void addFixed(List<FixedStay> fixed, MatSpace mat, PlannedMat asked, int number, Slot slot) {
        UUID place = mat.places().get(number - 1);
        LocalDate since = days.from();
        Band band = null;
        for (LocalDate day = days.from(); !day.isAfter(days.to()); day = day.plusDays(1)) {
            Band now = day.isBefore(days.to()) && asked.servesOn(day) && takes(place, slot, day)
                    ? band(mat, asked, day)
                    : null;
            if (!Objects.equals(now, band)) {
                if (band != null) {
                    String id = "%s %d %s %s".formatted(mat.name(), number, slot.words(), since);
                    fixed.add(new FixedStay(
                            id, mat.id().toString(), false, number, slot, new DayRange(since, day), band));
                }
                since = day;
                band = now;
            }
        }
    }

    private Band band(MatSpace mat, PlannedMat asked, LocalDate day) {
        OptionalInt set = degree(mat, day);
        return set.isPresent() ? new Band(set.getAsInt(), set.getAsInt()) : asked.thermostat();
    }

    /** Whether a slot is all taken and no larger one around it is. */
    private boolean takes(UUID place, Slot slot, LocalDate day) {
        return isTaken(place, slot, day)
                && SLOTS.stream()
                        .filter(larger -> larger.quarters() > slot.quarters() && larger.overlaps(slot))
                        .noneMatch(larger -> isTaken(place, larger, day));
    }

    private boolean isTaken(UUID place, Slot slot, LocalDate day) {
        return Slot.of(1).stream()
                .filter(slot::overlaps)
                .noneMatch(quarter -> others.isFree(place, quarter, day, day.plusDays(1)));
    }

    /** A plan's places, by stay. */
    Map<UUID, SpaceOffer> offers(SeasonPlan plan) {
        SetPointDays setPoints = new SetPointDays(exact, plan.setPoints());
        Map<UUID, SpaceWish> wishes = displaced.stream().collect(Collectors.toMap(Displaced::id, Displaced::wish));
        Map<UUID, SpaceOffer> offers = new LinkedHashMap<>();
        for (PlacedStay stay : plan.placed()) {
            UUID id = UUID.fromString(stay.request());
            offers.put(id, offer(stay, setPoints, Objects.requireNonNull(wishes.get(id))));
        }
        return offers;
    }

    private SpaceOffer offer(PlacedStay stay, SetPointDays setPoints, SpaceWish wish) {
        MatSpace mat = Objects.requireNonNull(mats.get(stay.mat()));
        List<Double> celsius = stay.days()
                .from()
                .datesUntil(stay.days().to())
                .map(day -> celsius(mat, day, Objects.requireNonNull(setPoints.on(stay.mat(), day))))
                .toList();
        int shift = (int) (stay.days().from().toEpochDay() - wish.ideal().toEpochDay());
        return new SpaceOffer(
                mat,
                mat.places().get(stay.place() - 1),
                stay.place(),
                stay.slot(),
                new WarmDays(stay.days().from(), celsius),
                celsius.get(0),
                shift);
    }
}
