package warmshelf.timeline;

import java.time.LocalDate;

/** What decides when the plants leave the house. */
public sealed interface PlantingOut {
    /** Outdoors, when the frosts allow. */
    record ByFrost(FrostDates dates) implements PlantingOut {}

    /** Into a greenhouse, tunnel or cold frame, on a day that the grower names. */
    record UnderCover(LocalDate onDay) implements PlantingOut {}
}
