package warmshelf.shelf;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One line of a board told as a list.
 *
 * @param stay null where the place is wholly free
 * @param celsius the mat's set-point of the day; null where there is none
 * @param outage why its mat cannot be used on the day; null where it can
 */
public record BoardLine(
        PlaceOnSite spot,
        @Nullable StayOnBoard stay,
        @Nullable Double celsius,
        @Nullable Outage outage) {

    /** Every place on a day in walking order, with what lies there. */
    public static List<BoardLine> ofDay(List<PlaceOnSite> spots, Board board, LocalDate day) {
        return spots.stream().flatMap(spot -> ofPlace(spot, board, day)).toList();
    }

    /** Every stay in walking order, then by day. */
    public static List<BoardLine> ofStays(List<PlaceOnSite> spots, Board board) {
        return spots.stream()
                .flatMap(spot -> board.at(spot.place().id()).stream()
                        .sorted(Comparator.comparing(StayOnBoard::from).thenComparing(StayOnBoard::firstQuarter))
                        .map(stay -> new BoardLine(spot, stay, null, null)))
                .toList();
    }

    private static Stream<BoardLine> ofPlace(PlaceOnSite spot, Board board, LocalDate day) {
        Mat mat = spot.mat();
        Double celsius =
                mat == null ? null : board.setPoints().on(mat.id(), day).orElse(null);
        Outage outage = mat == null ? null : board.outage(mat.id(), day).orElse(null);
        List<StayOnBoard> lying = board.lying(spot.place().id(), day);
        return lying.isEmpty()
                ? Stream.of(new BoardLine(spot, null, celsius, outage))
                : lying.stream().map(stay -> new BoardLine(spot, stay, celsius, outage));
    }
}
