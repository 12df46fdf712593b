package warmshelf.plan.engine.search;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Request;

/** The first three aims, counted from a plan itself. */
final class Scores {
    private Scores() {}

    static Score of(PlanQuestion question, RatedPlan outcome) {
        Map<String, PlacedStay> placed =
                outcome.plan().placed().stream().collect(Collectors.toMap(PlacedStay::request, Function.identity()));
        int[] choices = question.requests().stream()
                .mapToInt(Request::choice)
                .distinct()
                .sorted()
                .toArray();
        int[] members = new int[choices.length];
        for (int i = 0; i < choices.length; i++) {
            int choice = choices[i];
            members[i] = (int) question.requests().stream()
                    .filter(request -> request.choice() == choice && placed.containsKey(request.id()))
                    .map(Request::member)
                    .distinct()
                    .count();
        }
        return new Score(members, placed.size(), outcome.shiftDays(), 0, 0);
    }
}
