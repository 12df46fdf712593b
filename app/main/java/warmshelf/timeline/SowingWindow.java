package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Map;
import warmshelf.crop.Crop;
import warmshelf.crop.CropSources;
import warmshelf.crop.SourceMatter;
import warmshelf.crop.SourcedRange;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/**
 * The days on which to sow, counted back from planting out by the crop's weeks indoors: in spring, when all is sown for one
 * day, from its ideal day; for autumn and over winter from all of its days.
 */
record SowingWindow(DateWindow days, Reason why) {

    static SowingWindow before(DateWindow plantingOut, TimelineQuestion question, ExpectedEmergence emergence) {
        DateWindow out = question.plantingOut().seasonPart() == SeasonPart.SPRING
                ? DateWindow.on(plantingOut.ideal())
                : plantingOut;
        return new SowingWindow(
                daysBefore(out, question.crop(), emergence), why(plantingOut.ideal(), question, emergence));
    }

    /** The days on which to sow what goes out on these. */
    static DateWindow daysBefore(DateWindow plantingOut, Crop crop, ExpectedEmergence emergence) {
        int slower = emergence.slowerDays();
        return plantingOut.plusDays(
                -crop.weeksIndoorsMax() * 7 - slower,
                -idealDaysIndoors(crop) - slower,
                -crop.weeksIndoorsMin() * 7 - slower);
    }

    private static Reason why(LocalDate plantingOut, TimelineQuestion question, ExpectedEmergence emergence) {
        Crop crop = question.crop();
        int slower = emergence.slowerDays();
        return Step.SOW.why(
                "why",
                Map.of(
                        "weeks",
                        Counted.weeks(crop.weeksIndoorsMin(), crop.weeksIndoorsMax()),
                        "plantingOut",
                        DayWords.dayOfMonth(plantingOut),
                        "slower",
                        slower > 0 ? Counted.days(slower) : "",
                        "warmth",
                        question.units().temperature(question.matC()),
                        "days",
                        Counted.days(emergence.seedlings().usual()),
                        "usualDays",
                        emergence.comfortableDays(),
                        "sources",
                        sources(crop)),
                question.units());
    }

    /** The weeks over all sources where they go beyond the crop's own; else empty. */
    private static String sources(Crop crop) {
        SourcedRange weeks = CropSources.bundled().of(crop, SourceMatter.WEEKS_INDOORS);
        return weeks.differs() ? Counted.weeks((int) Math.round(weeks.low()), (int) Math.round(weeks.high())) : "";
    }

    /** The middle of the crop's weeks indoors. */
    static int idealDaysIndoors(Crop crop) {
        return (crop.weeksIndoorsMin() + crop.weeksIndoorsMax()) * 7 / 2;
    }

    /** Days from sowing until the plants are as big as they must be to go out. */
    static int daysUntilReady(Crop crop, ExpectedEmergence emergence) {
        return crop.weeksIndoorsMin() * 7 + emergence.slowerDays();
    }
}
