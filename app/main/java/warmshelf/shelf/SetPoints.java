package warmshelf.shelf;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The set-points of mats by day, in whole °C; a mat without one on a day is not heated. */
public record SetPoints(Map<UUID, Map<LocalDate, Integer>> byMat) {

    public Optional<Integer> on(UUID matId, LocalDate day) {
        return Optional.ofNullable(byMat.getOrDefault(matId, Map.of()).get(day));
    }
}
