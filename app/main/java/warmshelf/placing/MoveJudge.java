package warmshelf.placing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleToIntFunction;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.SpaceJudge;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayWarmth;
import warmshelf.allocation.Surroundings;
import warmshelf.allocation.WarmDays;

/** Says what a move would come to and what is in its way, from a board on which the moved stay itself does not count. */
public final class MoveJudge {
    private final Surroundings around;
    private final LocalDate today;

    public MoveJudge(Surroundings around, LocalDate today) {
        this.around = around;
        this.today = today;
    }

    /**
     * Judges a move of a stay that has not ended.
     *
     * @param daysAt days it must lie there by set-point, of use only for what has not begun
     */
    public MoveOutlook judge(LyingStay lying, StayMove move, CandidatePlace place, DoubleToIntFunction daysAt) {
        boolean begun = lying.isBegunBy(today);
        LocalDate from = begun ? today : move.from();
        List<Obstacle> obstacles = new ArrayList<>();
        if (begun
                && !move.from().equals(today)
                && !move.from().equals(lying.stay().from())) {
            obstacles.add(new Obstacle.DaysStay(lying.stay().from()));
        }
        if (begun) {
            around.holds()
                    .keepsIn(lying.stay().placeId(), place.id())
                    .map(Obstacle.RackIsHeld::new)
                    .ifPresent(obstacles::add);
        }
        Band band = lying.band();
        SpaceJudge judge = new SpaceJudge(around, Set.of(lying.stay().placeId()));
        MatSpace mat = place.mat();
        if (lying.stay().isOnMat() != (mat != null)) {
            obstacles.add(new Obstacle.OtherKind(lying.stay().isOnMat()));
        }
        if (mat == null || band == null) {
            LocalDate to = begun ? lying.stay().to() : from.plusDays(lying.days());
            PlaceAndDays spot = new PlaceAndDays(place.id(), move.slot(), from, to);
            obstacles.addAll(judge.underLight(place, spot));
            return new MoveOutlook(place, spot, null, obstacles, isSame(lying, spot, null, begun));
        }
        WarmDays warm = warm(lying, band, move, mat, from, daysAt);
        PlaceAndDays spot = new PlaceAndDays(place.id(), move.slot(), from, warm.to());
        obstacles.addAll(judge.onMat(place, mat, spot, warm, band, lying.needsLightOn(mat)));
        return new MoveOutlook(place, spot, warm, obstacles, isSame(lying, spot, warm, begun));
    }

    private static boolean isSame(LyingStay lying, PlaceAndDays spot, @Nullable WarmDays warm, boolean begun) {
        Stay stay = lying.stay();
        WarmDays now = lying.warm();
        return stay.placeId().equals(spot.placeId())
                && stay.slot().equals(spot.slot())
                && (begun || stay.from().equals(spot.from()))
                && (now == null ? warm == null : warm != null && now.agreesWith(warm));
    }

    /**
     * As the mat is set; on days on which nothing is set at the set-point wished, else, of those that suit seed and thermostat, at
     * the one nearest to the mat's that it can keep.
     */
    private WarmDays warm(
            LyingStay lying, Band band, StayMove move, MatSpace mat, LocalDate from, DoubleToIntFunction daysAt) {
        if (move.celsius() != null) {
            return warm(lying, band, mat, from, move.celsius(), daysAt);
        }
        Double own = mat.id().equals(lying.matId()) ? lying.celsius() : null;
        double usual = own == null ? mat.usualC() : own;
        double wanted = around.board()
                .setPoint(mat.id(), from)
                .orElse(around.board().readyAt(mat.id(), from).orElse(usual));
        List<Double> fitting = new StayWarmth(around.board(), mat, band).fitting(wanted);
        return fitting.stream()
                .map(celsius -> warm(lying, band, mat, from, celsius, daysAt))
                .filter(warm -> SpaceJudge.tooWarmOrCold(around.board(), mat, warm, band)
                        .isEmpty())
                .findFirst()
                .orElseGet(() -> warm(
                        lying, band, mat, from, fitting.isEmpty() ? band.nearestTo(wanted) : fitting.get(0), daysAt));
    }

    /** What lies there already keeps its last day: how long it takes was decided when it was sown. */
    private WarmDays warm(
            LyingStay lying, Band band, MatSpace mat, LocalDate from, double asked, DoubleToIntFunction daysAt) {
        StayWarmth warmth = new StayWarmth(around.board(), mat, band);
        return lying.isBegunBy(today) ? warmth.over(from, lying.stay().to(), asked) : warmth.from(from, asked, daysAt);
    }
}
