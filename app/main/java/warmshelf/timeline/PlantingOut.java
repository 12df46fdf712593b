package warmshelf.timeline;

import java.time.LocalDate;

/** What decides when the plants leave the house. */
public sealed interface PlantingOut {
    /** Outdoors, when the frosts allow. */
    record ByFrost(FrostDates dates, SeasonPart part) implements PlantingOut {
        /** From spring on. */
        public ByFrost(FrostDates dates) {
            this(dates, SeasonPart.SPRING);
        }
    }

    /** Into a greenhouse, tunnel or cold frame, on a day that the grower names. */
    record UnderCover(LocalDate onDay) implements PlantingOut {}

    /** For which part of the year; under cover there is one alone. */
    default SeasonPart seasonPart() {
        return this instanceof ByFrost frost ? frost.part() : SeasonPart.SPRING;
    }
}
