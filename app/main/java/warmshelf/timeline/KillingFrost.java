package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.ColdLimit;
import warmshelf.crop.Crop;
import warmshelf.frost.FirstFrost;
import warmshelf.frost.Threshold;
import warmshelf.frost.evidence.ThresholdShift;
import warmshelf.frost.station.Side;

/**
 * The autumn cold that ends a crop's harvest: it kills the crop, or ends its growth.
 *
 * @param told how it varies from year to year; null: only one day of it is known
 * @param usual that day, or the one before which half of the autumns have had it; null: fewer have any
 * @param kills whether it kills; else the crop stands on, and nothing more ripens
 */
record KillingFrost(@Nullable FirstFrost told, @Nullable LocalDate usual, boolean kills) {
    /**
     * What bears more than this grows no more after it: days are short and cool by then. Ours, set at the severe freeze of the
     * US weather service (below 25 °F), which ends most growing seasons.
     */
    static final double GROWTH_ENDS_C = -4.4;

    /** Where one date is all that is known: the middle of how first frosts differ from year to year over the bundled grid. */
    private static final double USUAL_YEAR_SD_DAYS = 11;

    /** What ends the ripening of a crop; empty where nothing is known of the autumn. */
    static Optional<KillingFrost> of(FrostDates dates, Crop crop) {
        double bears = ColdLimit.of(crop).bearsC();
        return at(dates, Math.max(bears, GROWTH_ENDS_C), bears >= GROWTH_ENDS_C);
    }

    /** The usual day of a night that is colder than the crop is known to bear; empty where frost kills it, or none is usual. */
    static Optional<LocalDate> standsUntil(FrostDates dates, Crop crop) {
        ColdLimit limit = ColdLimit.of(crop);
        return limit.frostKills()
                ? Optional.empty()
                : at(dates, limit.bearsC(), true).map(KillingFrost::usual);
    }

    /** The day before which it comes in the accepted share of autumns; empty where there is none to fear, or it is unknown. */
    static Optional<LocalDate> atRisk(FrostDates dates, Crop crop) {
        double bears = ColdLimit.of(crop).bearsC();
        return Optional.ofNullable(dates.firstAutumnAtRisk())
                .map(first -> first.plusDays(Math.round(
                        dates.autumn() == null
                                ? usualDaysTo(bears)
                                : dates.autumn().daysTo(bears))));
    }

    static Optional<KillingFrost> at(FrostDates dates, double celsius, boolean kills) {
        AutumnFrosts autumn = dates.autumn();
        if (autumn != null) {
            FirstFrost first = autumn.at(celsius);
            return Optional.of(new KillingFrost(first, first.usual().orElse(null), kills));
        }
        return Optional.ofNullable(dates.firstAutumnAtRisk())
                .map(first -> new KillingFrost(null, first.plusDays(Math.round(usualDaysTo(celsius))), kills));
    }

    private static double usualDaysTo(double celsius) {
        double apart = ThresholdShift.days(Side.AUTUMN, Threshold.KILLING, USUAL_YEAR_SD_DAYS);
        return celsius >= 0 ? 0 : celsius / Threshold.KILLING.celsius() * apart;
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
