package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Hardiness;
import warmshelf.frost.FirstFrost;
import warmshelf.frost.Threshold;
import warmshelf.frost.evidence.ThresholdShift;
import warmshelf.frost.station.Side;

/**
 * The autumn frost that ends a crop's harvest.
 *
 * @param told how it varies from year to year; null: only one day of it is known
 * @param usual that day, or the one before which half of the autumns have had it; null: fewer have any
 */
record KillingFrost(@Nullable FirstFrost told, @Nullable LocalDate usual) {
    /** Where one date is all that is known: the middle of how first frosts differ from year to year over the bundled grid. */
    private static final double USUAL_YEAR_SD_DAYS = 11;

    /** Empty where nothing is known of the autumn. */
    static Optional<KillingFrost> of(FrostDates dates, Hardiness hardiness) {
        AutumnFrosts autumn = dates.autumn();
        if (autumn != null) {
            FirstFrost killing = autumn.killing(hardiness);
            return Optional.of(new KillingFrost(killing, killing.usual().orElse(null)));
        }
        return Optional.ofNullable(dates.firstAutumnAtRisk())
                .map(first -> new KillingFrost(null, first.plusDays(daysAfterFrost(hardiness))));
    }

    private static long daysAfterFrost(Hardiness hardiness) {
        double apart = ThresholdShift.days(Side.AUTUMN, Threshold.KILLING, USUAL_YEAR_SD_DAYS);
        return switch (hardiness) {
            case VERY_TENDER, TENDER -> 0;
            case HALF_HARDY -> Math.round(apart);
            case HARDY -> Math.round(2 * apart);
        };
    }

    /** The chance, 0..1, that it comes only after a day; empty where only one day of it is known. */
    OptionalDouble chanceLaterThan(LocalDate day) {
        return told == null ? OptionalDouble.empty() : OptionalDouble.of(told.chanceLaterThan(day));
    }

    /** Whether it comes after a day often enough; by the one day where no more is known. */
    boolean isLaterThan(LocalDate day, double often) {
        OptionalDouble chance = chanceLaterThan(day);
        return chance.isPresent() ? chance.getAsDouble() >= often : usual == null || day.isBefore(usual);
    }
}
