package warmshelf.allocation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.shelf.Retirements;

/**
 * Says whether something may lie on a place: the one judge for what pages offer and for what is saved. Who looks reads the board
 * as it stands; who saves holds the mat first, so that it stands still.
 */
public final class SpaceJudge {
    private final SpaceCalendar board;
    private final List<Neighbour> neighbours;
    private final RackHolds holds;
    private final Retirements retired;
    private final Set<UUID> lies;

    /** For what lies nowhere yet. */
    public SpaceJudge(Surroundings around) {
        this(around, Set.of());
    }

    /** @param lies the places where what is to be laid down lies or is booked already; on their racks it is nothing new */
    public SpaceJudge(Surroundings around, Set<UUID> lies) {
        board = around.board();
        neighbours = around.neighbours();
        holds = around.holds();
        retired = around.retired();
        this.lies = Set.copyOf(lies);
    }

    /** Everything in the way of lying under a light. */
    public List<Obstacle> underLight(CandidatePlace place, PlaceAndDays spot) {
        List<Obstacle> obstacles = new ArrayList<>();
        addTaken(obstacles, place, spot);
        retired.inTheWay(place.id(), spot.to()).map(Obstacle.Retired::new).ifPresent(obstacles::add);
        return obstacles;
    }

    /**
     * Everything in the way of lying on a mat at those set-points.
     *
     * @param needsLight whether its seed comes up in light only, and nobody has said that it gets it otherwise
     */
    public List<Obstacle> onMat(
            CandidatePlace place, MatSpace mat, PlaceAndDays spot, WarmDays warm, Band band, boolean needsLight) {
        List<Obstacle> obstacles = new ArrayList<>();
        addTaken(obstacles, place, spot);
        board.outages(mat.id()).stream()
                .filter(out -> out.touches(spot.from(), spot.to()))
                .findFirst()
                .ifPresent(out ->
                        obstacles.add(out.isForGood() ? new Obstacle.Retired(out.from()) : new Obstacle.Out(mat, out)));
        if (needsLight && mat.light().isDark()) {
            obstacles.add(new Obstacle.Dark(mat));
        }
        tooWarmOrCold(board, mat, warm, band).ifPresent(obstacles::add);
        return obstacles;
    }

    private void addTaken(List<Obstacle> obstacles, CandidatePlace place, PlaceAndDays spot) {
        // What began to lie there before its rack was held is nothing new.
        holds.keepsOut(lies, place.id())
                .filter(hold -> !spot.from().isBefore(hold.since()))
                .map(Obstacle.RackTakesNothing::new)
                .ifPresent(obstacles::add);
        if (spot.to().isAfter(board.to())) {
            obstacles.add(new Obstacle.TooFar(board.to().minusDays(1)));
        }
        neighbours.stream()
                .filter(neighbour -> neighbour.isInTheWayOf(spot))
                .forEach(neighbour -> obstacles.add(new Obstacle.Taken(place, neighbour)));
    }

    /** The first day on which the set-points do not suit the seed, the thermostat, or what else lies on the mat. */
    public static Optional<Obstacle> tooWarmOrCold(SpaceCalendar board, MatSpace mat, WarmDays warm, Band band) {
        return warm.from()
                .datesUntil(warm.to())
                .map(day -> onDay(board, mat, day, warm.on(day), band))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Obstacle> onDay(
            SpaceCalendar board, MatSpace mat, LocalDate day, double celsius, Band band) {
        return Optional.ofNullable(obstacle(board, mat, day, celsius, band));
    }

    private static @Nullable Obstacle obstacle(
            SpaceCalendar board, MatSpace mat, LocalDate day, double celsius, Band band) {
        double stands = board.setPoint(mat.id(), day).orElse(celsius);
        if (stands != celsius) {
            return new Obstacle.TurnedSince(mat, day, stands, celsius);
        }
        boolean set = board.setPoint(mat.id(), day).isPresent();
        if (!band.contains(celsius)) {
            return set ? new Obstacle.SetForOthers(mat, day, celsius, band) : new Obstacle.OutsideBand(celsius, band);
        }
        return set || mat.thermostat().contains(celsius) ? null : new Obstacle.BeyondThermostat(mat, celsius);
    }
}
