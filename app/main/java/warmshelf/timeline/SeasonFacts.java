package warmshelf.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import warmshelf.crop.BoltingLimit;
import warmshelf.crop.Crop;
import warmshelf.crop.LifeCycle;
import warmshelf.crop.LifeCycle.Life;
import warmshelf.timeline.PlantingOut.ByFrost;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/**
 * What else is to be known of a sowing's season.
 *
 * @param part for which part of the year it is
 * @param again how to sow it again and again; empty where it is not, or no time is left
 * @param standsUntil the usual day of a night colder than it is known to bear; empty where frost kills it, or none is usual
 * @param life how many years it lives, where that is more than one
 * @param bolting the cold that makes it flower while young
 */
public record SeasonFacts(
        SeasonPart part,
        Optional<SowAgain> again,
        Optional<LocalDate> standsUntil,
        Optional<LifeCycle> life,
        Optional<BoltingLimit> bolting) {
    private static final TimelineSentences SAY = TimelineSentences.SAY;

    static SeasonFacts of(TimelineQuestion question, Optional<SowAgain> again) {
        Crop crop = question.crop();
        return new SeasonFacts(
                question.plantingOut().seasonPart(),
                again,
                question.plantingOut() instanceof ByFrost frost && !standsWinters(crop, frost.part())
                        ? KillingFrost.standsUntil(frost.dates(), crop)
                        : Optional.empty(),
                LifeCycle.of(crop),
                BoltingLimit.of(crop));
    }

    /** Whether it is meant to live on, so that no frost of its first autumn ends it. */
    private static boolean standsWinters(Crop crop, SeasonPart part) {
        return part == SeasonPart.WINTER
                || LifeCycle.of(crop)
                        .filter(cycle -> cycle.life() == Life.PERENNIAL || cycle.cropInYear() > 1)
                        .isPresent();
    }

    /** In sentences, such as 'Sow again every 14 days until 12 June.'. */
    public List<String> sentences(Units units) {
        List<String> sentences = new ArrayList<>();
        again.ifPresent(each ->
                sentences.add(SAY.sowAgain(days(each.daysMin(), each.daysMax()), DayWords.dayOfMonth(each.until()))));
        standsUntil.ifPresent(day -> sentences.add(SAY.standsUntil(DayWords.dayOfMonth(day))));
        bolting.ifPresent(
                limit -> sentences.add(SAY.bolts(Counted.days(limit.days()), units.temperature(limit.belowC()))));
        life.map(SeasonFacts::life).ifPresent(sentences::add);
        return sentences;
    }

    private static String days(int least, int most) {
        return least == most ? Counted.days(least) : least + " to " + Counted.days(most);
    }

    /** Such as 'Biennial: it flowers in its second year.'. */
    public static String life(LifeCycle cycle) {
        String kind = cycle.life() == Life.BIENNIAL ? SAY.biennial() : SAY.perennial();
        Integer flowers = cycle.flowersInYear();
        if (cycle.cropInYear() == 1) {
            return cycle.life() == Life.BIENNIAL && flowers != null && flowers > 1
                    ? SAY.gatheredThenFlowers(kind, year(flowers))
                    : SAY.lives(kind);
        }
        return flowers != null && flowers == cycle.cropInYear()
                ? SAY.flowersInYear(kind, year(flowers))
                : SAY.firstHarvestInYear(kind, year(cycle.cropInYear()));
    }

    private static String year(int year) {
        return switch (year) {
            case 1 -> SAY.firstYear();
            case 2 -> SAY.secondYear();
            default -> SAY.thirdYear();
        };
    }
}
