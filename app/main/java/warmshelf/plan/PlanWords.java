package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.util.stream.Collectors;
import java.util.stream.Stream;
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
        String mat = SAY.onMat(
                stay.mat(),
                stay.place(),
                stay.slot().words(),
                DayWords.span(stay.days().from(), stay.days().to()));
        return light.isEmpty() ? mat : SAY.thenLight(mat, light);
    }

    /** Of a placement, and of what it changes of what was published. */
    static String told(SeasonQuestion question, Asked asked, PlacedStay stay) {
        String light = light(stay);
        String lies = SAY.yourLies(
                asked.sowing().title(),
                stay.mat(),
                DayWords.span(stay.days().from(), stay.days().to()),
                stay.place(),
                stay.slot().words());
        return Stream.of(lies, light.isEmpty() ? "" : SAY.thenItGoes(light), changed(question, asked, stay))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String changed(SeasonQuestion question, Asked asked, PlacedStay stay) {
        Stay before = asked.freed();
        if (before == null) {
            return "";
        }
        if (!question.keepsMat(asked, stay)) {
            return SAY.wasMoved(DayWords.day(before.from()), before.where());
        }
        return stay.light() == null ? SAY.staysWithoutLight() : SAY.staysOtherLight();
    }

    /** What becomes of a published stay or a waiting request by a placement. */
    static String what(SeasonQuestion question, Asked asked, PlacedStay stay) {
        if (asked.freed() == null) {
            return SAY.getsPlace();
        }
        if (!question.keepsMat(asked, stay)) {
            return SAY.moves();
        }
        if (question.keepsLight(asked, stay)) {
            return SAY.keepsPlace();
        }
        return stay.light() == null ? SAY.keepsMatLosesLight() : SAY.keepsMatOtherLight();
    }

    /** For example 'under the light: Hall cellar · North · shelf 3, place 2, left half, Mon 5 Apr to Thu 6 May'; empty without one. */
    private static String light(PlacedStay stay) {
        PlacedStay.LitStay light = stay.light();
        return light == null
                ? ""
                : SAY.underTheLight(
                        light.shelf(),
                        light.place(),
                        light.slot().words(),
                        DayWords.span(light.days().from(), light.days().to()));
    }

    static PlanNews told(String title, Refused refused) {
        return new PlanNews(SAY.noPlaceYet(title), refused);
    }
}
