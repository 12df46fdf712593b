package warmshelf.shelf;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The set-points of mats by day, in °C to a tenth; a mat without one on a day is not heated. */
public record SetPoints(Map<UUID, Map<LocalDate, Double>> byMat) {

    public Optional<Double> on(UUID matId, LocalDate day) {
        return Optional.ofNullable(byMat.getOrDefault(matId, Map.of()).get(day));
    }
}
