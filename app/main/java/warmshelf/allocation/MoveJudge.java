package warmshelf.allocation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import warmshelf.web.DayWords;

/** Says what a move would come to and what clashes, from a board on which the moved stay itself does not count. */
public final class MoveJudge {
    private final Board board;
    private final List<Neighbour> neighbours;
    private final LocalDate today;

    public MoveJudge(Board board, List<Neighbour> neighbours, LocalDate today) {
        this.board = board;
        this.neighbours = List.copyOf(neighbours);
        this.today = today;
    }

    /**
     * Judges a move of a stay that has not ended.
     *
     * @param daysAt days it must lie there by set-point, of use only for what has not begun
     */
    public MoveOutlook judge(LyingStay lying, StayMove move, MovePlace place, IntUnaryOperator daysAt) {
        boolean begun = lying.isBegunBy(today);
        LocalDate from = begun ? today : move.from();
        // What lies there already keeps its last day: how long it takes was decided when it was sown.
        IntUnaryOperator days = begun ? celsius -> (int) (lying.stay().to().toEpochDay() - today.toEpochDay()) : daysAt;
        Integer celsius = lying.band() == null || place.mat() == null
                ? null
                : setPoint(lying, lying.band(), move, place.mat(), from, days);
        LocalDate to = from.plusDays(
                celsius == null && !begun ? lying.days() : days.applyAsInt(Objects.requireNonNullElse(celsius, 0)));
        Spot spot = new Spot(place.id(), move.slot(), from, to);
        List<String> clashes = new ArrayList<>();
        addBadDay(clashes, lying, move, begun);
        addOtherKind(clashes, lying, place);
        addTaken(clashes, spot, place);
        if (celsius != null && lying.band() != null && place.mat() != null) {
            addWarmth(clashes, spot, place.mat(), celsius, lying.band());
        }
        return new MoveOutlook(place, spot, celsius, clashes, isSame(lying, spot, celsius, begun));
    }

    private static boolean isSame(LyingStay lying, Spot spot, @Nullable Integer celsius, boolean begun) {
        Stay stay = lying.stay();
        return stay.placeId().equals(spot.placeId())
                && stay.slot().equals(spot.slot())
                && (begun || stay.from().equals(spot.from()))
                && Objects.equals(lying.celsius(), celsius);
    }

    /** The one wished; else, of those that suit seed and thermostat, the one nearest to the mat's that it can keep. */
    private int setPoint(
            LyingStay lying, Band band, StayMove move, MatSpace mat, LocalDate from, IntUnaryOperator days) {
        if (move.celsius() != null) {
            return move.celsius();
        }
        Integer own = mat.id().equals(lying.matId()) ? lying.celsius() : null;
        int usual = own == null ? mat.usualC() : own;
        int wanted = board.setPoint(mat.id(), from).orElse(usual);
        List<Integer> fitting = IntStream.rangeClosed(
                        Math.max(mat.thermostat().lowC(), band.lowC()),
                        Math.min(mat.thermostat().highC(), band.highC()))
                .boxed()
                .sorted(Comparator.comparingInt(celsius -> Math.abs(celsius - wanted)))
                .toList();
        return fitting.stream()
                .filter(celsius -> board.canHold(mat.id(), celsius, from, from.plusDays(days.applyAsInt(celsius))))
                .findFirst()
                .orElse(fitting.isEmpty() ? band.nearestTo(wanted) : fitting.get(0));
    }

    private void addBadDay(List<String> clashes, LyingStay lying, StayMove move, boolean begun) {
        boolean otherDay =
                !move.from().equals(today) && !move.from().equals(lying.stay().from());
        if (begun && otherDay) {
            clashes.add("It lies there since %s, so its days stay; only its place can change, from today on."
                    .formatted(DayWords.day(lying.stay().from())));
        }
    }

    private static void addOtherKind(List<String> clashes, LyingStay lying, MovePlace place) {
        if (lying.stay().isOnMat() && place.mat() == null) {
            clashes.add("There is no bottom heat under the light; it goes there when an entry says that it is up.");
        } else if (!lying.stay().isOnMat() && place.mat() != null) {
            clashes.add("It lies under a light, so it moves to another place under a light, not to a mat.");
        }
    }

    private void addTaken(List<String> clashes, Spot spot, MovePlace place) {
        if (board.isFree(spot.placeId(), spot.slot(), spot.from(), spot.to())) {
            return;
        }
        String where = place.mat() == null
                ? "under the light"
                : "on mat " + place.mat().name();
        neighbours.stream()
                .filter(neighbour -> neighbour.isInTheWayOf(spot))
                .forEach(neighbour -> clashes.add("Place %d %s is taken by %s from %s until %s."
                        .formatted(
                                place.number(),
                                where,
                                neighbour.words(),
                                DayWords.date(neighbour.from()),
                                DayWords.date(neighbour.to().minusDays(1)))));
    }

    private void addWarmth(List<String> clashes, Spot spot, MatSpace mat, int celsius, Band band) {
        if (!band.contains(celsius)) {
            clashes.add("%s is outside what this crop's seed likes: %s.".formatted(Band.words(celsius), band.words()));
        }
        if (!mat.thermostat().contains(celsius)) {
            clashes.add("Mat %s can hold %s, not %s."
                    .formatted(mat.name(), mat.thermostat().words(), Band.words(celsius)));
        }
        spot.from()
                .datesUntil(spot.to())
                .filter(day -> board.setPoint(mat.id(), day).orElse(celsius) != celsius)
                .findFirst()
                .ifPresent(day ->
                        clashes.add("Mat %s stands at %s on %s for what already lies there, so it cannot be %s."
                                .formatted(
                                        mat.name(),
                                        Band.words(board.setPoint(mat.id(), day).orElse(celsius)),
                                        DayWords.date(day),
                                        Band.words(celsius))));
    }
}
