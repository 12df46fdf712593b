package warmshelf.timeline;

import java.time.LocalDate;
import warmshelf.crop.Crop;

/** The days on which to sow, counted back from the ideal planting out by the crop's weeks indoors. */
record SowingWindow(DateWindow days, String why) {

    static SowingWindow before(LocalDate plantingOut, TimelineQuestion question, ExpectedEmergence emergence) {
        Crop crop = question.crop();
        int slower = emergence.slowerDays();
        DateWindow days = new DateWindow(
                plantingOut.minusWeeks(crop.weeksIndoorsMax()).minusDays(slower),
                plantingOut.minusDays(idealDaysIndoors(crop)).minusDays(slower),
                plantingOut.minusWeeks(crop.weeksIndoorsMin()).minusDays(slower));
        String why = "%s before planting out on %s."
                .formatted(
                        TimelineWords.weeks(crop.weeksIndoorsMin(), crop.weeksIndoorsMax()),
                        TimelineWords.day(plantingOut));
        if (slower > 0) {
            why += " %s earlier than usual, because at %s seed comes up after about %s instead of %d."
                    .formatted(
                            TimelineWords.days(slower),
                            question.measures().temperature(question.matC()),
                            TimelineWords.days(emergence.seedlings().usual()),
                            emergence.comfortableDays());
        }
        return new SowingWindow(days, why);
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
