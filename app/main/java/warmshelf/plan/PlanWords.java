package warmshelf.plan;

import java.time.LocalDate;
import warmshelf.allocation.plan.PlacedStay;
import warmshelf.allocation.plan.Refused;
import warmshelf.web.DayWords;

/** What is said of a placement. */
final class PlanWords {
    private PlanWords() {}

    /** For example 'mat M2, place 1, left half, Wed 3 Mar to Tue 16 Mar'. */
    static String where(PlacedStay stay) {
        LocalDate last = stay.days().to().minusDays(1);
        return "mat %s, place %d, %s, %s to %s"
                .formatted(
                        stay.mat(),
                        stay.place(),
                        stay.slot().words(),
                        DayWords.day(stay.days().from()),
                        DayWords.day(last));
    }

    static String told(String title, PlacedStay stay) {
        return "Your %s lies on mat %s from %s: place %d, %s, until %s."
                .formatted(
                        title,
                        stay.mat(),
                        DayWords.day(stay.days().from()),
                        stay.place(),
                        stay.slot().words(),
                        DayWords.day(stay.days().to().minusDays(1)));
    }

    static String told(String title, Refused refused) {
        return "No place yet for your %s. %s %s"
                .formatted(title, refused.reason(), refused.change())
                .strip();
    }
}
