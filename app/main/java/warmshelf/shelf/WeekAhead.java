package warmshelf.shelf;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What changes on some places within a week: the side of the racks.
 *
 * @param homeless what lies on a mat that cannot be used on the day
 * @param leaves what leaves its place, by day
 * @param arrives what is laid down for the first time, by day; what comes from another place is told where it leaves
 */
public record WeekAhead(List<Line> homeless, List<Day> leaves, List<Day> arrives) {
    private static final int DAYS = 7;

    /**
     * One tray on its way.
     *
     * @param spot the place that it leaves, or to which it comes
     * @param next where it goes on the day it leaves; null: off the racks
     */
    public record Line(
            LocalDate day,
            StayOnBoard stay,
            PlaceOnSite spot,
            @Nullable PlaceOnSite next) {}

    /** What leaves or arrives on one day. */
    public record Day(LocalDate day, List<Line> lines) {
        static List<Day> of(Stream<Line> lines) {
            Map<LocalDate, List<Line>> byDay =
                    lines.collect(Collectors.groupingBy(Line::day, TreeMap::new, Collectors.toList()));
            return byDay.entrySet().stream()
                    .map(each -> new Day(each.getKey(), each.getValue()))
                    .toList();
        }
    }

    /** The day up to but not on which a board must reach for it. */
    static LocalDate to(LocalDate day) {
        return day.plusDays(DAYS + 1L);
    }

    static WeekAhead of(List<PlaceOnSite> spots, Board board, LocalDate day) {
        Map<UUID, PlaceOnSite> places =
                spots.stream().collect(Collectors.toMap(spot -> spot.place().id(), Function.identity()));
        Map<UUID, List<StayOnBoard>> ofSowing = board.stays().stream()
                .filter(stay -> places.containsKey(stay.placeId()))
                .collect(Collectors.groupingBy(StayOnBoard::sowingId));
        return new WeekAhead(
                lines(ofSowing, StayOnBoard::to, places)
                        .filter(line -> line.stay().lies(day) && isOut(line.spot(), board, day))
                        .toList(),
                Day.of(lines(ofSowing, StayOnBoard::to, places).filter(line -> isNear(line.day(), day))),
                Day.of(lines(ofSowing, StayOnBoard::from, places)
                        .filter(line -> isNear(line.day(), day) && !comesFromElsewhere(line, ofSowing))));
    }

    private static Stream<Line> lines(
            Map<UUID, List<StayOnBoard>> ofSowing,
            Function<StayOnBoard, LocalDate> day,
            Map<UUID, PlaceOnSite> places) {
        return ofSowing.values().stream()
                .flatMap(List::stream)
                .map(stay -> new Line(
                        day.apply(stay),
                        stay,
                        Objects.requireNonNull(places.get(stay.placeId())),
                        next(stay, ofSowing)
                                .map(next -> places.get(next.placeId()))
                                .orElse(null)))
                .sorted(Comparator.comparing(Line::day)
                        .thenComparing(line -> line.stay().cropName())
                        .thenComparing(line -> line.stay().stayId()));
    }

    private static Optional<StayOnBoard> next(StayOnBoard stay, Map<UUID, List<StayOnBoard>> ofSowing) {
        return ofSowing.getOrDefault(stay.sowingId(), List.of()).stream()
                .filter(each -> each.from().equals(stay.to()))
                .findFirst();
    }

    private static boolean comesFromElsewhere(Line line, Map<UUID, List<StayOnBoard>> ofSowing) {
        return ofSowing.getOrDefault(line.stay().sowingId(), List.of()).stream()
                .anyMatch(each -> each.to().equals(line.stay().from()));
    }

    private static boolean isOut(PlaceOnSite spot, Board board, LocalDate day) {
        Mat mat = spot.mat();
        return mat != null && board.outage(mat.id(), day).isPresent();
    }

    private static boolean isNear(LocalDate each, LocalDate day) {
        return each.isAfter(day) && each.isBefore(to(day));
    }
}
