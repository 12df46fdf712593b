package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import warmshelf.words.DayWords;

/** Days to step to, with how full the places are on each. */
public record DayStrip(LocalDate day, List<DayLink> days) {
    static final int BEFORE = 1;
    static final int AFTER = 5;

    /**
     * One day of the strip.
     *
     * @param percent share of all quarters that are taken
     */
    public record DayLink(LocalDate day, int percent, boolean chosen, boolean today) {
        /** 'Today', or for example 'Tue 16'. */
        public String words() {
            return today ? SAY.today() : DayWords.weekday(day);
        }
    }

    static LocalDate from(LocalDate day) {
        return day.minusDays(BEFORE);
    }

    /** The days around the chosen one, counting only the places given. */
    public static DayStrip around(LocalDate day, LocalDate today, List<PlaceOnSite> spots, List<StayOnBoard> stays) {
        Set<UUID> places = spots.stream().map(spot -> spot.place().id()).collect(Collectors.toSet());
        return new DayStrip(
                day,
                IntStream.rangeClosed(-BEFORE, AFTER)
                        .mapToObj(day::plusDays)
                        .map(each ->
                                new DayLink(each, percent(places, stays, each), each.equals(day), each.equals(today)))
                        .toList());
    }

    private static int percent(Set<UUID> places, List<StayOnBoard> stays, LocalDate day) {
        int taken = stays.stream()
                .filter(stay -> stay.lies(day) && places.contains(stay.placeId()))
                .mapToInt(StayOnBoard::quarters)
                .sum();
        return places.isEmpty() ? 0 : (int) Math.round(100.0 * taken / (places.size() * Place.QUARTERS));
    }

    /** Whether today is a day to step to already. */
    public boolean hasToday() {
        return days.stream().anyMatch(DayLink::today);
    }

    public LocalDate previousWeek() {
        return day.minusWeeks(1);
    }

    public LocalDate nextWeek() {
        return day.plusWeeks(1);
    }
}
