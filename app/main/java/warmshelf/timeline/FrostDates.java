package warmshelf.timeline;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.frost.FrostClimate;

/**
 * The frosts around one growing season in one garden.
 *
 * @param lastSpringAverage day after which half the springs still have a frost; null: there is none to fear
 * @param lastSpringAtRisk day after which only the accepted share of springs still has a frost; null: none to fear
 * @param firstAutumnAtRisk day before which only the accepted share of autumns already had a frost; null: none to fear, or
 *     not known
 * @param autumn when the first frosts of the autumn come, as distributions; null: only a date is known, or nothing
 */
public record FrostDates(
        @Nullable LocalDate lastSpringAverage,
        @Nullable LocalDate lastSpringAtRisk,
        @Nullable LocalDate firstAutumnAtRisk,
        @Nullable AutumnFrosts autumn) {
    private static final double AVERAGE = 0.5;

    /** Dates alone: how the frosts vary from year to year is not known. */
    public FrostDates(
            @Nullable LocalDate lastSpringAverage,
            @Nullable LocalDate lastSpringAtRisk,
            @Nullable LocalDate firstAutumnAtRisk) {
        this(lastSpringAverage, lastSpringAtRisk, firstAutumnAtRisk, null);
    }

    /**
     * The dates of a season that the climates of a garden tell.
     *
     * @param climate of frost at 0 °C
     * @param killing of killing frost
     */
    public static FrostDates of(FrostClimate climate, FrostClimate killing, double risk, int season) {
        return new FrostDates(
                climate.lastSpringFrost(AVERAGE, season).orElse(null),
                climate.lastSpringFrost(risk, season).orElse(null),
                climate.firstAutumnFrost(risk, season).orElse(null),
                new AutumnFrosts(climate.firstFrost(season), killing.firstFrost(season)));
    }

    /** One date each, as a person knows them by heart. */
    public static FrostDates of(LocalDate lastSpring, @Nullable LocalDate firstAutumn) {
        return new FrostDates(lastSpring, lastSpring, firstAutumn);
    }

    /** Whether any frost of spring is to be feared. */
    boolean isFrostFeared() {
        return lastSpring() != null;
    }

    /** Whether the autumn's frosts begin before the spring's have ended, so that nothing tender can stand outdoors. */
    boolean neverFrostFree() {
        LocalDate lastSpring = lastSpring();
        return lastSpring != null && firstAutumnAtRisk != null && !firstAutumnAtRisk.isAfter(lastSpring);
    }

    /** The first autumn frost of 0 °C in half of the years, or the one date that is known; empty where none is usual. */
    public Optional<LocalDate> usualFirstFrost() {
        return autumn == null
                ? Optional.ofNullable(firstAutumnAtRisk)
                : autumn.frost().usual();
    }

    /** The parts of the year for which a crop can be sown where these frosts are, in their order. */
    public List<SeasonPart> parts(Crop crop) {
        return SeasonPart.of(crop).stream()
                .filter(part -> part == SeasonPart.SPRING
                        || BeforeFirstFrost.of(crop, part, this).isPresent())
                .toList();
    }

    private @Nullable LocalDate lastSpring() {
        return lastSpringAtRisk != null ? lastSpringAtRisk : lastSpringAverage;
    }
}
