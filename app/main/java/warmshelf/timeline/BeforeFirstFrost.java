package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.SecondCrop;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/**
 * When plants for autumn, or to stand over winter, go out: counted back from the usual first frost. For autumn by the days to
 * the first harvest, from the fewest to the most of them, and those by which it is slower as days shorten and cool (Virginia
 * Cooperative Extension's formula; its weeks of harvest before the frost are left out, because that frost does not end it).
 */
record BeforeFirstFrost(DateWindow days, LocalDate frost) {
    /** Days by which a harvest in autumn is slower. */
    static final int SLOWER = SecondCrop.slowerInAutumn();

    /** Empty where the crop is not grown so, or no first frost is usual. */
    static Optional<BeforeFirstFrost> of(Crop crop, SeasonPart part, FrostDates dates) {
        return SeasonPart.of(crop).contains(part)
                ? dates.usualFirstFrost()
                        .flatMap(frost -> days(crop, part, frost).map(days -> new BeforeFirstFrost(days, frost)))
                : Optional.empty();
    }

    private static Optional<DateWindow> days(Crop crop, SeasonPart part, LocalDate frost) {
        return switch (part) {
            case SPRING -> Optional.empty();
            case AUTUMN -> crop.maturity().map(days -> forAutumn(crop, days, frost));
            case WINTER -> SecondCrop.overWinter(crop).map(span -> overWinter(span, frost));
        };
    }

    private static DateWindow forAutumn(Crop crop, DaysToMaturity days, LocalDate frost) {
        LocalDate ripeAtOnce = frost.minusDays(SLOWER);
        LocalDate earliest = ripeAtOnce.minusDays(days.max());
        LocalDate ideal = ripeAtOnce.minusDays((days.min() + days.max()) / 2);
        LocalDate latest = ripeAtOnce.minusDays(days.min());
        if (days.basis() == Basis.TRANSPLANTING) {
            return new DateWindow(earliest, ideal, latest);
        }
        LocalDate out = ideal.plusDays(SowingWindow.idealDaysIndoors(crop));
        return new DateWindow(
                DateWindow.earlier(out, earliest.plusWeeks(crop.weeksIndoorsMax())),
                out,
                DateWindow.later(out, latest.plusWeeks(crop.weeksIndoorsMin())));
    }

    private static DateWindow overWinter(SecondCrop.Span span, LocalDate frost) {
        return new DateWindow(
                frost.minusDays(span.most()),
                frost.minusDays((span.least() + span.most()) / 2),
                frost.minusDays(span.least()));
    }

    /** The figures that its reason names. */
    Map<String, Object> figures(Crop crop) {
        return Map.of(
                "frost",
                DayWords.dayOfMonth(frost),
                "ripe",
                crop.maturity().map(DaysToMaturity::words).orElse(""),
                "slower",
                Counted.days(SLOWER),
                "weeks",
                SecondCrop.overWinter(crop)
                        .map(span -> Counted.weeks(span.least() / 7, span.most() / 7))
                        .orElse(""));
    }
}
