package warmshelf.allocation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a move would come to.
 *
 * @param celsius the set-point throughout; null under a light
 * @param clashes a sentence for each thing in the way; none when it fits
 * @param same whether everything would be as it is
 */
public record MoveOutlook(
        MovePlace place, Spot spot, @Nullable Integer celsius, List<String> clashes, boolean same) {

    public boolean fits() {
        return clashes.isEmpty();
    }
}
