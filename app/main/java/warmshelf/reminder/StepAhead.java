package warmshelf.reminder;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import warmshelf.sowing.History;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.timeline.Step;

/**
 * A step of a sowing that is still to be done.
 *
 * @param title of the sowing
 * @param crop its name
 * @param ideal the day it is best done
 * @param why the sentence behind the date
 * @param next whether it is the very next one of its sowing
 */
public record StepAhead(
        UUID sowing,
        String title,
        String crop,
        Step step,
        LocalDate ideal,
        LocalDate latest,
        String why,
        boolean next) {

    /** Everything still to be done at some sowings, each in order; the harvest is nothing to be reminded of. */
    static List<StepAhead> of(List<History> histories, SowingPlanner planner, LocalDate today) {
        return histories.stream()
                .flatMap(history -> ofOne(history, planner, today).stream())
                .toList();
    }

    private static List<StepAhead> ofOne(History history, SowingPlanner planner, LocalDate today) {
        Sowing sowing = history.sowing();
        var open = planner.timeline(history, today)
                .map(timeline -> timeline.steps().stream()
                        .filter(step -> step.done() == null && step.step() != Step.RIPE)
                        .toList())
                .orElse(List.of());
        return open.stream()
                .map(step -> new StepAhead(
                        sowing.id(),
                        sowing.title(),
                        sowing.crop().name(),
                        step.step(),
                        step.ideal(),
                        step.latest(),
                        step.why(),
                        step.equals(open.get(0))))
                .toList();
    }
}
