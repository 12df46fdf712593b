package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleToIntFunction;
import java.util.stream.IntStream;
import warmshelf.allocation.Band;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.allocation.Surroundings;
import warmshelf.decision.Reach;
import warmshelf.sowing.Asking;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStore;
import warmshelf.words.Choice;
import warmshelf.words.DayWords;

/** Works out what a move would come to, and which places there are to move to. */
final class MoveReader {
    private final LyingStore lying;
    private final SowingStore sowings;
    private final SowingPlanner planner;

    MoveReader(LyingStore lying, SowingStore sowings, SowingPlanner planner) {
        this.lying = lying;
        this.sowings = sowings;
        this.planner = planner;
    }

    /** The places of one mat or lit shelf to choose from. */
    public record PlaceGroup(String words, List<Choice> choices) {}

    MoveOutlook outlook(LyingStay stay, MoveForm.Wish wish, LocalDate today) {
        DoubleToIntFunction days = daysAt(stay, today);
        LocalDate from =
                wish.move().from().isBefore(today) ? today : wish.move().from();
        LocalDate to = from.plusDays(longest(stay, days));
        Surroundings around = lying.around(
                stay.stay().id(),
                List.of(wish.place()),
                from.isAfter(today) && stay.isBegunBy(today) ? today : from,
                to.isBefore(stay.stay().to()) ? stay.stay().to() : to);
        return new MoveJudge(around, today).judge(stay, wish.move(), wish.place(), days);
    }

    /** The place under a light that was booked for another last day on the mat than it would have. */
    Optional<Stay> booked(LyingStay stay, MoveOutlook outlook) {
        return lying.bookedAfter(stay)
                .filter(booked -> !booked.from().equals(outlook.spot().to()));
    }

    private DoubleToIntFunction daysAt(LyingStay stay, LocalDate today) {
        return sowings.find(stay.stay().sowingId())
                .map(sowing -> planner.daysAt(Asking.of(sowing), today, stay.days()))
                .orElse(celsius -> stay.days());
    }

    private static int longest(LyingStay stay, DoubleToIntFunction days) {
        Band band = stay.band();
        return band == null
                ? stay.days()
                : Math.max(
                        stay.days(),
                        // each half degree, from the coldest that counts as the lowest on
                        IntStream.rangeClosed(2 * band.lowC() - 1, 2 * band.highC())
                                .map(half -> days.applyAsInt(half / 2.0))
                                .max()
                                .orElse(0));
    }

    /** Every place of its kind on which somebody may decide and that is not retired, in words: whether it would fit there if nothing else were changed, or what is in the way. */
    List<PlaceGroup> choices(LyingStay stay, LocalDate today, Reach reach) {
        List<CandidatePlace> places = lying.places(reach).stream()
                .filter(place -> (place.mat() != null) == stay.stay().isOnMat())
                .toList();
        DoubleToIntFunction days = daysAt(stay, today);
        LocalDate from = stay.firstDayFrom(today);
        LocalDate to = from.plusDays(longest(stay, days));
        Surroundings around = lying.around(
                stay.stay().id(),
                places,
                from,
                to.isBefore(stay.stay().to()) ? stay.stay().to() : to);
        MoveJudge judge = new MoveJudge(around, today);
        Map<String, List<Choice>> groups = new LinkedHashMap<>();
        for (CandidatePlace place : places) {
            for (Slot slot : Slot.of(stay.stay().slot().quarters())) {
                StayMove move = new StayMove(stay.stay().id(), stay.stay().version(), place.id(), slot, from, null);
                MoveOutlook outlook = judge.judge(stay, move, place, days);
                if (outlook.obstacles().stream().noneMatch(Obstacle.Retired.class::isInstance)) {
                    groups.computeIfAbsent(groupWords(place), words -> new ArrayList<>())
                            .add(choice(outlook, stay));
                }
            }
        }
        return groups.entrySet().stream()
                .map(group -> new PlaceGroup(group.getKey(), group.getValue()))
                .toList();
    }

    private static String groupWords(CandidatePlace place) {
        return place.mat() == null
                ? SAY.underLight(place.where())
                : "Mat %s · %s".formatted(place.mat().name(), place.where());
    }

    private static Choice choice(MoveOutlook outlook, LyingStay stay) {
        PlaceAndDays spot = outlook.spot();
        boolean here = spot.placeId().equals(stay.stay().placeId())
                && spot.slot().equals(stay.stay().slot());
        String state = here
                ? SAY.whereItIs()
                : outlook.obstacles().stream()
                        .findFirst()
                        .map(MoveReader::shortWords)
                        .orElse("free");
        return new Choice(
                MoveForm.key(spot.placeId(), spot.slot()),
                "%s, %s: %s".formatted(shortWords(outlook.place()), spot.slot().words(), state));
    }

    private static String shortWords(CandidatePlace place) {
        return place.mat() == null
                ? "Place " + place.number()
                : "%s, place %d".formatted(place.mat().name(), place.number());
    }

    /** What is in the way, as short as a list needs it. */
    private static String shortWords(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.Taken taken) {
            return SAY.takenTo(DayWords.lastDay(taken.by().to()), taken.by().words());
        }
        if (obstacle instanceof Obstacle.Out out) {
            return SAY.outOfService(
                    DayWords.span(out.outage().from(), out.outage().to()));
        }
        if (obstacle instanceof Obstacle.BeyondThermostat || obstacle instanceof Obstacle.OutsideBand) {
            return SAY.cannotBeWarm();
        }
        if (obstacle instanceof Obstacle.SetForOthers set) {
            return SAY.tooWarmOn(DayWords.date(set.day()));
        }
        if (obstacle instanceof Obstacle.RackIsHeld) {
            return SAY.rackIsHeld();
        }
        return SAY.doesNotFit();
    }
}
