package warmshelf.placing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.WarmDays;
import warmshelf.words.Units;

/**
 * What a move would come to.
 *
 * @param warm the mat's set-points, from the first day to the last; null under a light
 * @param obstacles each thing in the way; none when it fits
 * @param same whether everything would be as it is
 */
public record MoveOutlook(
        CandidatePlace place, PlaceAndDays spot, @Nullable WarmDays warm, List<Obstacle> obstacles, boolean same) {
    public MoveOutlook {
        obstacles = List.copyOf(obstacles);
    }

    public boolean fits() {
        return obstacles.isEmpty();
    }

    /** A sentence for each thing in the way, in a reader's units. */
    public List<String> clashes(Units units) {
        return obstacles.stream().map(each -> each.words(units)).toList();
    }

    /** What a form sends along, so that nothing else is saved than what was shown. */
    public String key() {
        return "%s/%d/%s/%s/%s"
                .formatted(
                        spot.placeId(),
                        spot.slot().firstQuarter(),
                        spot.from(),
                        spot.to(),
                        Objects.requireNonNullElse(warm == null ? null : warm.key(), ""));
    }
}
