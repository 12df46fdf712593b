package warmshelf.frost.evidence;

import static warmshelf.frost.evidence.EvidenceSentences.SAY;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.FrostSeason;
import warmshelf.frost.MeasuredError;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;
import warmshelf.frost.station.StationFrost;

/**
 * A place whose frost dates the group has brought in, typed in, or noted night by night.
 *
 * @param garden the member in whose garden a thermometer hangs; null: a station or a place of the group's
 */
public record LocalStation(
        UUID id,
        Kind kind,
        String name,
        double latitude,
        double longitude,
        double elevationM,
        String source,
        @Nullable UUID garden,
        Map<Threshold, Map<Side, SideDates>> dates) {

    private static final double USUAL_YEAR_SD = 12;
    /** A garden thermometer without a shelter is a degree or so off: about two days. */
    private static final double INSTRUMENT_SD_DAYS = 2;

    /** How its dates came about. */
    public enum Kind {
        PUBLISHED,
        NIGHTS,
        MONTHLY,
        THERMOMETER;

        public String words() {
            return switch (this) {
                case PUBLISHED -> SAY.publishedDates();
                case NIGHTS -> SAY.nightsOfStation();
                case MONTHLY -> SAY.twelveMeans();
                case THERMOMETER -> SAY.nightsOfThermometer();
            };
        }
    }

    /** The dates for one threshold; those of 0 °C moved where only these are known; empty where there are none. */
    Optional<StationFrost> at(Threshold threshold) {
        if (knows(threshold)) {
            return Optional.of(frost(threshold, Threshold.FROST));
        }
        return knows(Threshold.FROST) ? Optional.of(frost(Threshold.FROST, threshold)) : Optional.empty();
    }

    /** A season told for the place where this thermometer hangs, with what it has noted itself; empty where that is nothing. */
    Optional<SeasonBlend> blended(Threshold threshold, Side side, FrostSeason told) {
        SideDates own = of(threshold, side);
        if (own.medianDay().isEmpty()) {
            return Optional.empty();
        }
        double seasons = Math.max(1, own.seasons().orElse(1));
        double sampling = told.yearSdDays() / Math.sqrt(seasons);
        return Optional.of(
                SeasonBlend.ofOwn(told, own.medianDay().getAsDouble(), Math.hypot(sampling, INSTRUMENT_SD_DAYS)));
    }

    private boolean knows(Threshold threshold) {
        return of(threshold, Side.SPRING).medianDay().isPresent()
                && of(threshold, Side.AUTUMN).medianDay().isPresent();
    }

    /** What is known of one season at one threshold. */
    SideDates of(Threshold threshold, Side side) {
        return dates.getOrDefault(threshold, Map.of()).getOrDefault(side, SideDates.none());
    }

    private StationFrost frost(Threshold known, Threshold moveTo) {
        return new StationFrost(
                id.toString(),
                name,
                latitude,
                longitude,
                elevationM,
                Optional.of(new StationFrost.Dates(
                        StationFrost.days(median(known, Side.SPRING, moveTo), yearSd(known, Side.SPRING), Side.SPRING),
                        StationFrost.days(
                                median(known, Side.AUTUMN, moveTo), yearSd(known, Side.AUTUMN), Side.AUTUMN))),
                ownSdDays(known));
    }

    private double median(Threshold known, Side side, Threshold moveTo) {
        double day = of(known, side).medianDay().orElseThrow();
        return day + ThresholdShift.days(side, moveTo, yearSd(known, side).orElse(USUAL_YEAR_SD));
    }

    private OptionalDouble yearSd(Threshold threshold, Side side) {
        // A handful of years tells little of how far they spread; then it is not used for that.
        OptionalDouble seasons = of(threshold, side).seasons();
        boolean few = seasons.isPresent() && seasons.getAsDouble() < 10;
        return few ? OptionalDouble.empty() : of(threshold, side).yearSdDays();
    }

    /** How well its own median is known, apart from what sets any two places apart: a standard deviation in days. */
    private double ownSdDays(Threshold threshold) {
        double seasons = Math.min(seasons(threshold, Side.SPRING), seasons(threshold, Side.AUTUMN));
        double sampling = Double.isInfinite(seasons) ? 0 : USUAL_YEAR_SD / Math.sqrt(Math.max(1, seasons));
        return switch (kind) {
            case PUBLISHED, NIGHTS -> sampling;
            case MONTHLY -> MeasuredError.monthlySdDays(latitude, longitude);
            case THERMOMETER -> Math.hypot(sampling, INSTRUMENT_SD_DAYS);
        };
    }

    private double seasons(Threshold threshold, Side side) {
        return of(threshold, side).seasons().orElse(Double.POSITIVE_INFINITY);
    }
}
