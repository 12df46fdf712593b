package warmshelf.plan;

import warmshelf.allocation.Stay;
import warmshelf.plan.SeasonQuestion.Asked;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.Refused;
import warmshelf.words.DayWords;

/** What is said of a placement. */
final class PlanWords {
    private PlanWords() {}

    /** For example 'mat M2, place 1, left half, Wed 3 Mar to Tue 16 Mar'. */
    static String where(PlacedStay stay) {
        String light = light(stay);
        return "mat %s, place %d, %s, %s%s"
                .formatted(
                        stay.mat(),
                        stay.place(),
                        stay.slot().words(),
                        DayWords.span(stay.days().from(), stay.days().to()),
                        light.isEmpty() ? "" : "; then " + light);
    }

    /** Of a placement, and of what it changes of what was published. */
    static String told(SeasonQuestion question, Asked asked, PlacedStay stay) {
        String light = light(stay);
        return "Your %s lies on mat %s %s: place %d, %s.%s%s"
                .formatted(
                        asked.sowing().title(),
                        stay.mat(),
                        DayWords.span(stay.days().from(), stay.days().to()),
                        stay.place(),
                        stay.slot().words(),
                        light.isEmpty() ? "" : " Then it goes " + light + ".",
                        changed(question, asked, stay));
    }

    private static String changed(SeasonQuestion question, Asked asked, PlacedStay stay) {
        Stay before = asked.freed();
        if (before == null) {
            return "";
        }
        if (!question.keepsMat(asked, stay)) {
            return " It was moved; before, it was to begin on %2$s: %1$s."
                    .formatted(before.where(), DayWords.day(before.from()));
        }
        return stay.light() == null
                ? " It stays on its mat, and has no place under the light any more."
                : " It stays on its mat; only its place under the light is another.";
    }

    /** What becomes of a published stay or a waiting request by a placement. */
    static String what(SeasonQuestion question, Asked asked, PlacedStay stay) {
        if (asked.freed() == null) {
            return "gets a place";
        }
        if (!question.keepsMat(asked, stay)) {
            return "moves";
        }
        if (question.keepsLight(asked, stay)) {
            return "keeps its place";
        }
        return stay.light() == null
                ? "keeps its mat and loses its place under the light"
                : "keeps its mat and gets another place under the light";
    }

    /** For example 'under the light: Hall cellar · North · shelf 3, place 2, left half, Mon 5 Apr to Thu 6 May'; empty without one. */
    private static String light(PlacedStay stay) {
        PlacedStay.LitStay light = stay.light();
        return light == null
                ? ""
                : "under the light: %s, place %d, %s, %s"
                        .formatted(
                                light.shelf(),
                                light.place(),
                                light.slot().words(),
                                DayWords.span(light.days().from(), light.days().to()));
    }

    static PlanNews told(String title, Refused refused) {
        return new PlanNews("No place yet for your %s.".formatted(title), refused);
    }
}
