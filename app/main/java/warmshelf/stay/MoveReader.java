package warmshelf.stay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import warmshelf.allocation.Band;
import warmshelf.allocation.LyingStay;
import warmshelf.allocation.LyingStore;
import warmshelf.allocation.MoveJudge;
import warmshelf.allocation.MoveOutlook;
import warmshelf.allocation.MovePlace;
import warmshelf.allocation.Neighbour;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Spot;
import warmshelf.sowing.Asking;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStore;
import warmshelf.web.Choice;
import warmshelf.web.DayWords;

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
        IntUnaryOperator days = daysAt(stay, today);
        LocalDate from =
                wish.move().from().isBefore(today) ? today : wish.move().from();
        LocalDate to = from.plusDays(longest(stay, days));
        LyingStore.Surroundings around = lying.around(
                stay.stay().id(),
                List.of(wish.place()),
                from.isAfter(today) && stay.isBegunBy(today) ? today : from,
                to.isBefore(stay.stay().to()) ? stay.stay().to() : to);
        return new MoveJudge(around.board(), around.neighbours(), today).judge(stay, wish.move(), wish.place(), days);
    }

    private IntUnaryOperator daysAt(LyingStay stay, LocalDate today) {
        return sowings.find(stay.stay().sowingId())
                .map(sowing -> planner.daysAt(Asking.of(sowing), today, stay.days()))
                .orElse(celsius -> stay.days());
    }

    private static int longest(LyingStay stay, IntUnaryOperator days) {
        Band band = stay.band();
        return band == null
                ? stay.days()
                : Math.max(
                        stay.days(),
                        IntStream.rangeClosed(band.lowC(), band.highC())
                                .map(days)
                                .max()
                                .orElse(0));
    }

    /** Every place of its kind, in words: free on the days of the stay, or taken by whom and until when. */
    List<PlaceGroup> choices(LyingStay stay, LocalDate today) {
        List<MovePlace> places = lying.places().stream()
                .filter(place -> (place.mat() != null) == stay.stay().isOnMat())
                .toList();
        LocalDate from = stay.firstDayFrom(today);
        LocalDate to = stay.isBegunBy(today) ? stay.stay().to() : from.plusDays(stay.days());
        LyingStore.Surroundings around = lying.around(stay.stay().id(), places, from, to);
        Map<String, List<Choice>> groups = new LinkedHashMap<>();
        for (MovePlace place : places) {
            for (Slot slot : Slot.of(stay.stay().slot().quarters())) {
                groups.computeIfAbsent(groupWords(place, stay), words -> new ArrayList<>())
                        .add(choice(place, new Spot(place.id(), slot, from, to), stay, around));
            }
        }
        return groups.entrySet().stream()
                .map(group -> new PlaceGroup(group.getKey(), group.getValue()))
                .toList();
    }

    private static String groupWords(MovePlace place, LyingStay stay) {
        if (place.mat() == null) {
            return "Under the light · " + place.where();
        }
        String words = "Mat %s · %s".formatted(place.mat().name(), place.where());
        boolean suits = stay.band() == null || place.mat().thermostat().overlaps(stay.band());
        return suits ? words : words + " · cannot be warm or cool enough";
    }

    private static Choice choice(MovePlace place, Spot spot, LyingStay stay, LyingStore.Surroundings around) {
        boolean here = spot.placeId().equals(stay.stay().placeId())
                && spot.slot().equals(stay.stay().slot());
        String state = around.neighbours().stream()
                .filter(neighbour -> neighbour.isInTheWayOf(spot))
                .findFirst()
                .map(neighbour -> taken(neighbour))
                .orElse(here ? "where it is" : "free");
        return new Choice(
                MoveForm.key(spot.placeId(), spot.slot()),
                "%s, %s: %s".formatted(shortWords(place), spot.slot().words(), state));
    }

    private static String shortWords(MovePlace place) {
        return place.mat() == null
                ? "Place " + place.number()
                : "%s, place %d".formatted(place.mat().name(), place.number());
    }

    private static String taken(Neighbour neighbour) {
        return "taken until %s, %s".formatted(DayWords.date(neighbour.to().minusDays(1)), neighbour.words());
    }
}
