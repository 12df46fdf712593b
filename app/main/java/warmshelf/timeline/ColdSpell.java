package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.SeedTreatment;
import warmshelf.guide.Advice;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/**
 * The weeks that a crop's seed lies cold and moist before it is sown.
 *
 * @param least the fewest weeks
 * @param most the most; never fewer
 */
public record ColdSpell(int least, int most) {
    private static final int DAYS_OF_A_WEEK = 7;

    /** Empty for seed that wants no cold. */
    public static Optional<ColdSpell> of(Crop crop) {
        return of(crop.treatment().coldWeeks());
    }

    static Optional<ColdSpell> of(SeedTreatment.Span weeks) {
        Integer least = weeks.least();
        Integer most = weeks.most();
        if (least == null || most == null) {
            return Optional.ofNullable(least == null ? most : least).map(only -> new ColdSpell(only, only));
        }
        return Optional.of(new ColdSpell(least, most));
    }

    /** The middle of its weeks, in days. */
    public int usualDays() {
        return (least + most) * DAYS_OF_A_WEEK / 2;
    }

    /** When to put seed into the cold that is to be sown on these days. */
    DateWindow before(DateWindow sowing) {
        return sowing.plusDays(-most * DAYS_OF_A_WEEK, -usualDays(), -least * DAYS_OF_A_WEEK);
    }

    /** The first day on which seed may be sown that lies in the cold from a day on. */
    LocalDate sownFrom(LocalDate chilled) {
        return chilled.plusWeeks(least);
    }

    /**
     * The days of sowing, moved so far that the cold still comes before them.
     *
     * @param chilled the day on which the seed was put into the cold; null: not yet
     * @return empty where that leaves no day to sow it in time
     */
    Optional<DateWindow> delayed(DateWindow sowing, @Nullable LocalDate chilled, LocalDate today) {
        LocalDate first = sownFrom(chilled == null ? today : chilled);
        boolean late = chilled == null && first.isAfter(sowing.latest());
        return late ? Optional.empty() : Optional.of(sowing.notBefore(first));
    }

    /** That there is no time left for it, in a sentence. */
    String noTime(Units units) {
        return Advice.in(units).say(Advice.stepFile("chill"), "no time", Map.of("weeks", Counted.weeks(least, most)));
    }

    Reason why(TimelineQuestion question, LocalDate sowing) {
        return Step.CHILL.why(
                "why",
                Map.of("weeks", Counted.weeks(least, most), "sowing", DayWords.dayOfMonth(sowing)),
                question.units());
    }
}
