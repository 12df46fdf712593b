package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Map;
import warmshelf.crop.Crop;
import warmshelf.crop.CropSources;
import warmshelf.crop.SourceMatter;
import warmshelf.crop.SourcedRange;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/** The days on which to sow, counted back from the ideal planting out by the crop's weeks indoors. */
record SowingWindow(DateWindow days, Reason why) {

    static SowingWindow before(LocalDate plantingOut, TimelineQuestion question, ExpectedEmergence emergence) {
        Crop crop = question.crop();
        int slower = emergence.slowerDays();
        DateWindow days = new DateWindow(
                plantingOut.minusWeeks(crop.weeksIndoorsMax()).minusDays(slower),
                plantingOut.minusDays(idealDaysIndoors(crop)).minusDays(slower),
                plantingOut.minusWeeks(crop.weeksIndoorsMin()).minusDays(slower));
        return new SowingWindow(days, why(plantingOut, question, emergence));
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
